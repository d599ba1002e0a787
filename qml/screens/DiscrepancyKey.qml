// A discrepancy in a list: what and where, its state, since when, who found it.
import QtQuick
import Ambit

RowKey {
    required property var modelData
    readonly property string key: modelData.key

    objectName: "discrepancy." + modelData.pointId
    look: modelData.state === "rectified" ? "next" : "finding"
    grounds: modelData.grounds
    text: modelData.name
    note: modelData.stateText
    about: modelData.words
    small: modelData.sinceText + "\u00a0· " + modelData.where
}
