// SPDX-License-Identifier: MIT
//
// The area of builds: its screen, the builds to choose from, and the sheets of handing out.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

AreaScreen {
    id: root

    readonly property BuildDesk build: Desk.build
    readonly property string buildId: build.id
    readonly property AbreastScreen abreastScreen: abreastLoader.item as AbreastScreen
    property bool byDate: false // The builds are side by side.

    function enter() {
        if (root.byDate && abreastScreen)
            abreastScreen.enter();
        else
            screen.forceActiveFocus(Qt.OtherFocusReason);
    }
    function find(typed: string) {
        if (root.byDate)
            Desk.abreast.find(typed);
        else
            root.build.find(typed);
    }
    function done() {
        enter();
    }
    function showByDate(shows: bool) {
        if (shows && root.build.id !== "")
            Desk.abreast.build = root.build.id; // That one is in hand there, too.
        root.byDate = shows;
        root.forgotten();
        enter();
    }
    function go(kind: string, target: string) {
        if (kind === "line" || kind === "shelf")
            screen.showPart(target);
        else
            screen.showOnMap(target);
    }

    function scan(code: string): bool {
        return root.byDate ? Desk.abreast.scan(code) : sheets.scan(code);
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
    onBuildIdChanged: byDate = false
    ready: !root.byDate || (abreastScreen !== null && !Desk.abreast.loading)
    ownKinds: byDate ? ["part"] : []
    found: byDate ? null : build.found
    foundNothing: qsTr("Nothing in this build has all these words.")
    findHint: byDate ? qsTr("Narrow: AD-66, adapter, hose end  (Ctrl+F)")
                     : qsTr("Find: pump, -8 orb, 10 micron, od 22.1 mm  (Ctrl+F)")
    findName: byDate ? qsTr("Find among the parts of all builds") : qsTr("Find in this build")

    Binding {
        target: Desk.abreast
        property: "looking"
        value: root.current && root.byDate
    }
    Binding {
        target: Desk.abreast
        property: "inInches"
        value: Look.inInches
    }
    Shortcut {
        sequence: "Ctrl+D"
        enabled: root.current && Desk.hasShop
        onActivated: root.showByDate(!root.byDate)
    }

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
                enabled: root.current && root.build.isOpen && !root.byDate
                onActivated: screen.showPicture(pictureKey.index)
            }
        }
    }
    BuildsScreen {
        id: screen

        anchors.fill: parent
        visible: root.build.isOpen && !root.byDate
        focus: !root.byDate
        build: root.build
        handing: Desk.handing
        pictures: Desk.pictures
        onOtherBuild: chooser.open()
        onBuildAsked: key => Desk.openBuild(key)
        onByDate: root.showByDate(true)
        onPapersAsked: root.askPapers()
        onStepAsked: step => sheets.open(step)
        onJointAsked: spot => sheets.openJoint(spot)
        onStepExplained: why => root.explained(why)
    }
    Loader {
        id: abreastLoader

        property bool wanted: root.byDate // Once it was looked at it stays.

        anchors.fill: parent
        visible: root.byDate
        focus: root.byDate
        active: false
        asynchronous: Pace.inSteps
        onWantedChanged: active = active || wanted
        source: "../abreast/AbreastScreen.qml"
        onLoaded: {
            if (root.byDate && root.current)
                root.enter();
        }

        Connections {
            target: root.abreastScreen

            function onLeaveAsked() {
                root.showByDate(false);
            }
            function onBuyAsked(part: string) {
                root.wentTo(2, part);
            }
            function onOpenAsked(build: string) {
                Desk.openBuild(build);
                root.showByDate(false);
            }
            function onExplained(why: string) {
                root.explained(why);
            }
        }
    }
    BuildChooser {
        id: chooser

        builds: Desk.builds
        onByDate: root.showByDate(true)
        onChosen: key => {
            Desk.openBuild(key);
            root.showByDate(false);
        }
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
    FileToWrite {
        id: paperFile

        objectName: "buildPaperFile"
        title: Desk.papers.title
        nameFilters: Desk.papers.filters
        onAccepted: Desk.papers.write(selectedFile)
    }
    Connections {
        target: Desk.papers

        function onFilled() {
            paperSheet.close();
            paperFile.ask(Desk.papers.fileName);
        }
    }
    HandingSheets {
        id: sheets

        handing: Desk.handing
        who: Desk.who
    }
}
