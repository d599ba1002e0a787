// Two things beside each other, equally wide and high; above each other where a cell would be too narrow for their words.
import QtQuick
import Ambit

Grid {
    id: pair

    /// Of a cell, at 100 %.
    property real least: Theme.mm(24)
    readonly property real each: (width - (columns - 1) * spacing) / columns
    /// So high is each: beside each other as the higher one, else as it is.
    readonly property real tallest: columns === 1 ? 0 : Array.from(children).reduce((most, one) => Math.max(most, one.visible ? one.implicitHeight : 0), 0)

    columns: width + spacing >= 2 * (least * Theme.scale + spacing) ? 2 : 1
    spacing: 12
}
