// SPDX-License-Identifier: MIT
//
// Pieces in the car that the build was issued: how many go back, where to, and as what.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property int index
    required property string part
    required property string what
    required property string quantity
    required property string typed
    required property string lot
    required property string condition
    required property string to
    required property string says
    property bool busy: false

    readonly property var conditions: ["", "used and good", "to be checked", "not to be used"]

    signal another()
    signal given(string typed, string to, string now)

    implicitHeight: Math.max(56, words.implicitHeight + 12)
    Accessible.role: Accessible.ListItem
    Accessible.name: says

    Rectangle {
        anchors.fill: parent
        color: root.index % 2 ? Theme.stripe : Theme.surface
    }
    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: 12
        anchors.rightMargin: 8
        spacing: Theme.gap

        ColumnLayout {
            id: words

            spacing: 1
            Layout.fillWidth: true

            Sentence {
                sentence: root.lot === "" ? root.part
                                          : Gaps.fill(qsTr("%1  ·  %2"), root.part, root.lot)
                strong: true
                Layout.fillWidth: true
            }
            Words {
                text: Gaps.fillAll(qsTr("%1 in the car, %2  ·  %3"),
                                   [root.quantity, root.condition, root.what])
                small: true
                quiet: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
        }
        InkField {
            id: amount

            objectName: "giveAmount"
            name: qsTr("how much of %1 goes back").arg(root.part)
            text: root.typed
            Layout.preferredWidth: 96
        }
        InkField {
            id: place

            objectName: "givePlace"
            name: qsTr("where %1 goes").arg(root.part)
            text: root.to
            Layout.preferredWidth: 96
        }
        ChoiceBox {
            id: now

            name: qsTr("what %1 is from now on").arg(root.part)
            model: [qsTr("as it was"), qsTr("used and good"), qsTr("to be checked"),
                qsTr("not to be used")]
            Layout.preferredWidth: 150
        }
        DeskButton {
            objectName: "anotherPiece"
            text: qsTr("Other in …")
            padding: 10
            enabled: !root.busy
            Layout.minimumWidth: implicitWidth
            Accessible.name: qsTr("another piece went in instead of %1").arg(root.part)
            onClicked: root.another()
        }
        DeskButton {
            objectName: "giveBack"
            text: qsTr("Give back")
            enabled: !root.busy
            Layout.minimumWidth: implicitWidth
            Accessible.name: qsTr("give %1 back").arg(root.part)
            onClicked: root.given(amount.text, place.text, root.conditions[now.currentIndex])
        }
    }
}
