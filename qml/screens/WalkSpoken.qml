// What has changed, for a screen reader: how far the walk is and what is on the card now. Nothing is seen of it; a reader is
// told of an alert whose name changes.
import QtQuick
import Ambit

Item {
    id: spoken

    required property RoundView round
    readonly property string where: {
        switch (round.phase === "paused" ? "paused" : round.cardKind) {
        case "go":
            return qsTr("Next stand %1, %2, %3.").arg(round.targetStandNumber).arg(round.targetStandName).arg(round.targetStandText);
        case "set":
            return qsTr("To set: %1.").arg(round.cardTitle);
        case "settle":
            return round.cardOutcome !== "" ? qsTr("%1, settled: %2.").arg(round.cardTitle).arg(round.outcomeText) : qsTr("To settle: %1. %2.").arg(round.cardTitle).arg(round.cardHow);
        case "paused":
            return round.pausedText + ".";
        default:
            return qsTr("On to the review.");
        }
    }
    readonly property string beware: round.cautions.length > 0 && round.phase !== "paused" ? qsTr("Caution: %1").arg(Texts.joined(round.cautions, " ")) : ""
    readonly property string asked: round.askedText

    objectName: "spoken"
    width: 1
    height: 1
    Accessible.role: Accessible.AlertMessage
    Accessible.name: qsTr("%1 of %2 settled.").arg(round.settledCount).arg(round.pointCount) + " " + where + (beware === "" ? "" : " " + beware) + (asked === "" ? "" : " " + asked)
}
