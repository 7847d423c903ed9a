// SPDX-License-Identifier: MIT
//
// The cards, by number. Up and down walk them, Enter goes to the card in hand; it stays in hand
// whatever comes and goes round it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property StockRows rows
    required property string selected
    property string nothing: ""

    readonly property int page: Math.max(1, Math.floor(list.height / 46) - 1)

    signal chosen(string number)
    signal entered()

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    function goTo(row: int) {
        const to = Math.max(0, Math.min(rows.count - 1, row));
        if (rows.count > 0)
            root.chosen(rows.numberAt(to));
    }

    ChosenLine {
        list: list
        rows: root.rows
        chosen: root.selected
    }
    ListView {
        id: list

        objectName: "cardList"
        anchors.fill: parent
        anchors.margins: 1
        model: root.rows
        clip: true
        displayMarginEnd: unfolding.margin
        cacheBuffer: 0
        reuseItems: true
        focus: true
        activeFocusOnTab: true
        keyNavigationEnabled: false
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("card index, %1 cards").arg(count)
        ScrollBar.vertical: SlimScrollBar {}
        Keys.onUpPressed: root.goTo(currentIndex - 1)
        Keys.onDownPressed: root.goTo(currentIndex + 1)
        Keys.onReturnPressed: root.entered()
        Keys.onEnterPressed: root.entered()
        Keys.onPressed: event => {
            const steps = {
                [Qt.Key_PageUp]: currentIndex - root.page,
                [Qt.Key_PageDown]: currentIndex + root.page,
                [Qt.Key_Home]: 0,
                [Qt.Key_End]: count - 1
            };
            if (steps[event.key] !== undefined) {
                root.goTo(steps[event.key]);
                event.accepted = true;
            }
        }
        delegate: CardTab {
            objectName: "cardTab"
            width: list.width
            current: ListView.isCurrentItem
            inHand: list.activeFocus
            onClicked: {
                root.enter();
                root.chosen(part);
            }
            onDoubleClicked: root.entered()
        }

        Unfolding {
            id: unfolding

            list: list
            reuses: true
        }

        Words {
            objectName: "cardsNothing"
            anchors.centerIn: parent
            width: Math.min(parent.width - 48, 460)
            visible: text !== ""
            text: root.nothing
            quiet: true
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
