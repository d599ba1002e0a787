// The one broad key under an entry: makes the signer's key where there is none yet, else signs and keeps.
import QtQuick
import Ambit

Key {
    id: key

    required property SignatureFields fields
    property string does: qsTr("Sign and keep")

    signal signAsked

    objectName: fields.keyExists ? "entrySign" : "newKeyDone"
    narrow: true
    broad: true
    look: "solid"
    enabled: fields.keyExists || fields.canMake
    text: fields.keyExists ? key.does : qsTr("Make the key")
    onClicked: {
        if (key.fields.keyExists)
            key.signAsked();
        else
            key.fields.make();
    }
}
