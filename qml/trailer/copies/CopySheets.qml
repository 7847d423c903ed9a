// SPDX-License-Identifier: MIT
//
// The sheets about copies that go along: taking one, looking at one that came back, giving one up.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property CopiesDesk copies

    readonly property bool opened: takeSheet.opened || lookSheet.opened || giveUpSheet.opened

    signal looking()

    function take() {
        root.copies.hear();
        takeSheet.open();
    }
    function look() {
        root.copies.hear();
        lookSheet.open();
    }
    function giveUp(trip: string, name: string, places: var) {
        root.copies.hear();
        giveUpSheet.trip = trip;
        giveUpSheet.name = name;
        giveUpSheet.places = places;
        giveUpSheet.open();
    }

    TakeCopySheet {
        id: takeSheet

        kept: root.copies.departure
        places: root.copies.places
        suggested: root.copies.suggested
        problem: root.copies.problem
        busy: root.copies.busy
        onFileAsked: saveDialog.ask(qsTr("trailer-copy.flarestock"))
        onTaken: departure => root.copies.take(departure)
    }
    LookCopySheet {
        id: lookSheet

        expected: root.copies.expected
        onChanged: root.copies.hear()
        problem: root.copies.problem
        busy: root.copies.busy
        onFileAsked: openDialog.open()
        onLooked: file => {
            root.copies.look(file);
            if (root.copies.problem === "") {
                lookSheet.close();
                root.looking();
            }
        }
    }
    GiveUpSheet {
        id: giveUpSheet

        problem: root.copies.problem
        busy: root.copies.busy
        onReleased: (trip, place) => root.copies.release(trip, place)
        onEnded: trip => root.copies.end(trip)
    }
    Connections {
        target: root.copies

        function onWrote() {
            takeSheet.close();
            giveUpSheet.close();
        }
    }
    FileToWrite {
        id: saveDialog

        title: qsTr("Where the copy goes")
        acceptLabel: qsTr("Put it there")
        mayReplace: false
        nameFilters: [qsTr("Shop files (*.flarestock)")]
        onAccepted: takeSheet.setFile(root.copies.pathOf(selectedFile))
    }
    FileToRead {
        id: openDialog

        title: qsTr("The copy that came back")
        nameFilters: [qsTr("Shop files (*.flarestock)"), qsTr("All files (*)")]
        onAccepted: lookSheet.setFile(root.copies.pathOf(selectedFile))
    }
}
