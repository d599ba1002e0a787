// Large figures for gloves. Never takes the keyboard's place from the field it writes into.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Rectangle {
    id: pad

    signal typed(string character)
    signal erased
    signal done

    implicitWidth: 4 * Theme.target + 34
    implicitHeight: grid.implicitHeight + 2 * Theme.gap
    color: Theme.ground
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Figures")

    MouseArea {
        anchors.fill: parent
    }
    Flow {
        id: grid
        x: Theme.gap
        y: Theme.gap
        width: pad.width - 2 * Theme.gap
        spacing: 6
        readonly property real cellWidth: Math.floor((width - 3 * spacing) / 4)
        Repeater {
            model: ["7", "8", "9", "Erase", "4", "5", "6", "−", "1", "2", "3", ".", "0", "Done"]
            Key {
                required property string modelData
                required property int index
                objectName: "pad." + modelData
                width: index < 12 ? grid.cellWidth : 2 * grid.cellWidth + grid.spacing
                leftPadding: 4
                narrow: true
                focusPolicy: Qt.NoFocus
                text: index === 3 ? qsTr("Erase") : index === 13 ? qsTr("Done") : index === 11 ? qsTr(".", "between a number's whole and its fraction") : modelData
                onClicked: {
                    if (index === 3)
                        pad.erased();
                    else if (index === 13)
                        pad.done();
                    else
                        pad.typed(index === 7 ? "-" : modelData);
                }
            }
        }
    }
}
