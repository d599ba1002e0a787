// The title of a part of a page.
import QtQuick
import Ambit

Label {
    topPadding: 8
    strong: true
    font.pixelSize: Theme.fitting(text, width, Theme.title)
    Accessible.role: Accessible.Heading
}
