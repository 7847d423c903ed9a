// SPDX-License-Identifier: MIT
//
// The orders at the left; the one in hand at the right, or the box that came of it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property OrdersPage page
    required property BoxPage box
    property bool busy: false
    property string problem: ""

    readonly property bool hasBox: box.order !== ""

    signal asked(string deed, string why)
    signal paperAsked(string kind)
    signal troubleAsked()

    function enter() {
        if (hasBox)
            boxView.enter();
        else
            list.enter();
    }

    RowLayout {
        anchors.fill: parent
        spacing: 12

        ColumnLayout {
            spacing: 6
            Layout.preferredWidth: Math.max(270, Math.min(380, root.width * 0.3))
            Layout.maximumWidth: Layout.preferredWidth
            Layout.fillHeight: true

            Sheet {
                Layout.fillWidth: true
                Layout.fillHeight: true

                BuyingList {
                    id: list

                    anchors.fill: parent
                    rows: root.page.orders
                    selected: root.page.selected
                    nothing: root.page.nothing
                    name: qsTr("orders, %1").arg(root.page.orders.count)
                    focus: !root.hasBox
                    onChosen: key => root.page.selected = key
                    onEntered: panel.enter()
                    delegate: OrderCard {
                        width: ListView.view.width
                        current: ListView.isCurrentItem
                        inHand: list.inHand
                        onClicked: {
                            list.enter();
                            root.page.selected = key;
                        }
                    }
                }
            }
            DeskButton {
                objectName: "deed-new"
                text: qsTr("New order by hand")
                enabled: !root.busy
                Layout.fillWidth: true
                onClicked: root.asked("new", "")
            }
        }
        Sheet {
            Layout.fillWidth: true
            Layout.fillHeight: true

            OrderPanel {
                id: panel

                anchors.fill: parent
                visible: !root.hasBox
                page: root.page
                busy: root.busy
                onAsked: (deed, why) => root.asked(deed, why)
                onPaperAsked: kind => root.paperAsked(kind)
                onGone: list.enter()
            }
            BoxView {
                id: boxView

                anchors.fill: parent
                visible: root.hasBox
                box: root.box
                busy: root.busy
                problem: root.problem
                focus: root.hasBox
                onTroubleAsked: root.troubleAsked()
                onGone: {
                    root.box.close();
                    list.enter();
                }
            }
        }
    }
}
