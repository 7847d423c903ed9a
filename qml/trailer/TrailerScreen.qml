// SPDX-License-Identifier: MIT
//
// Trailer: the drawers at the left, below them the one that is pulled out where there is room; at
// the right one piece of work at a time.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property TrailerDesk trailer
    property bool busy: false
    property string problem: "" // Why the last deed was not done.
    property int work: 1 // 0 is the drawer, which stands at the left where there is room.

    readonly property bool roomy: height >= 700
    readonly property real sideWidth: Math.max(380, Math.min(620, width * 0.44))
    readonly property int shown: roomy && work === 0 ? 1 : work

    signal explained(string sentence)
    signal takeAsked()
    signal lookAsked()
    signal giveUpAsked(string trip, string name, var places)

    function enter() {
        wall.enter();
    }
    /// To the work of that number, with the keyboard.
    function show(part: int) {
        work = part;
        const panes = [smallDrawer, bringIn, takeOut, carry, copies];
        panes[shown].enter();
    }
    function showDrawer() {
        if (!roomy)
            return show(0);
        drawer.enter();
    }
    function lack() {
        for (let row = 0; row < trailer.drawers.count; ++row) {
            if (trailer.drawers.cell(row, "lack") > 0) {
                trailer.drawer = trailer.drawers.cell(row, "key");
                break;
            }
        }
        show(1);
    }

    Connections {
        target: root.trailer

        function onArrivedAtDrawer() {
            root.showDrawer();
        }
        function onArrivedAtLoad() {
            root.show(1);
        }
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        anchors.topMargin: root.roomy ? 12 : 8
        anchors.bottomMargin: root.roomy ? 12 : 8
        spacing: root.roomy ? 10 : 6

        TrailerTitle {
            trailer: root.trailer
            Layout.fillWidth: true
            onLackAsked: root.lack()
            onCopiesAsked: root.show(4)
        }
        RowLayout {
            spacing: 12
            Layout.fillWidth: true
            Layout.fillHeight: true

            ColumnLayout {
                spacing: 10
                Layout.preferredWidth: root.sideWidth
                Layout.maximumWidth: root.sideWidth
                Layout.fillHeight: true

                DrawerWall {
                    id: wall

                    focus: true
                    drawers: root.trailer.drawers
                    pulledOut: root.trailer.drawer
                    nothing: root.trailer.nothing
                    withWheels: root.roomy
                    Layout.fillWidth: true
                    Layout.fillHeight: !root.roomy
                    Layout.preferredHeight: Math.min(wanted, root.height * 0.52)
                    onChosen: one => root.trailer.drawer = one
                    onEntered: root.showDrawer()
                }
                Sheet {
                    visible: root.roomy
                    Layout.fillWidth: true
                    Layout.fillHeight: true

                    DrawerTable {
                        id: drawer

                        anchors.fill: parent
                        lines: root.trailer.inDrawer
                        title: root.trailer.drawerTitle
                        about: root.trailer.drawerAbout
                        busy: root.busy
                        onLoadAsked: root.trailer.load.finishDrawer(root.trailer.drawer)
                        onGone: root.enter()
                    }
                }
            }
            ColumnLayout {
                spacing: 0
                Layout.fillWidth: true
                Layout.fillHeight: true

                WorkTabs {
                    shown: root.shown
                    withDrawer: !root.roomy
                    lacking: root.trailer.load.rows.count
                    over: root.trailer.unload.rows.count
                    away: root.trailer.copies.awayCount
                    Layout.fillWidth: true
                    onChosen: part => root.work = part
                }
                Sheet {
                    Layout.fillWidth: true
                    Layout.fillHeight: true

                    DrawerTable {
                        id: smallDrawer

                        anchors.fill: parent
                        visible: root.shown === 0
                        lines: root.trailer.inDrawer
                        title: root.trailer.drawerTitle
                        about: root.trailer.drawerAbout
                        busy: root.busy
                        onLoadAsked: root.trailer.load.finishDrawer(root.trailer.drawer)
                        onGone: root.enter()
                    }
                    LoadPane {
                        id: bringIn

                        anchors.fill: parent
                        visible: root.shown === 1
                        load: root.trailer.load
                        busy: root.busy
                        problem: root.problem
                        onExplained: sentence => root.explained(sentence)
                    }
                    LoadPane {
                        id: takeOut

                        anchors.fill: parent
                        visible: root.shown === 2
                        outwards: true
                        load: root.trailer.unload
                        busy: root.busy
                        problem: root.problem
                        onExplained: sentence => root.explained(sentence)
                    }
                    CarryPane {
                        id: carry

                        anchors.fill: parent
                        visible: root.shown === 3
                        carry: root.trailer.carry
                        busy: root.busy
                        onVisibleChanged: root.trailer.carry.looking = visible
                        onExplained: sentence => root.explained(sentence)
                    }
                    CopiesPane {
                        id: copies

                        anchors.fill: parent
                        visible: root.shown === 4
                        copies: root.trailer.copies
                        onTakeAsked: root.takeAsked()
                        onLookAsked: root.lookAsked()
                        onReleaseAsked: (trip, name, places) => root.giveUpAsked(trip, name, places)
                        onEndAsked: (trip, name) => root.giveUpAsked(trip, name, [])
                    }
                }
            }
        }
    }
}
