// SPDX-License-Identifier: MIT
//
// The shop's texts go out into a folder: into which, and which they were.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property ShopTexts texts

    readonly property bool done: texts.written !== ""

    signal folderAsked()

    function setFolder(path: string) {
        folder.path = path;
    }
    function finish() {
        if (!root.texts.busy)
            root.texts.writeInto(folder.path);
    }

    title: qsTr("Write its texts into a folder")
    about: texts.busy ? qsTr("The texts are being written …")
         : done ? texts.written
         : qsTr("Parts, offers and lists as CSV, templates and builds as TOML, to be edited or "
                + "kept. The folder is new or empty. The shop stays as it is.")
           + " " + qsTr("What lies where, and what is to be kept of it, stands in them as of the "
                        + "first day; only a backup keeps what was moved since.")
    problem: texts.problem
    widest: 680
    onOpened: {
        root.texts.forget();
        folder.enter();
    }
    onDoneChanged: {
        if (done && opened)
            away.forceActiveFocus(Qt.TabFocusReason);
    }

    PathLine {
        id: folder

        visible: !root.done
        key: "outFolder"
        name: qsTr("the folder")
        Layout.fillWidth: true
        onChooseAsked: root.folderAsked()
        onEntered: root.finish()
    }
    TextLines {
        texts: root.texts.texts
        name: qsTr("what was written")
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            objectName: "writeTexts"
            visible: !root.done
            text: qsTr("Write them")
            enabled: !root.texts.busy
            onClicked: root.finish()
        }
        DeskButton {
            id: away

            objectName: "textsOutAway"
            text: root.done ? qsTr("Back to the desk  Esc") : qsTr("Not now  Esc")
            framed: root.done
            onClicked: root.close()
        }
    }
}
