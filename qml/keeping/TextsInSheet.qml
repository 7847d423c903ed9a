// SPDX-License-Identifier: MIT
//
// Edited texts come in: of which folder, what would change, and the one button that writes it.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property ShopTexts texts
    property bool busy: false
    property string refused: "" // Why it could not be written.

    readonly property bool isWaiting: texts.busy || busy

    signal folderAsked()

    function setFolder(path: string) {
        folder.path = path;
        root.look();
    }
    function look() {
        if (!root.isWaiting)
            root.texts.look(folder.path);
    }

    title: qsTr("Take in edited texts")
    about: texts.busy ? qsTr("The texts are being read …")
         : busy ? qsTr("The texts are being written …")
         : texts.looked ? texts.outlook
         : qsTr("The folder is one that was written here, with what was edited there. All of it "
                + "is read, and what would change is said, before anything is written.")
    problem: texts.problem !== "" ? texts.problem : refused
    widest: 680
    onOpened: {
        root.texts.forget();
        folder.enter();
    }

    Connections {
        target: root.texts

        function onChanged() {
            if (root.opened && finish.visible)
                finish.forceActiveFocus(Qt.TabFocusReason);
        }
    }
    PathLine {
        id: folder

        key: "inFolder"
        name: qsTr("the folder")
        Layout.fillWidth: true
        onChooseAsked: root.folderAsked()
        onEntered: root.look()
    }
    TextLines {
        texts: root.texts.texts
        name: qsTr("what would change")
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            id: finish

            objectName: "takeTextsIn"
            visible: root.texts.takeWords !== ""
            text: root.texts.takeWords
            enabled: !root.isWaiting
            onClicked: root.texts.takeIn()
        }
        DeskButton {
            objectName: "lookAtTexts"
            text: root.texts.looked ? qsTr("Look once more") : qsTr("Look at what was edited")
            enabled: !root.isWaiting
            framed: !finish.visible
            onClicked: root.look()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
