// What the card is about.
import QtQuick
import Ambit

Label {
    required property RoundView round
    required property string kind

    text: kind === "paused" ? round.pausedText : round.cardTitle
    strong: true
    font.pixelSize: Theme.fitting(text, width, Theme.huge)
    lineHeight: 1.05
    Accessible.role: Accessible.Heading
}
