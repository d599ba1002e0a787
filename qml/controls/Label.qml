// Text in our type. Nothing is written smaller than 14 px.
import QtQuick
import Ambit

Text {
    property bool strong: false

    color: Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.normal
    font.bold: strong
    lineHeight: 1.15
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
