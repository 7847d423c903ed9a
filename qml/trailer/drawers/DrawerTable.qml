// SPDX-License-Identifier: MIT
//
// The drawer that is pulled out: its parts, what is there, what is to be there, and one button that
// notes all that it lacks as brought.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows lines
    required property string title
    required property string about
    property bool busy: false
    property bool lacks: true // Something of its list.

    signal loadAsked()
    signal gone()

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }

    component Heading: Words {
        small: true
        quiet: true
        horizontalAlignment: Text.AlignRight
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        Words {
            objectName: "drawerTitle"
            text: root.title
            strong: true
            font.pixelSize: Theme.headText
            wrapMode: Text.Wrap
            Layout.fillWidth: true
            Layout.leftMargin: 12
            Layout.rightMargin: 12
            Layout.topMargin: 8
        }
        Item { // Heads that come and go are not laid out again by a layout (Qt 6.4).
            id: heads

            implicitHeight: Math.max(about.height, there.height)
            Layout.fillWidth: true
            Layout.leftMargin: 12
            Layout.rightMargin: 12

            Words {
                id: about

                objectName: "drawerAbout"
                width: heads.width - there.width - toBe.width
                text: root.about
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
            Heading {
                id: there

                visible: list.count > 0
                x: about.width
                width: 60
                text: qsTr("there")
            }
            Heading {
                id: toBe

                visible: list.count > 0
                x: there.x + there.width
                width: 68
                text: qsTr("to be")
            }
        }
        Rectangle {
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.fillWidth: true
            Layout.topMargin: 4
        }
        GroupedList {
            id: list

            objectName: "inDrawer"
            model: root.lines
            focus: true
            Accessible.role: Accessible.List
            Accessible.name: root.title
            Layout.fillWidth: true
            Layout.fillHeight: true
            Keys.onEscapePressed: root.gone()
            delegate: InDrawerLine {
                width: list.width
                current: ListView.isCurrentItem && list.activeFocus
                onClicked: {
                    list.currentIndex = index;
                    root.enter();
                }
            }

            FocusFrame {
                parent: list
                visible: list.activeFocus
            }
        }
        DeskButton {
            objectName: "loadDrawer"
            text: qsTr("Note as brought: all it lacks")
            enabled: !root.busy && root.lacks
            Layout.margins: 8
            onClicked: root.loadAsked()
        }
    }
}
