// SPDX-License-Identifier: MIT
//
// The area of builds: its screen, the builds to choose from, and the sheets of handing out.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Dialogs
import Flarestock.Desk
import Flarestock.Screens

AreaScreen {
    id: root

    readonly property BuildDesk build: Desk.build

    function enter() {
        screen.forceActiveFocus(Qt.OtherFocusReason);
    }
    function find(typed: string) {
        root.build.find(typed);
    }
    function go(kind: string, target: string) {
        if (kind === "line" || kind === "shelf")
            screen.showPart(target);
        else
            screen.showOnMap(target);
    }

    function scan(code: string): bool {
        return sheets.scan(code);
    }
    function askPapers() {
        if (Desk.papers.begin())
            paperSheet.open();
    }

    function plan(deed: string) {
        if (Desk.planning.begin(deed))
            planSheet.open();
        else
            root.explained(Desk.planning.whyNot(deed));
    }

    takesScans: sheets.takesScans
    found: build.found
    foundNothing: qsTr("Nothing in this build has all these words.")
    findHint: qsTr("Find: pump, -8 orb, 10 micron, od 22.1 mm  (Ctrl+F)")
    findName: qsTr("Find in this build")

    Shortcut {
        sequence: "Ctrl+P"
        enabled: root.current && root.build.isOpen
        onActivated: root.askPapers()
    }
    Shortcut {
        sequence: "Ctrl+N"
        enabled: root.current && root.build.isOpen
        onActivated: root.plan("plan")
    }
    Shortcut {
        sequence: "Ctrl+B"
        enabled: Desk.hasShop
        onActivated: chooser.open()
    }
    Repeater {
        model: 4

        Item {
            id: pictureKey

            required property int index

            Shortcut {
                sequence: "Ctrl+" + (pictureKey.index + 1)
                enabled: root.current && root.build.isOpen
                onActivated: screen.showPicture(pictureKey.index)
            }
        }
    }
    BuildsScreen {
        id: screen

        anchors.fill: parent
        visible: root.build.isOpen
        focus: true
        build: root.build
        handing: Desk.handing
        pictures: Desk.pictures
        onOtherBuild: chooser.open()
        onBuildAsked: key => Desk.openBuild(key)
        onPapersAsked: root.askPapers()
        onStepAsked: step => sheets.open(step)
        onJointAsked: spot => sheets.openJoint(spot)
        onStepExplained: why => root.explained(why)
    }
    BuildChooser {
        id: chooser

        builds: Desk.builds
        onChosen: key => Desk.openBuild(key)
        triedOut: Desk.planning.isTriedOut
        onTemplatesAsked: Desk.templates.ask()
        onDeedAsked: deed => root.plan(deed)
    }
    FormSheet {
        id: planSheet

        form: Desk.planning
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    Connections {
        target: Desk.pen

        function onWrote() {
            planSheet.close();
        }
    }
    FormSheet {
        id: paperSheet

        form: Desk.papers
        busy: Desk.papers.busy
    }
    FileDialog {
        id: paperFile

        objectName: "buildPaperFile"
        title: Desk.papers.title
        fileMode: FileDialog.SaveFile
        defaultSuffix: "pdf"
        nameFilters: Desk.papers.filters
        onAccepted: Desk.papers.write(selectedFile)
    }
    Connections {
        target: Desk.papers

        function onFilled() {
            paperSheet.close();
            paperFile.currentFile = paperFile.currentFolder + "/" + Desk.papers.fileName;
            paperFile.open();
        }
    }
    HandingSheets {
        id: sheets

        handing: Desk.handing
        who: Desk.who
    }
}
