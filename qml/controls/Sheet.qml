// A page laid over the screen: all of it on a phone, beside the figure where it is wide.
import QtQuick
import Ambit

FocusScope {
    id: sheet

    property alias title: page.title
    property alias subtitle: page.subtitle
    property alias backText: page.backText
    property alias backName: page.backName
    property alias pageWidth: page.width
    default property alias content: page.content
    property alias keys: page.keys
    readonly property bool beside: width > height && width > Theme.mm(140)

    signal closed

    anchors.fill: parent
    focus: true

    Rectangle {
        anchors.fill: parent
        visible: sheet.beside
        color: Theme.shade
        opacity: 0.4
        TapHandler {
            gesturePolicy: TapHandler.WithinBounds
            onTapped: sheet.closed()
        }
    }
    MouseArea {
        // Nothing beneath is touched.
        anchors.fill: page
    }
    Page {
        id: page
        x: Theme.leftHanded ? 0 : parent.width - width
        width: sheet.beside ? Math.max(Theme.mm(88), sheet.width * 0.5) : sheet.width
        height: parent.height
        ground: Theme.panel
        backText: qsTr("Back")
        columnWidth: width - keysWidth - 2 * (sheet.beside ? 24 : Theme.margin)
        onBack: sheet.closed()
    }
}
