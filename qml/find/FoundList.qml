// SPDX-License-Identifier: MIT
//
// Lines that were found, one of which Enter would take.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

ListView {
    id: root

    required property Rows rows
    required property int first // The number of its first line among all that were found.
    required property int at    // The number of the one that Enter takes.
    required property string name
    property string nothing: "" // What is said where there is none.

    signal taken(int line)

    /// Of that number; null where it is not one of these.
    function lineAt(line: int): Item {
        return itemAtIndex(line - first);
    }

    implicitHeight: count > 0 ? contentHeight : empty.visible ? Theme.target : 0
    height: implicitHeight
    interactive: false
    clip: true
    displayMarginEnd: unfolding.margin
    cacheBuffer: 0
    model: rows
    Accessible.role: Accessible.List
    Accessible.name: name
    delegate: FoundLine {
        width: root.width
        current: root.first + index === root.at
        onClicked: root.taken(root.first + index)
    }

    Unfolding {
        id: unfolding

        list: root
    }
    Words {
        id: empty

        anchors.centerIn: parent
        visible: root.rows !== null && root.count === 0 && root.nothing !== ""
        text: root.nothing
        quiet: true
    }
}
