// SPDX-License-Identifier: MIT
//
// A list that is taken in: how far it is read, one question after the other, then what it changes
// and one button for all that is clear. Nothing is in the shop before that. What was answered waits
// where the sheet is put away.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property ListImport list
    property bool busy: false
    property string refused: "" // Why it could not be written.

    readonly property bool settled: list.loaded && !list.asking

    signal fileAsked()

    /// The keyboard goes to what comes next.
    function step() {
        if (root.list.reading)
            stop.forceActiveFocus(Qt.TabFocusReason);
        else if (root.list.asking)
            question.enter();
        else if (root.list.loaded)
            finish.forceActiveFocus(Qt.TabFocusReason);
        else
            choose.forceActiveFocus(Qt.TabFocusReason);
    }

    title: list.file === "" ? qsTr("Import a list") : qsTr("Import %1").arg(list.file)
    about: list.loaded ? list.about
         : qsTr("Parts, suppliers or offers as a CSV file. "
                + "An empty cell leaves what the card says.")
    problem: list.problem !== "" ? list.problem : refused
    widest: 760
    onOpened: step()
    onClosed: list.putAway()

    Timer {
        id: soon // Once what comes next is to be seen.

        interval: 0
        onTriggered: root.step()
    }
    Connections {
        target: root.list

        function onReadingChanged() {
            soon.restart();
        }
        function onAsked() {
            soon.restart();
        }
    }
    OfBefore {
        visible: root.list.ofBefore
    }
    ProgressBar {
        id: bar

        visible: root.list.reading
        value: root.list.progress
        Accessible.name: qsTr("read so far")
        background: Rectangle {
            implicitHeight: 10
            radius: 5
            color: Theme.stripe
            border.color: Theme.rule
        }
        contentItem: Item {
            Rectangle {
                width: bar.visualPosition * parent.width
                height: parent.height
                radius: 5
                color: Theme.accent
            }
        }
        Layout.fillWidth: true
    }
    ImportQuestion {
        id: question

        visible: root.list.asking
        list: root.list
        Layout.fillWidth: true
        Layout.fillHeight: true
    }
    ChangedList {
        visible: root.settled && root.list.changes.count > 0
        list: root.list
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: Math.min(330, implicitHeight)
        Layout.minimumHeight: 120
    }
    Words {
        objectName: "answeredWords"
        visible: root.settled && text !== ""
        text: root.list.answeredWords
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Words {
        visible: root.settled
        text: qsTr("Nothing is in the shop yet. All of it is written as one step, "
                   + "which can be taken back.")
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            id: choose

            objectName: "chooseList"
            visible: !root.list.reading && !root.list.loaded
            text: qsTr("Choose a file")
            onClicked: root.fileAsked()
        }
        DeskButton {
            id: stop

            objectName: "stopReading"
            visible: root.list.reading
            text: qsTr("Stop reading")
            onClicked: root.list.stop()
        }
        DeskButton {
            id: finish

            objectName: "takeIn"
            visible: root.settled
            enabled: !root.busy
            text: root.list.takeWords
            onClicked: root.list.finish()
        }
        DeskButton {
            objectName: "questionBefore"
            visible: root.list.loaded && root.list.question > 1
            text: qsTr("The question before")
            framed: false
            onClicked: root.list.goBack()
        }
        DeskButton {
            objectName: "otherList"
            visible: root.list.loaded
            text: qsTr("Choose another file")
            framed: false
            onClicked: root.fileAsked()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
