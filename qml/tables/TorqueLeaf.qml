// SPDX-License-Identifier: MIT
//
// A port or its size, what its nut holds and of what it is, and each published torque with its
// source.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ColumnLayout {
    id: root

    required property TorqueTable table

    function enter() {
        port.enter();
    }

    spacing: Theme.gap

    component Named: Words {
        small: true
        quiet: true
    }

    RowLayout {
        spacing: Theme.wideGap
        Layout.fillWidth: true

        LookUpField {
            id: port

            key: "torquePort"
            name: qsTr("port or size")
            hint: qsTr("ORB -8 male")
            text: root.table.port
            Layout.fillWidth: true
            onEdited: text => root.table.port = text
        }
        ColumnLayout {
            spacing: 3

            Named {
                text: qsTr("of a flare nut")
            }
            ChoiceBox {
                objectName: "torqueOn"
                name: qsTr("what the flare nut holds")
                model: root.table.nuts
                currentIndex: root.table.on
                Layout.preferredWidth: 240
                onActivated: chosen => root.table.on = chosen
                onModelChanged: currentIndex = Qt.binding(() => root.table.on)
            }
        }
        ColumnLayout {
            spacing: 3

            Named {
                text: qsTr("both sides")
            }
            ChoiceBox {
                objectName: "torqueMetal"
                name: qsTr("of what both sides are")
                model: root.table.metals
                currentIndex: root.table.metal
                Layout.preferredWidth: 170
                onActivated: chosen => root.table.metal = chosen
                onModelChanged: currentIndex = Qt.binding(() => root.table.metal)
            }
        }
    }
    Answer {
        objectName: "torqueEmpty"
        visible: !root.table.read && root.table.wrong === ""
        text: qsTr("Write a port in words, or its size alone: AN -6.")
        quiet: true
    }
    Answer {
        objectName: "torqueWrong"
        text: root.table.wrong
        color: Theme.stop
    }
    Answer {
        objectName: "torqueHeading"
        text: root.table.heading
        strong: true
    }
    ScrolledColumn {
        visible: root.table.torques.count > 0
        name: qsTr("published torques")
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: contentHeight
        Layout.minimumHeight: 80

        Repeater {
            model: root.table.torques

            RowLayout {
                id: line

                required property string torque
                required property string other
                required property string says
                required property string source

                width: parent ? parent.width : 0
                spacing: Theme.wideGap

                ColumnLayout {
                    spacing: 1
                    Layout.preferredWidth: 160
                    Layout.alignment: Qt.AlignTop

                    Words {
                        objectName: "torqueFigure"
                        text: line.torque
                        strong: true
                    }
                    Words {
                        objectName: "torqueOther"
                        text: line.other
                        small: true
                        quiet: true
                    }
                }
                ColumnLayout {
                    spacing: 1
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignTop

                    Answer {
                        objectName: "torqueSays"
                        text: line.says
                    }
                    Answer {
                        objectName: "torqueSource"
                        text: line.source
                        small: true
                        quiet: true
                    }
                }
            }
        }
    }
    Answer {
        objectName: "torqueDiffer"
        text: root.table.differ
        color: Theme.caution
    }
    Answer {
        objectName: "torqueAdvice"
        visible: root.table.read
        text: root.table.advice
        small: true
    }
}
