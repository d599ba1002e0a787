// Something chosen or not by itself, whatever else is.
// A touch asks: what is chosen is said by whoever is asked. Qt takes the role that a screen reader is told from the type.
import QtQuick
import QtQuick.Templates as T
import Ambit

T.CheckBox {
    id: choice

    property bool chosen: false
    property string about: ""
    property bool broad: false
    property bool cut: false
    property color cutColour: Theme.caution

    implicitWidth: Math.max(Theme.target, words.wordsWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(broad ? Theme.key : Theme.target, words.wordsHeight + 2 * 12)
    leftPadding: Theme.margin + Theme.mark(22) + 12
    rightPadding: Theme.margin
    focusPolicy: Qt.StrongFocus
    autoExclusive: false
    checked: choice.chosen
    onToggled: checked = Qt.binding(() => choice.chosen)
    Keys.onReturnPressed: choice.clicked()
    Keys.onEnterPressed: choice.clicked()
    Accessible.role: Accessible.CheckBox
    Accessible.name: choice.text
    Accessible.description: choice.about
    Accessible.onPressAction: choice.clicked()
    Accessible.onToggleAction: choice.clicked()

    background: ChoiceFrame {
        of: choice
        chosen: choice.chosen
        square: true
        cut: choice.cut
        cutColour: choice.cutColour
    }
    ChoiceWords {
        id: words
        of: choice
        about: choice.about
        broad: choice.broad
    }
}
