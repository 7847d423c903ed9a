// SPDX-License-Identifier: MIT
//
// A part with what lies of it, and what each of the builds that are shown gets. Without `pragma
// ComponentBehavior`, because what a bound Loader brings stays empty in a delegate of Qt 6.4.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property int index
    required property string key
    required property string part
    required property string what
    required property string stock
    required property string coming
    required property var cells
    required property string says
    required property AbreastColumns columns
    property bool current: false
    property bool inHand: false // The table has the keyboard.
    property int column: -1

    signal chosen(int column)
    signal entered(int column)

    height: columns.line
    Accessible.role: Accessible.Row
    Accessible.name: says

    Rectangle {
        anchors.fill: parent
        visible: root.index % 2 === 1
        color: Theme.stripe
    }
    Rectangle {
        width: root.columns.part
        height: parent.height
        color: root.current ? Theme.accentFill : "transparent"

        MouseArea {
            anchors.fill: parent
            onClicked: root.chosen(root.column)
        }
        Column {
            x: 12
            y: 4
            width: parent.width - 18

            Words {
                width: parent.width
                text: root.part
                strong: true
                elide: Text.ElideRight
            }
            Words {
                width: parent.width
                text: root.what
                small: true
                quiet: true
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 8
                elide: Text.ElideRight
            }
            Words {
                width: parent.width
                height: 26
                text: root.coming === "" ? root.stock
                                         : Gaps.fill(qsTr("%1; %2"), root.stock, root.coming)
                small: true
                wrapMode: Text.Wrap
                fontSizeMode: Text.Fit
                minimumPixelSize: 8
            }
        }
        Rectangle {
            anchors.right: parent.right
            width: 1
            height: parent.height
            color: Theme.ruleStrong
        }
    }
    Loader {
        asynchronous: Pace.inSteps
        x: root.columns.part
        // qmllint disable unqualified
        sourceComponent: AbreastCells {
            columns: root.columns
            cells: root.cells
            column: root.column
            inHand: root.current && root.inHand
        }
        // qmllint enable unqualified
    }
    Item {
        visible: root.current && root.inHand && root.column >= root.columns.first
                 && root.column < root.columns.first + root.columns.shown
        x: root.columns.part + (root.column - root.columns.first) * root.columns.build
        width: root.columns.build
        height: root.height

        FocusFrame {}
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.rule
    }
    MouseArea { // One for all cells.
        function columnAt(x: real): int {
            return root.columns.first + Math.floor(x / root.columns.build);
        }

        x: root.columns.part
        width: root.columns.shown * root.columns.build
        height: parent.height
        onClicked: mouse => root.chosen(columnAt(mouse.x))
        onDoubleClicked: mouse => root.entered(columnAt(mouse.x))
    }
}
