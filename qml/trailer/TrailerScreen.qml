// SPDX-License-Identifier: MIT
//
// Trailer: the drawers at the left, below them the one that is pulled out where there is room; at
// the right one piece of work at a time.

pragma ComponentBehavior: Bound

import QtQuick
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
    readonly property LoadPane list: shown === 1 ? bringIn : shown === 2 ? takeOut : null

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
    TrailerTitle {
        id: title // Not in a layout with the rest: each would be laid out for the other's height.

        x: Theme.wideGap
        y: root.roomy ? 12 : 8
        width: root.width - 2 * x
        trailer: root.trailer
        onLackAsked: root.lack()
        onCopiesAsked: root.show(4)
    }
    Item {
        id: left

        anchors.left: title.left
        anchors.top: title.bottom
        anchors.topMargin: root.roomy ? 10 : 6
        anchors.bottom: parent.bottom
        anchors.bottomMargin: title.y
        width: root.sideWidth

        DrawerWall {
            id: wall

            focus: true
            drawers: root.trailer.drawers
            pulledOut: root.trailer.drawer
            nothing: root.trailer.nothing
            withWheels: root.roomy
            width: left.width
            height: root.roomy ? Math.min(wanted, root.height * 0.52) : left.height
            onChosen: one => root.trailer.drawer = one
            onEntered: root.showDrawer()
        }
        Sheet {
            visible: root.roomy
            anchors.fill: parent
            anchors.topMargin: wall.height + 10

            DrawerTable {
                id: drawer

                anchors.fill: parent
                lines: root.trailer.inDrawer
                title: root.trailer.drawerTitle
                about: root.trailer.drawerAbout
                lacks: root.trailer.drawerLacks
                busy: root.busy
                onLoadAsked: root.trailer.load.finishDrawer(root.trailer.drawer)
                onGone: root.enter()
            }
        }
    }
    WorkTabs {
        id: tabs

        anchors.left: left.right
        anchors.leftMargin: 12
        anchors.top: left.top
        anchors.right: title.right
        shown: root.shown
        withDrawer: !root.roomy
        lacking: root.trailer.load.rows.count
        over: root.trailer.unload.rows.count
        away: root.trailer.copies.awayCount
        onChosen: part => root.work = part
    }
    Sheet {
        anchors.left: tabs.left
        anchors.top: tabs.bottom
        anchors.right: tabs.right
        anchors.bottom: left.bottom

        DrawerTable {
            id: smallDrawer

            anchors.fill: parent
            visible: root.shown === 0
            lines: root.trailer.inDrawer
            title: root.trailer.drawerTitle
            about: root.trailer.drawerAbout
            lacks: root.trailer.drawerLacks
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
