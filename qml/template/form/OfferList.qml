// SPDX-License-Identifier: MIT
//
// What could stand in a field, below it; anything else is typed.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

Popup {
    id: root

    property FieldLine field: null
    property var words: []

    signal chosen(FieldLine field, string word)

    function show(field: FieldLine, words: var) {
        root.field = field;
        root.words = words;
        const place = field.mapToItem(Overlay.overlay, 0, 0);
        x = place.x;
        const below = place.y + field.height + 2;
        y = below + height > Overlay.overlay.height ? Math.max(4, place.y - height - 2) : below;
        open();
    }
    function take(row: int) {
        root.close();
        if (row >= 0 && row < root.words.length)
            root.chosen(root.field, root.words[row]);
    }

    parent: Overlay.overlay
    modal: true
    focus: true
    padding: 4
    width: field ? Math.max(220, field.width) : 220
    height: Math.min(330, list.contentHeight + 2 * padding)
    onOpened: {
        list.currentIndex = 0;
        list.forceActiveFocus(Qt.PopupFocusReason);
    }

    background: Sheet {
        border.color: Theme.ruleStrong
    }
    GroupedList {
        id: list

        anchors.fill: parent
        objectName: "offerList"
        model: root.words
        implicitHeight: contentHeight
        Accessible.role: Accessible.List
        Accessible.name: qsTr("what could stand here")
        Keys.onReturnPressed: root.take(currentIndex)
        Keys.onEnterPressed: root.take(currentIndex)
        delegate: AbstractButton {
            id: word

            required property string modelData
            required property int index

            objectName: "offer"
            activeFocusOnTab: false
            width: list.width
            implicitHeight: Theme.target
            hoverEnabled: true
            Accessible.role: Accessible.ListItem
            Accessible.name: modelData
            onClicked: root.take(index)

            background: Rectangle {
                radius: Theme.corner
                color: word.ListView.isCurrentItem || word.hovered ? Theme.accentFill
                                                                   : "transparent"
            }
            contentItem: Words {
                leftPadding: 6
                text: word.modelData
                verticalAlignment: Text.AlignVCenter
                elide: Text.ElideRight
            }
        }
    }
    Words {
        visible: root.words.length === 0
        text: qsTr("Nothing to choose from; type it.")
        quiet: true
    }
}
