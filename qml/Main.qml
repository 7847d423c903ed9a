// SPDX-License-Identifier: MIT
//
// The window: areas at the left, find and whereabouts above, the screen, the last step below.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ApplicationWindow {
    id: root

    property string notice: ""
    property string waiting: "" // What was not written down when the desk ended.
    property bool leaving: false
    property alias area: stack.area
    readonly property int areaCount: stack.areas.length

    readonly property BuildDesk build: Desk.build
    readonly property bool hasBuild: build.isOpen
    readonly property bool hasShop: Desk.hasShop

    width: 1440
    height: 900
    minimumWidth: 1024
    minimumHeight: 640
    visible: true
    title: build.isOpen ? qsTr("%1 — Flarestock").arg(build.title) : "Flarestock"
    color: Theme.window
    font.family: Theme.family
    font.pixelSize: Theme.text
    palette {
        window: Theme.window
        windowText: Theme.ink
        base: Theme.surface
        alternateBase: Theme.stripe
        text: Theme.ink
        placeholderText: Theme.quiet
        button: Theme.side
        buttonText: Theme.ink
        highlight: Theme.selection // Under the ink: not every list asks for highlightedText.
        highlightedText: Theme.ink
        light: Theme.surface
        midlight: Theme.stripe
        mid: Theme.rule
        dark: Theme.ruleStrong
        toolTipBase: Theme.surface
        toolTipText: Theme.ink
    }
    onClosing: close => {
        Desk.keepNow();
        close.accepted = root.leaving || !Desk.backups.due && !Desk.isOwing;
        if (!close.accepted)
            shopSheets.askBeforeLeaving();
    }
    /// By a sheet; what is found stands below its field and covers nothing.
    readonly property bool isCovered: Overlay.overlay.visible && !strip.findField.isAnswering

    onHasBuildChanged: focusScreen()
    onHasShopChanged: focusScreen()
    Component.onCompleted: focusScreen()

    function focusScreen() {
        if (!hasShop || stack.area === 0 && !hasBuild) // The empty desk shows, or will in a moment.
            empty.forceActiveFocus(Qt.OtherFocusReason);
        else
            stack.enter();
    }
    function leave() {
        leaving = true;
        close();
    }
    /// A code goes to the sheet that is open, else to the area that shows; what means nothing there
    /// is sought.
    function hear(code: string) {
        if (!stack.visible || stack.screen === null)
            return;
        const here = (!isCovered || stack.screen.takesScans) && stack.screen.scan(code);
        if (isCovered && !here)
            Desk.pen.refuse(qsTr("%1 is nothing that this sheet asks for.").arg(code));
        else if (!here)
            strip.findField.seek(code);
        else if (!isCovered)
            strip.findField.putAway();
    }
    function ask(area: int) {
        stack.show(area);
        strip.findField.reset();
    }

    Binding {
        target: root.build
        property: "inInches"
        value: Look.inInches
    }
    Connections {
        target: root.build

        function onChanged() {
            root.notice = "";
        }
    }
    Repeater {
        model: stack.areas.length

        Item {
            id: key

            required property int index

            Shortcut {
                sequence: "Alt+" + (key.index + 1)
                onActivated: root.ask(key.index)
            }
        }
    }
    Shortcut {
        sequences: [StandardKey.Find] // qmllint disable unqualified
        onActivated: strip.findField.forceActiveFocus(Qt.ShortcutFocusReason)
    }
    Shortcut {
        sequences: [StandardKey.Open] // qmllint disable unqualified
        enabled: Desk.hasShop
        onActivated: shopSheets.openOther()
    }
    Shortcut {
        sequence: "Ctrl+Z"
        enabled: Desk.canTakeBack
        onActivated: Desk.takeBack()
    }

    RowLayout {
        anchors.fill: parent
        spacing: 0

        AreaColumn {
            areas: stack.areas
            current: stack.area
            Layout.fillHeight: true
            onAsked: area => root.ask(area)
        }
        ColumnLayout {
            spacing: 0

            TopStrip {
                id: strip

                screen: stack.screen
                anywhere: Desk.anywhere
                shopTitle: Desk.shopTitle
                shopFile: Desk.shopFile
                kept: Desk.kept
                isOwing: Desk.isOwing
                backedUp: Desk.backups.newest
                backupDue: Desk.backups.due
                backingUp: Desk.backups.busy
                Layout.fillWidth: true
                onWentTo: (kind, target) => stack.goTo(kind, target)
                onTakeBackAsked: {
                    if (Desk.canTakeBack)
                        Desk.takeBack();
                }
                onBackupAsked: Desk.backups.now()
                onOtherShopAsked: shopSheets.openOther()
            }
            Areas {
                id: stack

                visible: !empty.visible
                Layout.fillWidth: true
                Layout.fillHeight: true
                onExplained: sentence => root.notice = sentence
                onForgotten: strip.findField.clear()
            }
            EmptyDesk {
                id: empty

                visible: !Desk.hasShop || (stack.area === 0 && !root.build.isOpen)
                problem: Desk.problem
                opening: Desk.server.busy ? Desk.server.address : Desk.opening
                Layout.fillWidth: true
                Layout.fillHeight: true
                onAsked: deed => shopSheets.act(deed)
            }
            BottomLine {
                sentence: Desk.opening ? qsTr("Opening %1 …").arg(Desk.opening)
                    : root.notice || Desk.problem || Desk.pen.problem || root.waiting
                      || root.build.lastStep
                canTakeBack: Desk.canTakeBack
                who: Desk.who
                Layout.fillWidth: true
                onTakeBack: Desk.takeBack()
                onWhoAsked: nameSheet.open()
            }
        }
    }
    NameSheet {
        id: nameSheet

        who: Desk.who
        onNamed: name => Desk.who = name
        onClosed: Desk.pen.forgetWaiting()
    }
    Connections {
        target: Desk

        function onScanned(code: string) {
            root.hear(code);
        }
    }
    Binding {
        target: Desk
        property: "takesScans"
        value: stack.visible && stack.screen !== null
               && (!root.isCovered || stack.screen.takesScans)
    }
    Connections {
        target: Desk.pen

        function onAskedWho() {
            nameSheet.open();
        }
        function onWrote() {
            root.waiting = "";
        }
    }
    Connections {
        target: Desk.pen.unwritten

        function onFound() {
            root.waiting = Desk.pen.unwritten.said;
        }
    }
    TemplateSheets {}
    ShopSheets {
        id: shopSheets

        onLeave: root.leave()
    }
}
