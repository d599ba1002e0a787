// A record in a list: what it concludes, when, by whom.
import QtQuick
import Ambit

RowKey {
    required property string recordId
    required property string title
    required property string conclusion
    required property string conclusionText
    required property string whenText
    required property string signer
    required property int findings
    property bool justNow: false
    readonly property bool isRound: conclusion !== ""

    objectName: "record." + recordId
    look: !isRound ? "" : conclusion === "fit" ? "sound" : "finding"
    grounds: true
    text: conclusionText
    about: whenText + "\u00a0· " + signer
    small: (justNow ? qsTr("Signed and sealed just now") + "\u00a0· " : "") + (isRound ? title + "\u00a0· " + Texts.findings(findings) : "")
}
