// SPDX-License-Identifier: MIT
//
// One answer, as a tag that is written on: a measure is typed with its unit, anything else chosen.
// What was refused stays as it was typed, in a broken outline, until it is put right or Escape.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string title
    required property string form
    required property var choices
    required property string answer
    required property string problem
    property string otherwise: "" // The answer in the units that this person reads.

    readonly property bool isTyped: form === "measure"
    readonly property bool refused: problem !== ""
    readonly property bool active: field.activeFocus || box.activeFocus

    signal typed(string text)
    signal picked(int choice)
    signal givenUp()

    function sync() {
        if (!root.choices)
            return; // The row is not complete yet.
        field.text = root.answer;
        box.currentIndex = root.choices.indexOf(root.answer);
    }

    implicitHeight: 52
    implicitWidth: Math.max(74, label.implicitWidth + 32,
                            isTyped ? field.contentWidth + 38 + beside.room : box.textWidth + 52)
    onAnswerChanged: sync()
    onChoicesChanged: sync()
    Component.onCompleted: sync()

    TagDrawing {
        anchors.fill: parent
        fill: root.refused ? Theme.stopFill : Theme.surface
        edge: root.refused ? Theme.stop : root.active ? Theme.accent : Theme.ruleStrong
        edgeWidth: root.refused || root.active ? Theme.ring : 1
        broken: root.refused
        hole: Theme.window
    }
    Words {
        id: label

        x: 22
        y: 7
        text: root.refused ? qsTr("%1: not accepted").arg(root.title) : root.title
        small: true
        color: root.refused ? Theme.stop : Theme.quiet
    }
    TextField {
        id: field

        objectName: "measure"
        visible: root.isTyped
        anchors.fill: parent
        topPadding: 20
        bottomPadding: 4
        leftPadding: 22
        rightPadding: 8
        verticalAlignment: Text.AlignVCenter
        font.family: Theme.family
        font.pixelSize: Theme.text
        font.bold: true
        color: Theme.ink
        selectByMouse: true
        background: null
        Accessible.name: root.title
        Accessible.description: root.problem !== "" ? root.problem : root.otherwise
        onEditingFinished: {
            if (text !== root.answer)
                root.typed(text);
        }
        onActiveFocusChanged: {
            if (activeFocus)
                selectAll();
        }
        Keys.onEscapePressed: {
            root.sync();
            root.givenUp();
        }
    }
    Words {
        id: beside

        readonly property real room: text === "" ? 0 : implicitWidth + 8 // Also while it hides.

        objectName: "answerOtherwise"
        visible: !field.activeFocus // What is typed is in its own unit.
        anchors.right: parent.right
        anchors.rightMargin: 10
        anchors.baseline: field.baseline
        text: root.otherwise
        small: true
        quiet: true
    }
    EnterOpens {
        id: box

        property real textWidth: metrics.width

        objectName: "choice"
        visible: !root.isTyped
        anchors.fill: parent
        model: root.choices
        onModelChanged: root.sync() // Other choices begin with the first of them.
        font.family: Theme.family
        font.pixelSize: Theme.text
        Accessible.name: root.title
        background: null
        onActivated: index => {
            root.picked(index);
            Qt.callLater(root.sync);
        }
        contentItem: Words {
            leftPadding: 22
            topPadding: 16
            rightPadding: 6
            text: box.displayText
            strong: true
            verticalAlignment: Text.AlignVCenter
        }
        indicator: Words {
            x: box.width - width - 10
            y: 26
            text: "▾"
            small: true
            quiet: true
        }
        delegate: ItemDelegate {
            id: line

            required property string modelData
            required property int index

            width: Math.max(180, box.width)
            height: Math.max(Theme.target, implicitContentHeight + 12)
            highlighted: box.highlightedIndex === index
            Accessible.name: modelData
            background: Rectangle {
                color: line.highlighted ? Theme.accentFill : Theme.surface
            }
            contentItem: Words {
                text: line.modelData
                strong: line.index === box.currentIndex
                verticalAlignment: Text.AlignVCenter
                wrapMode: Text.Wrap
            }
        }
        popup.width: Math.max(180, box.width)
        popup.background: Sheet {
            border.color: Theme.ruleStrong
        }

        TextMetrics {
            id: metrics

            font.family: Theme.family
            font.pixelSize: Theme.text
            font.bold: true
            text: box.displayText
        }
    }
}
