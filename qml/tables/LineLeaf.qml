// SPDX-License-Identifier: MIT
//
// One line: what flows, how much of it, through which size and how far; and what pressure that
// takes.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ColumnLayout {
    id: root

    required property LineTable table
    property int flowing: 0 // Of the table's fluids.

    function enter() {
        flow.enter();
    }
    function consider() {
        root.table.consider({
            fluid: root.flowing,
            temperature: temperature.text,
            flow: flow.text,
            size: size.text,
            length: length.text
        });
    }

    spacing: Theme.gap

    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true

        LookUpField {
            id: flow

            key: "lineFlow"
            name: qsTr("flow")
            hint: Look.inInches ? qsTr("67 gph") : qsTr("255 L/h")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onEdited: root.consider()
        }
        LookUpField {
            id: size

            key: "lineSize"
            name: qsTr("size or bore")
            hint: Look.inInches ? qsTr("-6 or 0.34 in") : qsTr("-6 or 8.7 mm")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onEdited: root.consider()
        }
        LookUpField {
            id: length

            key: "lineLength"
            name: qsTr("length")
            hint: Look.inInches ? qsTr("16 ft") : qsTr("5 m")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onEdited: root.consider()
        }
        ColumnLayout {
            spacing: 3
            Layout.fillWidth: true
            Layout.preferredWidth: 1.4

            Words {
                text: qsTr("fluid")
                small: true
                quiet: true
            }
            ChoiceBox {
                objectName: "lineFluid"
                name: qsTr("fluid")
                model: root.table.fluids
                Layout.fillWidth: true
                onModelChanged: currentIndex = root.flowing // In another language.
                onActivated: chosen => {
                    root.flowing = chosen;
                    root.consider();
                }
            }
        }
        LookUpField {
            id: temperature

            key: "lineTemperature"
            name: qsTr("temperature")
            hint: qsTr("20 °C")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onEdited: root.consider()
        }
    }
    Answer {
        objectName: "lineEmpty"
        visible: !root.table.reckoned && root.table.wrong === ""
        text: qsTr("Write down flow, size and length, each with its unit.")
        quiet: true
    }
    Answer {
        objectName: "lineWrong"
        text: root.table.wrong
        color: Theme.stop
    }
    GridLayout {
        visible: root.table.reckoned
        columns: 1
        rowSpacing: 4
        Layout.fillWidth: true

        Repeater {
            model: root.table.figures

            RowLayout {
                id: figure

                required property int index
                required property string label
                required property string says

                spacing: Theme.wideGap
                Layout.fillWidth: true

                Words {
                    text: figure.label
                    quiet: true
                    Layout.preferredWidth: 260
                }
                Words {
                    objectName: "lineFigure"
                    text: figure.says
                    strong: figure.index < 2
                    Layout.fillWidth: true
                }
            }
        }
    }
    Answer {
        objectName: "lineNotes"
        text: root.table.notes
        small: true
        quiet: true
    }
}
