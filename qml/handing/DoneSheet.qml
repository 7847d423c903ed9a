// SPDX-License-Identifier: MIT
//
// The end of a build: its leak test is written down, and with one that has passed the build is
// done.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property string newestTest
    required property string whyNotDone
    required property string against // What speaks against calling it done.
    required property bool brakes
    required property string who
    required property KeptFields kept
    property bool busy: false
    property string result: "" // "passed", "failed"; nobody has said it yet.

    readonly property var written: ({
        medium: medium.text,
        pressure: pressure.text,
        held: held.text,
        result: root.result,
        second: second.text,
        note: note.text
    })

    signal finished(var test)

    function fill(test: var) {
        medium.text = test.medium ?? "";
        pressure.text = test.pressure ?? "";
        held.text = test.held ?? "";
        second.text = test.second ?? "";
        note.text = test.note ?? "";
        result = test.result ?? "";
    }
    /// What was said of another test is none of this one.
    function begin() {
        fill({});
        const before = kept.takenUp(written);
        ofBefore.visible = Object.keys(before).length > 0;
        if (ofBefore.visible)
            fill(before);
        medium.takeFocus();
    }

    title: qsTr("Build done: the leak test")
    about: root.newestTest
    widest: 680
    saidBelow: true
    onOpened: begin()
    onClosed: kept.putAway()
    onWrittenChanged: {
        if (opened)
            kept.keep(written);
    }

    component Asked: ColumnLayout {
        id: asked

        required property string name
        required property string called // The field is, for a test.
        property alias text: field.text

        function takeFocus() {
            field.forceActiveFocus();
        }

        spacing: 2
        Layout.fillWidth: true
        Layout.preferredWidth: (grid.width - grid.columnSpacing) / 2

        Words {
            text: asked.name
            small: true
            quiet: true
            Layout.fillWidth: true
        }
        InkField {
            id: field

            objectName: asked.called
            name: asked.name
            Layout.fillWidth: true
            onAccepted: root.finished(root.written)
        }
    }

    OfBefore {
        id: ofBefore
    }
    Words {
        objectName: "speaksAgainst"
        visible: text !== ""
        text: root.against
        color: Theme.caution
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Words {
        text: qsTr("Depressurise before a joint is opened, catch the fluid, no ignition source, "
                   + "eye and skin protection, extinguisher at hand. A gas under pressure bursts "
                   + "where a liquid only leaks: no more than the weakest part is rated for, and "
                   + "stand aside.")
        small: true
        quiet: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    GridLayout {
        id: grid

        columns: 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        Asked {
            id: medium

            name: qsTr("with what: air, water, the fluid itself")
            called: "testMedium"
        }
        Asked {
            id: pressure

            name: qsTr("at which pressure, with its unit")
            called: "testPressure"
        }
        Asked {
            id: held

            name: qsTr("for how long")
            called: "testHeld"
        }
        Asked {
            id: second

            name: root.brakes ? qsTr("who has seen it too: brakes need it")
                              : qsTr("who has seen it too")
            called: "testSecond"
        }
        Asked {
            id: note

            name: qsTr("what else was seen")
            called: "testNote"
        }
        Row {
            spacing: 4
            Layout.alignment: Qt.AlignBottom

            GroupButton {
                objectName: "testPassed"
                text: qsTr("it held")
                checked: root.result === "passed"
                onClicked: root.result = "passed"
            }
            GroupButton {
                objectName: "testFailed"
                text: qsTr("it leaked")
                checked: root.result === "failed"
                onClicked: root.result = "failed"
            }
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "writeTest"
            text: root.result === "passed" ? qsTr("Write it down: build done")
                : root.result === "failed" ? qsTr("Write it down: it leaked")
                                           : qsTr("Write it down")
            enabled: !root.busy
            onClicked: root.finished(root.written)
        }
        DeskButton {
            objectName: "doneWithTest"
            visible: root.whyNotDone === ""
            text: qsTr("Done with the test that stands")
            enabled: !root.busy
            onClicked: root.finished({})
        }
        DeskButton {
            text: qsTr("Back to the build  Esc")
            framed: false
            onClicked: root.close()
        }
    }
    SheetProblem {
        text: root.problem
        linesKept: 2
    }
}
