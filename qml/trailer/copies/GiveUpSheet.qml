// SPDX-License-Identifier: MIT
//
// Giving up a place of a copy that is away, or the whole of it: what that means is said before.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    property string trip: ""
    property string name: ""
    property var places: [] // Empty: the whole copy.
    property bool busy: false

    readonly property bool isWhole: places.length === 0

    signal released(string trip, string place)
    signal ended(string trip)

    title: isWhole ? qsTr("The copy %1 does not come back").arg(name)
                   : qsTr("Release a drawer of the copy %1").arg(name)
    about: isWhole
        ? qsTr("Its drawers are the shop's again, as the book has them: count them. What was used "
               + "in the copy is not known here. Were it brought all the same, what is new in it "
               + "would come, and what disagrees would be asked.")
        : qsTr("From now on this drawer is moved and counted here, although it is with the copy. "
               + "What both sides then say of it can disagree; that is asked when the copy is "
               + "brought. This cannot be taken back.")
    widest: 560
    onOpened: (isWhole ? end : choice).forceActiveFocus(Qt.TabFocusReason)

    ChoiceBox {
        id: choice

        objectName: "releaseChoice"
        visible: !root.isWhole
        name: qsTr("which drawer")
        model: root.places
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "releaseIt"
            visible: !root.isWhole
            text: qsTr("Release it: it is used here")
            enabled: !root.busy
            onClicked: root.released(root.trip, choice.currentText)
        }
        DeskButton {
            id: end

            objectName: "endIt"
            visible: root.isWhole
            text: qsTr("It is away no more")
            enabled: !root.busy
            onClicked: root.ended(root.trip)
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
