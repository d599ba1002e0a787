// Leads to who follows, wherever that may be asked.
import QtQuick
import Ambit

Key {
    id: key

    required property SharingView sharing

    objectName: "followKey"
    visible: sharing.possible
    text: sharing.open ? qsTr("Who follows") : qsTr("Let others follow")
    about: sharing.watchingText !== "" ? sharing.watchingText : qsTr("From their own devices, on this network")
}
