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
    required property bool brakes
    required property string who
    required property KeptFields kept
    property bool busy: false
    property bool passed: true

    readonly property var written: ({
        medium: medium.text,
        pressure: pressure.text,
        held: held.text,
        passed: root.passed,
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
        passed = test.passed ?? true;
    }
    /// What was said of another test is none of this one.
    function begin() {
        fill({});
        const before = kept.takenUp(written);
        ofBefore.visible = Object.keys(before).length > 0;
        if (ofBefore.visible)
            fill(before);
        medium.forceActiveFocus();
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

    OfBefore {
        id: ofBefore
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
        columns: 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        InkField {
            id: medium

            objectName: "testMedium"
            name: qsTr("with what")
            placeholderText: qsTr("with what: air, water, the fluid itself")
            Layout.fillWidth: true
        }
        InkField {
            id: pressure

            objectName: "testPressure"
            name: qsTr("at which pressure")
            placeholderText: qsTr("at which pressure, with its unit")
            Layout.fillWidth: true
        }
        InkField {
            id: held

            objectName: "testHeld"
            name: qsTr("for how long")
            placeholderText: qsTr("for how long")
            Layout.fillWidth: true
        }
        InkField {
            id: second

            objectName: "testSecond"
            name: qsTr("who has seen it too")
            placeholderText: root.brakes ? qsTr("who has seen it too: brakes need it")
                                         : qsTr("who has seen it too")
            Layout.fillWidth: true
        }
        InkField {
            id: note

            objectName: "testNote"
            name: qsTr("what else was seen")
            placeholderText: qsTr("what else was seen")
            Layout.fillWidth: true
        }
        Row {
            spacing: 4

            GroupButton {
                objectName: "testPassed"
                text: qsTr("it held")
                checked: root.passed
                onClicked: root.passed = true
            }
            GroupButton {
                objectName: "testFailed"
                text: qsTr("it leaked")
                checked: !root.passed
                onClicked: root.passed = false
            }
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "writeTest"
            text: root.passed ? qsTr("Write it down: build done") : qsTr("Write it down: it leaked")
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
