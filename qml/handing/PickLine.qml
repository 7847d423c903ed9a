// SPDX-License-Identifier: MIT
//
// One stop of the walk: the bin, what to take there, and a box to tick.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string place
    required property string part
    required property string what
    required property string take
    required property string cut
    required property string lot
    required property bool ticked
    required property string says
    property bool current: false

    implicitHeight: Math.max(48, words.height + 12)
    focusPolicy: Qt.NoFocus
    // The one in hand has the keyboard, and a blank may be part of what is typed on the list.
    Keys.forwardTo: ListView.view ? [ListView.view] : []
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: ticked
    Accessible.name: says

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
    }
    TickBox {
        x: 12
        anchors.verticalCenter: parent.verticalCenter
        ticked: root.ticked
    }
    Words {
        id: bin

        x: 50
        anchors.verticalCenter: parent.verticalCenter
        width: 110
        text: root.place
        strong: true
        font.pixelSize: Theme.headText
        elide: Text.ElideRight
    }
    Words {
        id: amount

        x: 166
        anchors.verticalCenter: parent.verticalCenter
        width: 110
        text: root.take
        strong: true
        font.pixelSize: Theme.headText
        horizontalAlignment: Text.AlignRight
    }
    Column {
        id: words

        x: 296
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x - 12
        spacing: 1

        Sentence {
            width: words.width
            sentence: root.lot === "" ? root.part : Gaps.fill(qsTr("%1  ·  %2"),
                                                              root.part, root.lot)
            strong: true
        }
        Words {
            width: words.width
            text: root.cut === "" ? root.what : Gaps.fill(qsTr("%1  ·  %2"), root.cut, root.what)
            small: true
            quiet: true
            wrapMode: Text.Wrap
        }
    }
}
