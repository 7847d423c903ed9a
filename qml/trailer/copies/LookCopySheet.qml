// SPDX-License-Identifier: MIT
//
// A copy came back: which file it is. It is looked at first; nothing is written by that.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    property bool busy: false
    property string expected: "" // Where one that is away may lie.

    signal fileAsked()
    signal changed() // What was said of another file holds no more.
    signal looked(string file)

    function setFile(path: string) {
        file.text = path;
        root.changed();
    }

    title: qsTr("A copy came back")
    about: qsTr("It is looked at first: what it would bring, and what has to be decided. Nothing "
                + "is written by that, and the copy itself stays as it is.")
    widest: 620
    onOpened: {
        if (file.text === "")
            file.text = expected;
        file.forceActiveFocus(Qt.TabFocusReason);
    }

    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true

        InkField {
            id: file

            objectName: "lookFile"
            name: qsTr("the file of the copy")
            placeholderText: qsTr("the file of the copy")
            Layout.fillWidth: true
            onTextEdited: root.changed()
            onAccepted: root.looked(text)
        }
        DeskButton {
            objectName: "chooseLookFile"
            text: qsTr("Choose…")
            onClicked: root.fileAsked()
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "lookNow"
            text: qsTr("Look at it")
            enabled: !root.busy
            onClicked: root.looked(file.text)
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
