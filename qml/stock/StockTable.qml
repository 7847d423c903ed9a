// SPDX-License-Identifier: MIT
//
// The lines of the stock. Up and down walk them, Enter goes to the part in hand; a line in hand
// stays in hand whatever comes and goes round it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property StockRows rows
    required property string selected
    required property int order
    required property bool downwards
    property string nothing: ""

    readonly property int page: Math.max(1, Math.floor(list.height / 46) - 1)

    signal chosen(string number)
    signal entered()
    signal sorted(int order)

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
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        StockHead {
            columns: widths
            order: root.order
            downwards: root.downwards
            onSorted: order => root.sorted(order)
        }
        Rectangle {
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.fillWidth: true
        }
        ListView {
            id: list

            objectName: "stockList"
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
            Accessible.role: Accessible.Table
            Accessible.name: qsTr("stock, %1 parts").arg(count)
            Layout.fillWidth: true
            Layout.fillHeight: true
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
            delegate: StockLine {
                objectName: "stockLine"
                width: list.width
                columns: widths
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
                step: 50 // One line.
            }

            Words {
                objectName: "stockNothing"
                anchors.centerIn: parent
                width: Math.min(parent.width - 48, 460)
                visible: text !== ""
                text: root.nothing
                quiet: true
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
            }
        }
        Words {
            text: qsTr("broken outline: below what we keep")
            small: true
            color: Theme.caution
            leftPadding: 12
            verticalAlignment: Text.AlignVCenter
            Layout.preferredHeight: 28
        }
    }
    StockColumns {
        id: widths

        width: list.width
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
