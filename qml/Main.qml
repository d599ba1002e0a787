import QtQuick
import Ambit

Window {
    required property App app
}
