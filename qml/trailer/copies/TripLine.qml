// SPDX-License-Identifier: MIT
//
// One copy that went along: its name, how it stands, who has it, and what can be said of it while
// it is away.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string key
    required property string name
    required property string stands
    required property string detail
    required property bool isOut
    required property var places
    required property string says
    property bool busy: false
    property bool mayGiveUp: true // Not where nothing can be said of it.

    signal releaseAsked()
    signal endAsked()

    objectName: "tripLine"
    implicitHeight: words.height + 14
    Accessible.role: Accessible.ListItem
    Accessible.name: says

    MarkIcon {
        x: 10
        y: 9
        implicitWidth: 18
        mark: root.isOut ? Standing.Short : Standing.Made
        ink: root.isOut ? Theme.caution : Theme.accent
    }
    Column {
        id: words

        x: 36
        y: 7
        width: root.width - 46
        spacing: 2

        Words {
            width: words.width
            text: Gaps.fill(qsTr("%1  ·  %2"), root.name, root.stands)
            strong: true
            color: root.isOut ? Theme.caution : Theme.ink
            wrapMode: Text.Wrap
        }
        Words {
            width: words.width
            text: root.detail
            small: true
            quiet: true
            wrapMode: Text.Wrap
        }
        Flow {
            width: words.width
            visible: root.isOut && root.mayGiveUp
            spacing: Theme.gap

            DeskButton {
                objectName: "releasePlace"
                visible: root.places.length > 0
                text: qsTr("Release a drawer of it…")
                small: true
                padding: 8
                enabled: !root.busy
                Accessible.description: root.says
                onClicked: root.releaseAsked()
            }
            DeskButton {
                objectName: "endTrip"
                text: qsTr("It does not come back…")
                small: true
                padding: 8
                enabled: !root.busy
                Accessible.description: root.says
                onClicked: root.endAsked()
            }
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
