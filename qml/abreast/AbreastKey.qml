// SPDX-License-Identifier: MIT
//
// What the shapes in the cells mean.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Row {
    id: root

    component Shape: Row {
        id: shape

        required property string word
        property real own: 0
        property real here: 0
        property real coming: 0
        property real lacks: 0

        spacing: 5

        TallyDrawing {
            y: 3
            width: 11
            height: 11
            own: shape.own
            here: shape.here
            coming: shape.coming
            lacks: shape.lacks
            ink: Theme.accent
            lackInk: Theme.caution
            paper: Theme.surface
        }
        Words {
            text: shape.word
            small: true
            quiet: true
        }
    }

    spacing: Theme.wideGap

    Shape {
        here: 1
        word: qsTr("from stock")
    }
    Shape {
        own: 1
        word: qsTr("its own: reserved, or in the car")
    }
    Shape {
        coming: 1
        word: qsTr("on order, in time")
    }
    Shape {
        lacks: 1
        word: qsTr("short")
    }
    Words {
        text: qsTr("Ctrl+← →  another day    ↵  to what is short, else to the build")
        small: true
        quiet: true
    }
}
