// SPDX-License-Identifier: MIT
//
// The bill of materials: by station or by kind, each line with its reason; the total stands still.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows bill
    required property bool byKind
    required property string foot
    required property string total
    property Rows steps: null // What a hand does with the pieces; nothing where there is no shop.
    property bool busy: false
    property bool hasGot: false // Whether any line has a figure there; else the column folds away.
    property bool hasTrailer: false
    property bool hasWay: false
    property bool folds: false  // Whether it can be folded to its head.
    property bool folded: false // Only its head and the total show.

    signal foldAsked()
    signal grouped(bool byKind)
    signal shown(string where)
    signal stepAsked(string step)
    signal stepExplained(string why)

    // The line is in hand; the keyboard stays where it is.
    function pointAt(part: string): bool {
        const row = bill.rowOf(part);
        if (row < 0)
            return false;
        list.currentIndex = row;
        list.positionViewAtIndex(row, ListView.Beginning);
        return true;
    }
    function showPart(part: string) {
        if (!root.pointAt(part))
            return;
        list.positionViewAtIndex(list.currentIndex, ListView.Center);
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    function showShort() {
        for (let row = 0; row < bill.count; ++row) {
            if (bill.cell(row, "isShort")) {
                root.showPart(bill.cell(row, "key"));
                return;
            }
        }
        list.forceActiveFocus(Qt.OtherFocusReason);
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        RowLayout {
            spacing: 2
            Layout.leftMargin: 12
            Layout.rightMargin: 8

            Words {
                text: root.width < 900 ? qsTr("Bill") : qsTr("Bill of materials")
                strong: true
                font.pixelSize: Theme.headText
            }
            Item {
                implicitWidth: 12
            }
            GroupButton {
                objectName: "byStation"
                visible: !root.folded
                text: qsTr("by station")
                checked: !root.byKind
                onClicked: root.grouped(false)
            }
            GroupButton {
                objectName: "byKind"
                visible: !root.folded
                text: qsTr("by kind")
                checked: root.byKind
                onClicked: root.grouped(true)
            }
        }
        BillHead {
            visible: !root.folded
            columns: widths
        }
        Rectangle {
            visible: !root.folded
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.fillWidth: true
        }
        GroupedList {
            id: list

            objectName: "billList"
            model: root.bill
            visible: !root.folded
            focus: true
            Accessible.role: Accessible.Table
            Accessible.name: qsTr("bill of materials")
            Layout.fillWidth: true
            Layout.fillHeight: true
            Keys.onReturnPressed: root.shown(root.bill.cell(currentIndex, "at"))
            delegate: BillEntry {
                required property string at

                objectName: "billEntry"
                width: list.width
                columns: widths
                current: ListView.isCurrentItem && list.activeFocus
                onCurrentChanged: holding.restart()
                onHeightChanged: { // In hand it shows all of its words.
                    if (current)
                        holding.restart();
                }
                onClicked: {
                    list.currentIndex = index;
                    list.forceActiveFocus(Qt.MouseFocusReason);
                    root.shown(at);
                }
            }
        }
        // A ledger closes its column with a double line.
        Rectangle {
            visible: !root.folded
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.fillWidth: true
        }
        Rectangle {
            visible: !root.folded
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.topMargin: 2
            Layout.fillWidth: true
        }
        Item { // No row of a layout: in Qt 6.4 it keeps the width of a sum that was shorter.
            visible: !root.folded
            implicitHeight: 42
            Layout.fillWidth: true

            Words {
                anchors.left: parent.left
                anchors.right: totalTitle.left
                anchors.margins: 12
                anchors.baseline: sum.baseline
                text: root.foot
                small: true
                quiet: true
                elide: Text.ElideRight
            }
            Words {
                id: totalTitle

                anchors.right: sum.left
                anchors.rightMargin: Theme.wideGap
                anchors.baseline: sum.baseline
                text: qsTr("total")
                small: true
                quiet: true
            }
            Words {
                id: sum

                objectName: "total"
                anchors.right: parent.right
                anchors.rightMargin: 12
                anchors.verticalCenter: parent.verticalCenter
                text: root.total
                strong: true
                font.pixelSize: 18
            }
        }
    }
    // Beside the layout: a layout places what appears in it only one frame later.
    Row {
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: 1
        spacing: Theme.gap

        StepsRow {
            visible: !root.folded && root.steps !== null
            steps: root.steps
            busy: root.busy
            onAsked: step => root.stepAsked(step)
            onExplained: why => root.stepExplained(why)
        }
        Words {
            visible: root.folded
            height: Theme.target
            verticalAlignment: Text.AlignVCenter
            text: qsTr("total %1").arg(root.total)
            strong: true
        }
        DeskButton {
            objectName: "foldBill"
            visible: root.folds
            framed: false
            small: true
            text: root.folded ? qsTr("unfold ▴") : qsTr("fold away ▾")
            Accessible.name: root.folded ? qsTr("unfold the bill")
                                         : qsTr("fold the bill away, for more of the map")
            onClicked: root.foldAsked()
        }
    }
    Timer {
        id: holding // The row in hand, in sight.

        interval: 0
        onTriggered: {
            if (list.activeFocus)
                list.positionViewAtIndex(list.currentIndex, ListView.Contain);
        }
    }
    LedgerColumns {
        id: widths

        width: list.width
        hasGot: root.hasGot
        hasTrailer: root.hasTrailer
        hasWay: root.hasWay
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
