// SPDX-License-Identifier: MIT
//
// The ports of a card that is written, one below the other, and one more.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property CardEditor editor

    property bool adding: false

    signal reached(Item item)
    signal entered()

    spacing: Theme.gap

    Words {
        text: qsTr("Ports, in words")
        strong: true
    }
    Repeater {
        id: ports

        model: root.editor.ports
        onItemAdded: (index, item) => {
            if (root.adding)
                item.forceActiveFocus(Qt.TabFocusReason);
        }

        PortField {
            width: root.width
            onNamed: text => root.editor.namePort(key, text)
            onWorded: text => root.editor.wordPort(key, text)
            onFlows: chosen => root.editor.setRole(key, chosen)
            onDropped: {
                more.forceActiveFocus(Qt.TabFocusReason);
                root.editor.dropPort(key);
            }
            onEntered: root.entered()
            onReached: item => {
                root.editor.lookAt(key);
                root.reached(item);
            }
        }
    }
    DeskButton {
        id: more

        objectName: "addPort"
        text: qsTr("+ port")
        Accessible.name: qsTr("add a port")
        onClicked: {
            root.adding = true;
            root.editor.addPort();
            root.adding = false;
        }
        onActiveFocusChanged: {
            if (activeFocus)
                root.reached(more);
        }
    }
}
