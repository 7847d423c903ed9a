// SPDX-License-Identifier: MIT
//
// One build at the head of its column: whose it is, whether all is here by its day, and the day,
// which can be tried earlier and later. Without `pragma ComponentBehavior`, because what a bound
// Loader brings stays empty in a delegate of Qt 6.4.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Rectangle {
    id: root

    required property string title
    required property string car
    required property string day
    required property string was
    required property string word
    required property int mark
    required property string says
    property bool current: false
    property bool inHand: false // The heads have the keyboard, and this is the one.

    signal clicked()
    signal moved(int days)
    signal dayAsked()

    component DayButton: DeskButton {
        small: true
        padding: 2
        focusPolicy: Qt.NoFocus // The keyboard has Ctrl and the arrows.
    }

    color: current ? Theme.accentFill : Theme.surface
    Accessible.role: Accessible.ColumnHeader
    Accessible.name: says

    MouseArea {
        anchors.fill: parent
        onClicked: root.clicked()
    }
    Words {
        objectName: "abreastBuild"
        x: 6
        y: 4
        width: parent.width - 12
        height: car.y - 5
        text: root.title
        small: true
        strong: true
        wrapMode: Text.Wrap
        fontSizeMode: Text.Fit
        minimumPixelSize: 8
        elide: Text.ElideRight
    }
    Words {
        id: car

        objectName: "abreastCar"
        x: 6
        y: mark.y - 16
        width: parent.width - 12
        height: 15
        text: root.was === "" ? root.car : "◪ " + root.was
        small: true
        strong: root.was !== ""
        color: root.was === "" ? Theme.quiet : Theme.caution
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 8
    }
    MarkIcon {
        id: mark

        x: 6
        y: days.y - height - 1
        width: 18
        height: 18
        mark: root.mark
    }
    Words {
        objectName: "abreastWord"
        x: 28
        y: mark.y
        width: parent.width - x - 6
        height: mark.height
        text: root.word
        strong: true
        color: Theme.markInk(root.mark)
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 9
        verticalAlignment: Text.AlignVCenter
    }
    Loader {
        id: days

        asynchronous: Pace.inSteps
        y: root.height - height - 3
        width: root.width
        height: Theme.target
        // qmllint disable unqualified
        sourceComponent: Item {
            DayButton {
                objectName: "dayBefore"
                x: 6
                width: Theme.target
                text: "−"
                Accessible.name: qsTr("one day earlier: %1").arg(root.title)
                onClicked: root.moved(-1)
            }
            DayButton {
                objectName: "buildDay"
                x: Theme.target + 8
                width: parent.width - 2 * x
                text: root.day
                framed: false
                Accessible.name: Gaps.fill(qsTr("another day for %1, now %2"),
                                           root.title, root.day)
                contentItem: Words {
                    text: root.day
                    strong: true
                    small: true
                    color: root.was === "" ? Theme.accent : Theme.caution
                    wrapMode: Text.Wrap
                    fontSizeMode: Text.Fit
                    minimumPixelSize: 8
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                }
                onClicked: root.dayAsked()
            }
            DayButton {
                objectName: "dayAfter"
                x: parent.width - width - 6
                width: Theme.target
                text: "+"
                Accessible.name: qsTr("one day later: %1").arg(root.title)
                onClicked: root.moved(1)
            }
        }
        // qmllint enable unqualified
    }
    Rectangle {
        anchors.right: parent.right
        width: 1
        height: parent.height
        color: Theme.rule
    }
    FocusFrame {
        visible: root.inHand
    }
}
