// A key: "solid" or "outline" where something is done, "link" where one goes to look. Its word is its name.
import QtQuick
import QtQuick.Templates as T
import Ambit

T.AbstractButton {
    id: key

    property string look: "outline"
    /// At least 18 mm, for what is done with gloves.
    property bool broad: false
    /// The letter that does the same, shown once a keyboard is used.
    property string letter: ""
    /// A finding's cut corner.
    property bool cut: false
    property color cutColour: Theme.caution
    property string about: ""
    readonly property bool framed: look !== "link"
    /// A figure, an arrow or a sign: alone on its key it is drawn large.
    readonly property bool sign: framed && text.length === 1
    /// Its width is given: large text gives way rather than break a word.
    property bool narrow: false
    readonly property int longestWord: text.split(/[ \u00AD]/).reduce((most, word) => Math.max(most, word.length), 1)
    /// At which its longest word isn't broken.
    readonly property int fitting: Math.max(Theme.text(12.5), Math.floor((width - 2 * leftPadding) / (longestWord * Theme.letter)))

    implicitWidth: Math.max(broad ? Theme.key : Theme.target, label.implicitWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(broad ? Theme.key : Theme.target, label.implicitHeight + 2 * Theme.gap)
    leftPadding: framed ? (narrow && Theme.scale <= 1.4 ? Theme.gap : Theme.margin) : 2
    rightPadding: leftPadding
    focusPolicy: Qt.StrongFocus
    Keys.onReturnPressed: key.clicked()
    Keys.onEnterPressed: key.clicked()
    Accessible.role: Accessible.Button
    Accessible.name: key.text.replace(/\u00AD/g, "") // where it may be broken is nothing to be heard
    Accessible.description: key.about
    Accessible.onPressAction: key.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: key.look === "solid" ? (key.down ? Qt.lighter(Theme.solid, 1.4) : Theme.solid) : key.down ? Theme.pressed : key.framed ? Theme.panel : "transparent"
        border.width: key.framed ? 2 : 0
        border.color: key.look === "solid" && !Theme.night ? Theme.solid : Theme.ink
        opacity: key.enabled ? 1 : 0.45
        CutCorner {
            // Paper between a dark key and its cut corner.
            visible: key.cut && key.look === "solid"
            width: key.broad ? 42 : 30
            height: width
            radius: Theme.corner
            colour: Theme.panel
        }
        CutCorner {
            visible: key.cut
            width: key.broad ? 34 : 24
            height: width
            radius: Theme.corner
            colour: key.cutColour
        }
        FocusRing {
            of: key
        }
    }
    Label {
        id: label
        anchors.fill: parent
        anchors.leftMargin: key.leftPadding
        anchors.rightMargin: key.rightPadding
        text: key.text
        strong: true
        color: key.look === "solid" ? Theme.solidInk : key.framed ? Theme.ink : Theme.way
        opacity: key.enabled ? 1 : 0.6
        font.pixelSize: key.sign ? Theme.huge : key.narrow && (Theme.scale > 1 || key.framed) && key.fitting < (key.broad ? Theme.title : Theme.large) ? Math.min(key.framed ? Theme.large : Theme.normal, key.fitting) : key.broad ? Theme.title : key.framed ? Theme.large : key.narrow && key.text.length > 9 && key.width < key.text.length * 0.6 * Theme.normal ? Theme.small : Theme.normal
        wrapMode: Text.WordWrap
        lineHeight: 1
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
        Label {
            anchors.right: parent.right
            anchors.rightMargin: key.framed ? 0 : -2
            anchors.verticalCenter: parent.verticalCenter
            visible: Theme.keyboard && key.letter !== "" && key.framed
            text: key.letter
            font.pixelSize: Theme.small
            color: label.color
            Accessible.ignored: true
        }
    }
}
