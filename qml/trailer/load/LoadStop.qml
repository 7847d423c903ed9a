// SPDX-License-Identifier: MIT
//
// One stop of the walk with the load list: the bin, what to take, and a box to tick. What is to be
// bought has no box and stands in a broken outline.

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
    required property string lot
    required property string note
    required property bool isToBuy
    required property bool ticked
    required property string says
    property bool current: false
    property bool outwards: false // It is taken out, to `place`.

    objectName: "loadStop"
    implicitHeight: Math.max(48, words.height + 12)
    focusPolicy: Qt.NoFocus
    // The one in hand has the keyboard, and a blank may be part of what is typed on the list.
    Keys.forwardTo: ListView.view ? [ListView.view] : []
    Accessible.role: isToBuy ? Accessible.ListItem : Accessible.CheckBox
    Accessible.checkable: !isToBuy
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
        visible: !root.isToBuy
        anchors.verticalCenter: parent.verticalCenter
        ticked: root.ticked
    }
    MarkIcon {
        x: 12
        visible: root.isToBuy
        anchors.verticalCenter: parent.verticalCenter
        implicitWidth: 24
        mark: Standing.Short
    }
    Words {
        x: 48
        anchors.verticalCenter: parent.verticalCenter
        width: 96
        text: root.isToBuy ? qsTr("to buy") : !root.outwards ? root.place
            : root.place === "" ? qsTr("no bin") : qsTr("to %1").arg(root.place)
        strong: true
        color: root.isToBuy || root.place === "" ? Theme.caution : Theme.ink
        wrapMode: Text.Wrap
    }
    Words {
        x: 148
        anchors.verticalCenter: parent.verticalCenter
        width: 72
        text: root.take
        strong: true
        font.pixelSize: Theme.headText
        horizontalAlignment: Text.AlignRight
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 8
    }
    Column {
        id: words

        x: 234
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x - 12
        spacing: 1

        Sentence {
            width: words.width
            sentence: root.lot === "" ? root.part : Gaps.fill(qsTr("%1  ·  %2"),
                                                              root.part, root.lot)
            strong: true
        }
        Sentence {
            width: words.width
            sentence: root.note === "" ? root.what : Gaps.fill(qsTr("%1  ·  %2"),
                                                               root.note, root.what)
            small: true
            quiet: true
        }
    }
}
