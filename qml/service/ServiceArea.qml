// SPDX-License-Identifier: MIT
//
// The area of service: its screen, and the sheet on which a hand says what it did.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

AreaScreen {
    id: root

    readonly property ServiceDesk service: Desk.service
    property string typed: ""

    function enter() {
        screen.enter();
    }
    function find(typed: string) {
        root.typed = typed;
        root.service.find(typed);
    }
    function done() {
        if (root.service.tab === "lot" && root.typed !== "")
            root.service.seekLot(root.typed);
        screen.enter();
    }
    function scan(code: string): bool {
        return sheet.opened ? sheet.scan(code) : root.service.scan(code);
    }
    function askPaper(paper: string) {
        if (root.service.paper.begin(paper, root.service.car))
            paperSheet.open();
        else
            root.explained(qsTr("Nothing is known of what is in this car, so nothing to print."));
    }
    /// By a work's name, or by the letter that was pressed.
    function ask(deed: string) {
        if (root.service.form.begin(deed))
            sheet.open();
        else
            root.explained(root.service.form.whyNot(deed));
    }

    findHint: service.tab === "lot" ? qsTr("A lot, serial, tag or part, then Enter  (Ctrl+F)")
                                    : qsTr("Narrow: filter, pump, a lot  (Ctrl+F)")
    findName: service.tab === "lot" ? qsTr("The lot to follow") : qsTr("Find in the cars")
    takesScans: sheet.opened
    ready: !root.service.loading
    onCurrentChanged: root.service.looking = current

    Binding {
        target: root.service
        property: "inInches"
        value: Look.inInches
    }
    Connections {
        target: root.service

        function onForgotten() {
            root.typed = "";
            root.forgotten();
        }
        function onExplained(sentence: string) {
            root.explained(sentence);
        }
    }
    ServiceScreen {
        id: screen

        anchors.fill: parent
        focus: true
        service: root.service
        busy: Desk.pen.busy
        onAsked: deed => root.ask(deed)
        onBackAsked: (done, what) => {
            if (root.service.goingBack.begin(done, what))
                backSheet.open();
        }
        onPaperAsked: paper => root.askPaper(paper)
    }
    FormSheet {
        id: paperSheet

        form: root.service.paper
        busy: root.service.paper.busy
    }
    FileToWrite {
        id: paperFile

        objectName: "paperFile"
        title: root.service.paper.title
        nameFilters: [qsTr("Papers (*.pdf)")]
        onAccepted: root.service.paper.write(selectedFile)
    }
    Connections {
        target: root.service.paper

        function onFilled() {
            paperSheet.close();
            paperFile.ask(root.service.paper.fileName);
        }
    }
    FormSheet {
        id: sheet

        form: root.service.form
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    FormSheet {
        id: backSheet

        form: root.service.goingBack
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    Connections {
        target: Desk.pen

        function onWrote() {
            sheet.close();
            backSheet.close();
        }
    }
}
