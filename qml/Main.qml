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
    property bool leaving: false

    readonly property BuildDesk build: Desk.build
    readonly property bool hasBuild: build.isOpen

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
        close.accepted = root.leaving || !Desk.backups.due;
        if (!close.accepted)
            shopSheets.askBeforeLeaving();
    }
    onHasBuildChanged: focusScreen()
    Component.onCompleted: focusScreen()

    function focusScreen() {
        (hasBuild ? screen : empty).forceActiveFocus(Qt.OtherFocusReason);
    }

    function leave() {
        leaving = true;
        close();
    }

    function askArea(area: int) {
        const name = areas.areas[area];
        notice = area === 0 ? "" : qsTr("%1 is not built yet; only Builds is.").arg(name);
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
        model: 6

        Item {
            id: key

            required property int index

            Shortcut {
                sequence: "Alt+" + (key.index + 1)
                onActivated: root.askArea(key.index)
            }
        }
    }
    Shortcut {
        sequences: [StandardKey.Find] // qmllint disable unqualified
        onActivated: strip.findField.forceActiveFocus(Qt.ShortcutFocusReason)
    }
    Shortcut {
        sequence: "Ctrl+B"
        enabled: Desk.hasShop
        onActivated: chooser.open()
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
            id: areas

            Layout.fillHeight: true
            onAsked: area => root.askArea(area)
        }
        ColumnLayout {
            spacing: 0

            TopStrip {
                id: strip

                found: root.build.found
                shopTitle: Desk.shopTitle
                shopFile: Desk.shopFile
                kept: Desk.kept
                backedUp: Desk.backups.newest
                backupDue: Desk.backups.due
                backingUp: Desk.backups.busy
                Layout.fillWidth: true
                onBackupAsked: Desk.backups.now()
                onOtherShopAsked: shopSheets.openOther()
                onSought: typed => root.build.find(typed)
                onChosen: (kind, target) => {
                    if (kind === "line" || kind === "shelf")
                        screen.showPart(target);
                    else
                        screen.showOnMap(target);
                }
            }
            BuildsScreen {
                id: screen

                visible: root.build.isOpen
                build: root.build
                handing: Desk.handing
                Layout.fillWidth: true
                Layout.fillHeight: true
                onOtherBuild: chooser.open()
                onStepAsked: step => sheets.open(step)
                onStepExplained: why => root.notice = why
            }
            EmptyDesk {
                id: empty

                visible: !root.build.isOpen
                problem: Desk.problem
                opening: Desk.server.busy ? Desk.server.address : ""
                Layout.fillWidth: true
                Layout.fillHeight: true
                onMakeDemo: Desk.makeDemo()
                onOpenFile: shopSheets.openFile()
                onOpenServer: shopSheets.openServer()
            }
            BottomLine {
                sentence: root.notice || Desk.problem || Desk.handing.problem || root.build.lastStep
                canTakeBack: Desk.canTakeBack
                who: Desk.who
                Layout.fillWidth: true
                onTakeBack: Desk.takeBack()
                onWhoAsked: nameSheet.open()
            }
        }
    }
    BuildChooser {
        id: chooser

        builds: Desk.builds
        onChosen: key => Desk.openBuild(key)
    }
    HandingSheets {
        id: sheets

        handing: Desk.handing
        who: Desk.who
    }
    NameSheet {
        id: nameSheet

        who: Desk.who
        onNamed: name => Desk.who = name
        onClosed: Desk.handing.forgetWaiting()
    }
    Connections {
        target: Desk.handing

        function onAskedWho() {
            nameSheet.open();
        }
    }
    ShopSheets {
        id: shopSheets

        onLeave: root.leave()
    }
}
