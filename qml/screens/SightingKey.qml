// What one record says of a point.
import QtQuick
import Ambit

RowKey {
    required property string recordId
    required property string outcomeText
    required property string words
    required property string valueText
    required property string whenText
    required property string agoText
    required property string by

    required look
    required grounds

    objectName: "sighting." + recordId
    text: Texts.line(outcomeText, valueText, "")
    about: words
    small: Texts.line(agoText, whenText, by)
}
