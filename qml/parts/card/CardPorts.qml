// SPDX-License-Identifier: MIT
//
// The ports of a card in words, a tag each: its thread and how many cards fit it. The one in hand
// shows below what it meets.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property PartsDesk parts

    property Item inHand: null // Its tag; null where no port is.

    signal reached(Item item)

    spacing: 6

    Words {
        text: qsTr("Ports, in words")
        strong: true
    }
    Repeater {
        model: Steps {
            of: root.parts.ports
        }

        PortTag {
            id: tag

            required property string key

            width: root.width
            checked: key === root.parts.port
            onCheckedChanged: root.inHand = checked ? tag : root.inHand === tag ? null : root.inHand
            onClicked: root.parts.port = checked ? "" : key
            onActiveFocusChanged: {
                if (activeFocus)
                    root.reached(tag);
            }
        }
    }
}
