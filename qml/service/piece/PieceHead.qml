// SPDX-License-Identifier: MIT
//
// A position, what is there, and how it stands.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property ServiceDesk service

    spacing: 4

    Sentence {
        objectName: "pieceTitle"
        width: root.width
        sentence: root.service.pieceTitle
        strong: true
        font.pixelSize: Theme.titleText
    }
    Sentence {
        objectName: "pieceAbout"
        width: root.width
        sentence: root.service.pieceAbout
    }
    Item {
        width: root.width
        height: Math.max(28, state.height)

        MarkIcon {
            mark: root.service.pieceMark
        }
        Sentence {
            id: state

            objectName: "pieceState"
            x: 34
            y: Math.max(0, (26 - height) / 2)
            width: root.width - x
            sentence: root.service.pieceState
            strong: true
            color: Theme.markInk(root.service.pieceMark)
        }
    }
}
