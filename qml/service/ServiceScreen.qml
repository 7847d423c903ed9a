// SPDX-License-Identifier: MIT
//
// Service: which car or list at the top, its lines at the left, the position in hand at the right.
// A letter begins the work that says it on its button.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property ServiceDesk service
    property bool busy: false

    readonly property bool roomy: height >= 700
    readonly property real sideWidth: Math.max(330, Math.min(460, width * 0.34))
    readonly property Item list: service.tab === "due" ? dueList
                               : service.tab === "lot" ? lotSheet : positions

    signal asked(string deed)
    signal backAsked(string done, string what) // What was done here is taken back.
    signal paperAsked(string paper)

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }

    onListChanged: {
        if (positions.activeFocus || dueList.activeFocus || lotSheet.activeFocus)
            enter();
    }
    Keys.onPressed: event => {
        const isLetter = event.text.length === 1 && /[a-z]/i.test(event.text)
            && !(event.modifiers & (Qt.ControlModifier | Qt.AltModifier | Qt.MetaModifier));
        if (isLetter) {
            letter.press(event.text);
            event.accepted = true;
        }
    }

    HandLetter {
        id: letter

        onPressed: letter => {
            if (letter.toUpperCase() === "C" || letter.toUpperCase() === "S")
                root.paperAsked(letter.toUpperCase() === "C" ? "card" : "sheet");
            else
                root.asked(letter);
        }
    }
    Connections {
        target: root.service

        function onArrived() {
            root.enter();
        }
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        anchors.topMargin: root.roomy ? 12 : 8
        anchors.bottomMargin: root.roomy ? 12 : 8
        spacing: root.roomy ? 10 : 6

        ServiceTitle {
            service: root.service
            Layout.fillWidth: true
            onDueAsked: {
                root.service.tab = "due";
                root.enter();
            }
        }
        SheetTabs {
            tabs: root.service.tabs
            tab: root.service.tab
            Layout.fillWidth: true
            onChosen: tab => {
                root.service.tab = tab;
                root.enter();
            }
        }
        RowLayout {
            spacing: 12
            Layout.fillWidth: true
            Layout.fillHeight: true

            Sheet {
                Layout.fillWidth: true
                Layout.fillHeight: true

                PositionList {
                    id: positions

                    anchors.fill: parent
                    visible: root.list === positions
                    focus: visible
                    rows: root.service.positions
                    selected: root.service.selected
                    nothing: root.service.nothing
                    rings: root.service.rings
                    onChosen: key => root.service.selected = key
                    onEntered: panel.enter()
                    onStepped: tabs => root.service.step(tabs)
                    onRingsAsked: rings => root.service.rings = rings
                    onPaperAsked: paper => root.paperAsked(paper)
                }
                DueList {
                    id: dueList

                    anchors.fill: parent
                    visible: root.list === dueList
                    focus: visible
                    rows: root.service.due
                    selected: root.service.selected
                    nothing: root.service.nothing
                    onChosen: key => root.service.selected = key
                    onEntered: panel.enter()
                    onStepped: tabs => root.service.step(tabs)
                }
                LotSheet {
                    id: lotSheet

                    anchors.fill: parent
                    visible: root.list === lotSheet
                    focus: visible
                    lot: root.service.lot
                    selected: root.service.selected
                    nothing: root.service.nothing
                    onChosen: key => root.service.selected = key
                    onEntered: panel.enter()
                    onStepped: tabs => root.service.step(tabs)
                }
            }
            Sheet {
                Layout.preferredWidth: root.sideWidth
                Layout.fillHeight: true

                PiecePanelView {
                    id: panel

                    anchors.fill: parent
                    service: root.service
                    busy: root.busy
                    onAsked: deed => root.asked(deed)
                    onBackAsked: (done, what) => root.backAsked(done, what)
                    onGone: root.enter()
                }
            }
        }
    }
}
