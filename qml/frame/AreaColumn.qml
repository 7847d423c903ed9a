// SPDX-License-Identifier: MIT
//
// The six areas of the desk, top to bottom.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

Rectangle {
    id: root

    required property var areas // Name and screen of each.
    required property int current

    signal asked(int area)

    implicitWidth: Math.max(104, column.implicitWidth)
    color: Theme.side

    ColumnLayout {
        id: column

        anchors.fill: parent
        spacing: 0

        Words {
            text: "Flarestock"
            strong: true
            color: Theme.accent
            leftPadding: 14
            verticalAlignment: Text.AlignVCenter
            Layout.preferredHeight: 52
            Layout.fillWidth: true
        }
        Repeater {
            model: root.areas

            AreaTag {
                required property var modelData
                required property int index

                objectName: "area-" + number
                text: modelData.name
                number: index + 1
                current: index === root.current
                Layout.fillWidth: true
                onClicked: root.asked(index)
            }
        }
        Item {
            Layout.fillHeight: true
        }
        DeskButton {
            objectName: "unitsButton"
            text: Look.inInches ? qsTr("show mm, bar") : qsTr("show in, psi")
            framed: false
            small: true
            padding: 2
            Accessible.name: Look.inInches ? qsTr("say figures of parts in mm, bar and L/h")
                                           : qsTr("say figures of parts in inches, psi and gph")
            Layout.fillWidth: true
            onClicked: Look.inInches = !Look.inInches
        }
        DeskButton {
            readonly property bool isGerman: Look.language === "de"

            objectName: "languageButton"
            text: isGerman ? "English" : "Deutsch" // Each in its own words, whatever shows now.
            framed: false
            small: true
            padding: 2
            Accessible.name: isGerman ? "all in English" : "alles auf Deutsch"
            Layout.fillWidth: true
            onClicked: Look.language = isGerman ? "en" : "de"
        }
        DeskButton {
            objectName: "lookButton"
            text: Look.dark ? qsTr("show light") : qsTr("show dark")
            framed: false
            small: true
            padding: 2
            Accessible.name: Look.dark ? qsTr("light screen") : qsTr("dark screen")
            Layout.fillWidth: true
            Layout.bottomMargin: Theme.gap
            onClicked: Look.dark = !Look.dark
        }
    }
}
