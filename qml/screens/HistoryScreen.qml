// What the records say of one point, the newest first: its outcome by shape, words, value. Without a point: which one.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    property string pointId: ""
    property string pointName: ""
    readonly property PointHistoryView history: app.pointHistory
    readonly property TrendView trend: app.trend
    readonly property bool choosing: pointId === ""
    readonly property int shownNames: 30
    readonly property var fitting: {
        const words = name.text.trim().toLowerCase();
        return Array.from(app.aircraftFile.points).filter(one => one.name.toLowerCase().includes(words));
    }

    signal stepInstead(string step, var values)
    signal stepAsked(string step, var values)

    /// Also for whoever comes back to this page.
    function choose(id: string, name: string) {
        screen.toTop();
        screen.pointName = name;
        screen.pointId = id;
        screen.history.show(screen.app.file.registration, id);
        screen.stepInstead("History", {
            pointId: id,
            pointName: name
        });
    }

    Component.onCompleted: if (history.pointId !== pointId)
        history.show(app.file.registration, pointId)

    objectName: "screenHistory"
    title: choosing ? qsTr("History of a point") : pointName
    subtitle: Texts.line(app.file.registration, choosing ? "" : qsTr("the newest first"), "")
    backText: qsTr("Back")
    backName: "historyBack"

    Field {
        id: name
        objectName: "historyName"
        width: parent.width
        visible: screen.choosing
        label: qsTr("Part of its name")
    }
    Repeater {
        model: screen.choosing ? screen.fitting.slice(0, screen.shownNames) : []
        Key {
            required property var modelData
            objectName: "historyPoint." + modelData.id
            width: screen.columnWidth
            text: modelData.name
            onClicked: screen.choose(modelData.id, modelData.name)
        }
    }
    Label {
        width: parent.width
        visible: screen.choosing && screen.fitting.length > screen.shownNames
        text: qsTr("And %1 more: write a part of its name.").arg(screen.fitting.length - screen.shownNames)
    }
    Key {
        objectName: "historyOther"
        width: parent.width
        visible: !screen.choosing
        text: qsTr("Another point")
        onClicked: screen.choose("", "")
    }
    Label {
        objectName: "historyState"
        width: parent.width
        visible: !screen.choosing && text !== ""
        text: screen.history.reading ? qsTr("The records are being read …") : screen.history.sightings.count === 0 ? qsTr("No record says anything of this point.") : ""
    }
    Column {
        width: parent.width
        visible: !screen.choosing && screen.trend.there
        spacing: Theme.gap
        Heading {
            width: parent.width
            text: qsTr("Where its values are going")
        }
        TrendChart {
            objectName: "trendChart"
            width: parent.width
            height: Math.max(width * 0.55, Theme.mm(46) * Theme.scale)
            view: screen.trend
            ground: Theme.ground
            ink: Theme.ink
            quiet: Theme.soft
            band: Theme.line
            limit: Theme.warning
            family: Theme.family
            textSize: Math.min(Theme.small, Math.floor(width / 16)) // larger, nothing of it would have room
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Chart of the values")
            Accessible.description: screen.trend.spoken
        }
        Repeater {
            model: screen.trend.texts
            Label {
                required property string modelData
                required property int index
                objectName: "trendText." + index
                width: screen.columnWidth
                text: Texts.begun(modelData)
                strong: index === 0
            }
        }
        Grid {
            id: ways
            width: parent.width
            columns: Math.max(1, Math.floor(width / (Theme.mm(38) * Theme.scale)))
            spacing: Theme.gap
            Repeater {
                model: screen.trend.ways
                Choice {
                    required property var modelData
                    objectName: "trendOver." + modelData.id
                    width: (ways.width - (ways.columns - 1) * ways.spacing) / ways.columns
                    text: modelData.name
                    chosen: screen.trend.over === modelData.id
                    onClicked: screen.trend.follow(modelData.id)
                }
            }
        }
    }
    Key {
        objectName: "historyRenewed"
        width: parent.width
        visible: !screen.choosing && screen.history.values.length > 0
        text: qsTr("A part was renewed")
        onClicked: screen.stepAsked("Renewed", {
            pointId: screen.pointId,
            pointName: screen.pointName
        })
    }
    Repeater {
        model: screen.choosing ? null : screen.history.sightings
        SightingKey {
            width: screen.columnWidth
            onClicked: screen.app.file.open(recordId)
        }
    }
    Key {
        objectName: "historyMore"
        width: parent.width
        broad: true
        visible: !screen.choosing && screen.history.canMore
        text: qsTr("Show earlier ones")
        onClicked: screen.history.more()
    }
}
