// SPDX-License-Identifier: MIT
//
// The suppliers of the shop, one to change or a new one.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property Rows suppliers

    signal chosen(string id)

    title: qsTr("Suppliers")
    about: qsTr("Choose one to change what it asks, or write a new one.")
    widest: 520
    onOpened: fresh.forceActiveFocus(Qt.TabFocusReason)

    DeskButton {
        id: fresh

        objectName: "newSupplier"
        text: qsTr("A new supplier")
        onClicked: root.chosen("")
    }
    ListView {
        id: list

        implicitHeight: Math.min(360, contentHeight)
        model: root.suppliers
        clip: true
        activeFocusOnTab: count > 0
        keyNavigationEnabled: true
        highlightMoveDuration: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("suppliers")
        ScrollBar.vertical: SlimScrollBar {}
        Keys.onReturnPressed: root.chosen((currentItem as SupplierLine).key)
        Keys.onEnterPressed: root.chosen((currentItem as SupplierLine).key)
        Layout.fillWidth: true
        Layout.fillHeight: true
        delegate: SupplierLine {
            width: list.width
            current: ListView.isCurrentItem && list.activeFocus
            onClicked: root.chosen(key)
        }
    }
    DeskButton {
        text: qsTr("Not now  Esc")
        framed: false
        onClicked: root.close()
    }
}
