// SPDX-License-Identifier: MIT
//
// A part's number, what it is, and its drawing with the words that it was made from.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property PartPanel part
    required property PartPhoto photo

    spacing: 4

    PartNumber { // Smaller where it is long: here all of it is read.
        objectName: "partNumber"
        width: root.width
        text: root.part.number
        font.pixelSize: Theme.titleText
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 8
    }
    Sentence {
        width: root.width
        sentence: root.part.title
    }
    Sentence {
        width: root.width
        sentence: root.part.about
        small: true
        quiet: true
    }
    Rectangle {
        visible: root.part.body !== ""
        width: root.width
        height: 132
        radius: Theme.corner
        color: Theme.stripe
        border.color: Theme.rule

        PartDrawing {
            objectName: "partDrawing"
            anchors.fill: parent
            anchors.margins: 6
            ports: root.part.portTexts
            body: root.part.body
            bend: root.part.bend
            ink: Theme.ink
            quiet: Theme.pipe
            accent: Theme.accent
            paper: Theme.stripe
            Accessible.role: Accessible.Graphic
            Accessible.name: Gaps.fill(qsTr("drawing of %1, %2"),
                                       root.part.number, root.part.title)
        }
    }
    Image {
        objectName: "partPhoto"
        visible: root.photo.says !== ""
        width: root.width
        height: 190
        fillMode: Image.PreserveAspectFit
        asynchronous: true
        mipmap: true
        source: root.photo.source
        Accessible.role: Accessible.Graphic
        Accessible.name: root.photo.says
    }
    Repeater {
        model: root.part.ports

        Item {
            id: end

            required property int index
            required property string name
            required property string port
            required property string thread
            required property string says

            width: root.width
            implicitHeight: words.height
            Accessible.role: Accessible.StaticText
            Accessible.name: says

            Words {
                text: end.index + 1
                strong: true
                color: Theme.accent
            }
            Sentence {
                id: words

                x: 18
                width: end.width - 18
                sentence: end.thread === "" ? end.port
                                            : Gaps.fill(qsTr("%1  ·  %2"), end.port, end.thread)
            }
        }
    }
}
