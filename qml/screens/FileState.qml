// Can it go? What in the file stands against it, and what is wrong with the file itself.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: column

    required property AircraftFileView its
    /// What nobody has assessed is for a person to judge: a caution. What grounds or is past its limit is a warning.
    readonly property var unassessed: Array.from(its.open).filter(one => one.state === "open").map(one => one.against)

    spacing: 12

    Heading {
        width: parent.width
        text: qsTr("Stands against fit")
    }
    Label {
        objectName: "fileReading"
        width: parent.width
        visible: !column.its.known && column.its.reading
        text: qsTr("The file is being read …")
    }
    Caution {
        objectName: "fileTrouble"
        width: parent.width
        warns: true
        texts: column.its.trouble === "" ? [] : [qsTr("The file can't be read whole, so nothing can be said from it. Verify says which records don't hold."), column.its.trouble]
    }
    Label {
        objectName: "fileNothingAgainst"
        width: parent.width
        visible: column.its.known && column.its.against.length === 0
        text: qsTr("Nothing in the file stands against it. The pilot in command looks and decides.")
        font.pixelSize: Theme.large
    }
    Repeater {
        model: column.its.against
        Caution {
            required property string modelData
            required property int index
            objectName: "against." + index
            width: column.width
            warns: !column.unassessed.includes(modelData)
            texts: [modelData]
        }
    }
    Caution {
        objectName: "fileHoles"
        width: parent.width
        texts: column.its.holes === 0 ? [] : [column.its.holes === 1 ? qsTr("A record is missing here: what it says isn't known. Verify names it.") : qsTr("%1 records are missing here: what they say isn't known. Verify names them.").arg(column.its.holes)]
    }
    Caution {
        objectName: "fileConflicts"
        width: parent.width
        texts: Array.from(column.its.conflicts)
    }
}
