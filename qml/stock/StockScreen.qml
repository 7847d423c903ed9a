// SPDX-License-Identifier: MIT
//
// Stock: what is asked for above, its lines at the left, the one in hand at the right.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property StockDesk stock
    property bool busy: false

    readonly property bool roomy: height >= 700
    readonly property real sideWidth: Math.max(330, Math.min(440, width * 0.31))

    signal asked(string deed, string why)
    signal backAsked(string movement, string what)
    signal whatIsThis()

    function enter() {
        table.enter();
    }

    Connections {
        target: root.stock

        function onArrived() {
            panel.enter();
        }
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        anchors.topMargin: root.roomy ? 12 : 8
        anchors.bottomMargin: root.roomy ? 12 : 8
        spacing: root.roomy ? 10 : 6

        StockTitle {
            stock: root.stock
            Layout.fillWidth: true
            onBelowAsked: {
                root.stock.showBelow();
                root.enter();
            }
            onWhatIsThis: root.whatIsThis()
        }
        NarrowStrip {
            fields: root.stock.narrowing
            isNarrowed: root.stock.narrowed
            Layout.fillWidth: true
            onNarrowed: (field, choice) => root.stock.narrow(field, choice)
            onCleared: root.stock.clear()
        }
        RowLayout {
            spacing: 12
            Layout.fillWidth: true
            Layout.fillHeight: true

            Sheet {
                Layout.fillWidth: true
                Layout.fillHeight: true

                StockTable {
                    id: table

                    anchors.fill: parent
                    rows: root.stock.rows
                    selected: root.stock.selected
                    order: root.stock.order
                    downwards: root.stock.downwards
                    nothing: root.stock.nothing
                    focus: true
                    onChosen: number => root.stock.selected = number
                    onEntered: panel.enter()
                    onSorted: order => root.stock.sortBy(order)
                }
            }
            Sheet {
                Layout.preferredWidth: root.sideWidth
                Layout.fillHeight: true

                PartPanelView {
                    id: panel

                    anchors.fill: parent
                    part: root.stock.panel
                    photo: root.stock.photo
                    deeds: root.stock.form.deeds
                    more: root.stock.more
                    busy: root.busy
                    onAsked: (deed, why) => root.asked(deed, why)
                    onBackAsked: (movement, what) => root.backAsked(movement, what)
                    onGone: table.enter()
                }
            }
        }
    }
}
