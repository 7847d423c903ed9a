// SPDX-License-Identifier: MIT
//
// Buying: what it comes to above, below it one of its four pages.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property BuyingDesk buying
    property bool busy: false
    property string problem: ""

    readonly property bool roomy: height >= 700
    readonly property var pages: [lacking, slips, orders, owed]

    signal orderDeedAsked(string deed, string why)
    signal claimDeedAsked(string deed, string why)
    signal troubleAsked()
    signal paperAsked(string kind)
    signal letterAsked(string kind)

    function enter() {
        pages[buying.page].enter();
    }
    function turnTo(page: int) {
        buying.page = page;
        enter();
    }
    function showOrder(number: string) {
        buying.page = BuyingDesk.Orders;
        buying.orders.selected = number;
        orders.enter();
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        anchors.topMargin: root.roomy ? 12 : 8
        anchors.bottomMargin: root.roomy ? 12 : 8
        spacing: root.roomy ? 8 : 4

        BuyingTitle {
            buying: root.buying
            Layout.fillWidth: true
            onOwedAsked: root.turnTo(BuyingDesk.Owed)
            onSlipsAsked: root.turnTo(BuyingDesk.Slips)
        }
        BuyingPages {
            buying: root.buying
            Layout.fillWidth: true
            onChosen: page => root.turnTo(page)
        }
        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true

            LackingView {
                id: lacking

                anchors.fill: parent
                visible: root.buying.page === BuyingDesk.Lacking
                page: root.buying.lacking
                roomy: root.roomy
                focus: visible
            }
            SlipsView {
                id: slips

                anchors.fill: parent
                visible: root.buying.page === BuyingDesk.Slips
                page: root.buying.slips
                busy: root.busy
                roomy: root.roomy
                focus: visible
                onOrderAsked: number => root.showOrder(number)
            }
            OrdersView {
                id: orders

                anchors.fill: parent
                visible: root.buying.page === BuyingDesk.Orders
                page: root.buying.orders
                box: root.buying.box
                busy: root.busy
                problem: root.problem
                focus: visible
                onAsked: (deed, why) => root.orderDeedAsked(deed, why)
                onPaperAsked: kind => root.paperAsked(kind)
                onTroubleAsked: root.troubleAsked()
            }
            OwedView {
                id: owed

                anchors.fill: parent
                visible: root.buying.page === BuyingDesk.Owed
                page: root.buying.owed
                busy: root.busy
                focus: visible
                onAsked: (deed, why) => root.claimDeedAsked(deed, why)
                onLetterAsked: kind => root.letterAsked(kind)
            }
        }
    }
}
