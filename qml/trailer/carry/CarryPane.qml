// SPDX-License-Identifier: MIT
//
// How many spares to carry: for which events and how certain above, the parts in the middle, the
// sum behind the one in hand below.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property CarryDesk carry
    property bool busy: false

    signal explained(string sentence)

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    function goTo(row: int) {
        if (row >= 0 && row < carry.rows.count)
            carry.selected = carry.rows.cell(row, "key");
    }

    ChosenLine {
        list: list
        rows: root.carry.rows
        chosen: root.carry.selected
    }

    component Heading: Words {
        small: true
        quiet: true
        horizontalAlignment: Text.AlignRight
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 4

        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.margins: 8
            Layout.bottomMargin: 0

            AnswerTag {
                objectName: "carryFor"
                width: Math.min(implicitWidth, root.width - 20)
                title: qsTr("for")
                form: "choice"
                choices: root.carry.occasions
                answer: root.carry.occasion
                problem: ""
                onPicked: choice => root.carry.carryFor(choice)
            }
            AnswerTag {
                objectName: "carryCertainty"
                title: qsTr("nothing lacks with")
                form: "measure"
                choices: []
                answer: root.carry.certainty
                problem: root.carry.certaintyProblem
                onTyped: text => root.carry.beCertain(text)
            }
            AnswerTag {
                objectName: "carryTogether"
                title: qsTr("certain for")
                form: "choice"
                choices: [qsTr("each part by itself"), qsTr("all together, at least money")]
                answer: choices[root.carry.together ? 1 : 0]
                problem: ""
                onPicked: choice => root.carry.together = choice === 1
            }
            AnswerTag {
                objectName: "carryOther"
                title: qsTr("another part")
                form: "measure"
                choices: []
                answer: ""
                problem: ""
                onTyped: text => {
                    if (text.trim() !== "" && !root.carry.add(text))
                        root.explained(qsTr("%1 is no part of this shop.").arg(text));
                    sync();
                }
            }
        }
        Words {
            objectName: "carryKit"
            visible: text !== ""
            text: root.carry.kit
            wrapMode: Text.Wrap
            Layout.fillWidth: true
            Layout.leftMargin: 12
            Layout.rightMargin: 12
        }
        RowLayout {
            spacing: 0
            Layout.fillWidth: true

            Heading {
                text: qsTr("part, and how it is used up")
                horizontalAlignment: Text.AlignLeft
                Layout.fillWidth: true
                Layout.leftMargin: 12
            }
            Heading {
                text: qsTr("carry")
                Layout.preferredWidth: 56
            }
            Heading {
                text: qsTr("there")
                Layout.preferredWidth: 44
                Layout.rightMargin: 112
            }
        }
        Rectangle {
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.fillWidth: true
        }
        ListView {
            id: list

            objectName: "carryList"
            model: root.carry.rows
            clip: true
            displayMarginEnd: unfolding.margin
            cacheBuffer: 0
            focus: true
            activeFocusOnTab: true
            keyNavigationEnabled: false
            boundsBehavior: Flickable.StopAtBounds
            highlightMoveDuration: 0
            Accessible.role: Accessible.Table
            Accessible.name: qsTr("spares to carry, %1 parts").arg(count)
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 100
            ScrollBar.vertical: SlimScrollBar {}
            Keys.onUpPressed: root.goTo(currentIndex - 1)
            Keys.onDownPressed: root.goTo(currentIndex + 1)
            Keys.onReturnPressed: sum.forceActiveFocus(Qt.TabFocusReason)
            delegate: SpareLine {
                required property string key

                width: list.width
                current: ListView.isCurrentItem
                inHand: list.activeFocus
                onClicked: {
                    root.enter();
                    root.carry.selected = key;
                }
            }

            Unfolding {
                id: unfolding

                list: list
            }

            Words {
                parent: list
                anchors.centerIn: parent
                width: parent.width - 48
                visible: list.count === 0
                text: root.carry.problem !== "" ? root.carry.problem
                    : root.carry.loading ? qsTr("Reckoning …")
                    : qsTr("No part is listed in the shop's spares.csv. Write the number of one "
                           + "above.")
                color: root.carry.problem !== "" ? Theme.stop : Theme.quiet
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
            }
            FocusFrame {
                parent: list
                visible: list.activeFocus
            }
        }
        Rectangle {
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.fillWidth: true
        }
        SumBehind {
            id: sum

            carry: root.carry
            busy: root.busy
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 80
            Layout.preferredHeight: root.height * (root.height < 480 ? 0.42 : 0.5)
            Layout.maximumHeight: Layout.preferredHeight
        }
    }
}
