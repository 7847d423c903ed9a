// SPDX-License-Identifier: MIT
//
// What is this?: an unmarked fitting between the jaws of a caliper, what it can be, and what to
// measure next.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property WhatIsThis whatIsThis

    signal shown(int candidate)

    title: qsTr("What is this?")
    about: qsTr("Measure over the crests of an outside thread, or between those of an inside one.")
    problem: whatIsThis.problem
    widest: 760
    onOpened: diameter.forceActiveFocus(Qt.TabFocusReason)

    RowLayout {
        spacing: Theme.wideGap
        Layout.fillWidth: true

        CaliperDrawing {
            male: root.whatIsThis.male
            reading: root.whatIsThis.reading
            ink: Theme.ink
            quiet: Theme.pipe
            accent: Theme.accent
            paper: Theme.surface
            Layout.preferredWidth: 230
            Layout.preferredHeight: 150
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("caliper at %1").arg(root.whatIsThis.reading)
        }
        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Row {
                spacing: 4

                GroupButton {
                    objectName: "outside"
                    text: qsTr("outside thread")
                    checked: root.whatIsThis.male
                    onClicked: root.whatIsThis.male = true
                }
                GroupButton {
                    objectName: "inside"
                    text: qsTr("inside thread")
                    checked: !root.whatIsThis.male
                    onClicked: root.whatIsThis.male = false
                }
            }
            InkField {
                id: diameter

                objectName: "caliperDiameter"
                name: root.whatIsThis.male ? qsTr("diameter over the crests")
                                           : qsTr("diameter between the crests")
                text: root.whatIsThis.diameter
                placeholderText: qsTr("diameter: 22.1 mm, 0.87 in")
                Layout.fillWidth: true
                onTextEdited: root.whatIsThis.diameter = text
            }
            InkField {
                objectName: "caliperPitch"
                name: qsTr("pitch")
                text: root.whatIsThis.pitch
                placeholderText: qsTr("pitch, by gauge: 14 tpi, 1.5 mm")
                Layout.fillWidth: true
                onTextEdited: root.whatIsThis.pitch = text
            }
        }
    }
    Words {
        objectName: "measureNext"
        visible: text !== ""
        text: root.whatIsThis.why
        strong: true
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
        Layout.fillWidth: true
    }
    Flow {
        visible: root.whatIsThis.answers.count > 0
        spacing: Theme.gap
        Layout.fillWidth: true

        Repeater {
            model: root.whatIsThis.answers

            DeskButton {
                required property string label
                required property string value

                objectName: "measured"
                text: label
                onClicked: {
                    if (root.whatIsThis.ask === "pitch")
                        root.whatIsThis.pitch = value;
                    else
                        root.whatIsThis.seat = value;
                    diameter.forceActiveFocus(Qt.TabFocusReason);
                }
            }
        }
    }
    ListView {
        id: list

        objectName: "candidates"
        visible: count > 0
        model: root.whatIsThis.candidates
        clip: true
        activeFocusOnTab: true
        keyNavigationEnabled: true
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("what it can be")
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: 56
        Layout.preferredHeight: Math.min(contentHeight, 240)
        ScrollBar.vertical: SlimScrollBar {}
        Keys.onReturnPressed: root.shown(currentIndex)
        Keys.onEnterPressed: root.shown(currentIndex)
        delegate: CandidateLine {
            width: list.width
            current: ListView.isCurrentItem && list.activeFocus
            onClicked: root.shown(index)
        }

        FocusFrame {
            visible: list.activeFocus
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "showCandidates"
            visible: root.whatIsThis.candidates.count > 0
            text: qsTr("Show all of these in stock")
            onClicked: root.shown(-1)
        }
        DeskButton {
            objectName: "measureAnew"
            visible: root.whatIsThis.measured
            text: qsTr("Another fitting")
            onClicked: {
                root.whatIsThis.begin();
                diameter.forceActiveFocus(Qt.TabFocusReason);
            }
        }
        DeskButton {
            text: qsTr("Back to the stock  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
