// SPDX-License-Identifier: MIT
//
// The head of a card: its number, what it is, and what can be written on it.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property PartPanel part
    required property Rows offers

    signal asked(string deed)
    signal reached(Item item)

    spacing: 3

    PartNumber { // Smaller where it is long: here all of it is read.
        objectName: "cardNumber"
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
    Flow {
        width: root.width
        topPadding: 4
        spacing: 6

        DeskButton {
            id: change

            objectName: "card-change"
            text: qsTr("Change this card")
            onClicked: root.asked("change")
            onActiveFocusChanged: {
                if (activeFocus)
                    root.reached(change);
            }
        }
        DeskButton {
            id: fresh

            objectName: "card-offer"
            text: qsTr("New offer")
            onClicked: root.asked("offer")
            onActiveFocusChanged: {
                if (activeFocus)
                    root.reached(fresh);
            }
        }
        Repeater {
            model: root.offers

            DeskButton {
                id: other

                required property string key
                required property string label
                required property string says

                objectName: "card-offerOf"
                framed: false
                small: true
                text: label
                Accessible.name: says
                onClicked: root.asked("offer|" + key)
                onActiveFocusChanged: {
                    if (activeFocus)
                        root.reached(other);
                }
            }
        }
    }
}
