// The next language, wherever it may be chosen; each is named in its own words.
import QtQuick
import Ambit

Key {
    id: key

    required property App app

    objectName: "languageKey"
    text: qsTr("Language: %1").arg(app.languageName)
    about: app.language === "" ? qsTr("The device's; a touch chooses another") : qsTr("A touch chooses another, or the device's again")
    onClicked: app.nextLanguage()
}
