// SPDX-License-Identifier: MIT
//
// What is not there, in words inside a broken outline.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string text
    property bool wraps: false // Into lines; else what does not fit is left out.

    implicitWidth: Math.ceil(line.advanceWidth) + 16 // In one line, however it is laid out.
    implicitHeight: wraps ? Math.max(20, words.contentHeight + 6) : 20

    TextMetrics {
        id: line

        font: words.font
        text: root.text
    }
    TagDrawing {
        anchors.fill: parent
        fill: Theme.cautionFill
        edge: Theme.caution
        hole: "transparent"
        cut: 4
        broken: true
    }
    Words {
        id: words

        anchors.fill: parent
        anchors.leftMargin: 8
        anchors.rightMargin: 7
        text: root.text
        small: true
        strong: true
        color: Theme.caution
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        wrapMode: root.wraps ? Text.Wrap : Text.NoWrap
        elide: root.wraps ? Text.ElideNone : Text.ElideLeft
    }
}
