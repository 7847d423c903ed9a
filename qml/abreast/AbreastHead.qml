// SPDX-License-Identifier: MIT
//
// One build at the head of its column: whose it is, whether all is here by its day, and the day,
// which can be tried earlier and later.

import QtQuick
import QtQuick.Layouts
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
    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: 6
        anchors.rightMargin: 6
        anchors.topMargin: 4
        anchors.bottomMargin: 3
        spacing: 1

        Words {
            objectName: "abreastBuild"
            text: root.title
            small: true
            strong: true
            wrapMode: Text.Wrap
            fontSizeMode: Text.Fit
            minimumPixelSize: 8
            elide: Text.ElideRight
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
        Words {
            objectName: "abreastCar"
            text: root.was === "" ? root.car : "◪ " + root.was
            small: true
            strong: root.was !== ""
            color: root.was === "" ? Theme.quiet : Theme.caution
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 8
            Layout.fillWidth: true
        }
        RowLayout {
            spacing: 4

            MarkIcon {
                mark: root.mark
                implicitWidth: 18
            }
            Words {
                objectName: "abreastWord"
                text: root.word
                strong: true
                color: Theme.markInk(root.mark)
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 9
                Layout.fillWidth: true
            }
        }
        RowLayout {
            spacing: 2

            DayButton {
                objectName: "dayBefore"
                text: "−"
                Accessible.name: qsTr("one day earlier: %1").arg(root.title)
                Layout.preferredWidth: Theme.target
                onClicked: root.moved(-1)
            }
            DayButton {
                objectName: "buildDay"
                text: root.day
                framed: false
                Accessible.name: qsTr("another day for %1, now %2").arg(root.title).arg(root.day)
                Layout.fillWidth: true
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
                text: "+"
                Accessible.name: qsTr("one day later: %1").arg(root.title)
                Layout.preferredWidth: Theme.target
                onClicked: root.moved(1)
            }
        }
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
