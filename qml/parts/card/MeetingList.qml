// SPDX-License-Identifier: MIT
//
// What a port meets among the ports of all cards, what fits first.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property string port // "ORB -6 female"
    required property Rows meetings
    property string source: ""

    objectName: "meetingList"
    spacing: 2

    Words {
        width: root.width
        text: qsTr("%1 meets …").arg(root.port)
        strong: true
        color: Theme.accent
        wrapMode: Text.Wrap
    }
    Rectangle {
        width: root.width
        height: 1
        color: Theme.rule
    }
    Repeater {
        model: Steps {
            of: root.meetings
        }

        MeetingLine {
            width: root.width
        }
    }
    Words {
        width: root.width
        visible: root.meetings.count === 0
        text: qsTr("No card has a port that goes on it.")
        quiet: true
        wrapMode: Text.Wrap
    }
    Words {
        width: root.width
        visible: text !== ""
        topPadding: 4
        text: root.source
        small: true
        quiet: true
        wrapMode: Text.Wrap
    }
}
