// SPDX-License-Identifier: MIT
//
// The positions of a car, strung on their pipes in flow order.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows rows
    required property string selected
    required property bool rings
    property string nothing: ""

    signal chosen(string key)
    signal entered()
    signal stepped(int tabs)
    signal ringsAsked(bool rings)
    signal paperAsked(string paper)

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        WorkList {
            id: list

            objectName: "positionList"
            rows: root.rows
            selected: root.selected
            nothing: root.nothing
            Accessible.name: qsTr("positions of the car, %1").arg(count)
            Layout.fillWidth: true
            Layout.fillHeight: true
            onChosen: key => root.chosen(key)
            onEntered: root.entered()
            onStepped: tabs => root.stepped(tabs)
            delegate: PositionLine {
                required property string key

                objectName: "positionLine"
                width: list.width
                columns: widths
                current: ListView.isCurrentItem
                inHand: list.activeFocus
                onClicked: {
                    list.forceActiveFocus(Qt.MouseFocusReason);
                    root.chosen(key);
                }
                onDoubleClicked: root.entered()
            }
        }
        Flow {
            spacing: 6
            Layout.fillWidth: true
            Layout.leftMargin: 6
            Layout.rightMargin: 6
            Layout.bottomMargin: 6
            Layout.topMargin: 6

            DeskButton {
                objectName: "serviceCard"
                text: qsTr("Service card  C")
                Accessible.description: qsTr("what is due, as a paper for the bench")
                onClicked: root.paperAsked("card")
            }
            DeskButton {
                objectName: "inspectionSheet"
                text: qsTr("Inspection sheet  S")
                Accessible.description: qsTr("each piece with lot and days, for the scrutineer")
                onClicked: root.paperAsked("sheet")
            }
            DeskButton {
                objectName: "rings"
                framed: false
                small: true
                text: root.rings ? qsTr("without plain rings and washers ▴")
                                 : qsTr("rings and washers too ▾")
                onClicked: root.ringsAsked(!root.rings)
            }
        }
    }
    ServiceColumns {
        id: widths

        width: list.width
    }
}
