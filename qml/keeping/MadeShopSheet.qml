// SPDX-License-Identifier: MIT
//
// A new shop out of a backup or out of a folder of texts: out of which, and which new file it
// becomes.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property ShopMaker maker

    signal sourceAsked()
    signal fileAsked()

    function setSource(path: string) {
        from.path = path;
    }
    function setFile(path: string) {
        into.path = path;
    }
    function finish() {
        if (!root.maker.busy)
            root.maker.make(from.path, into.path);
    }

    title: maker.ofBackup ? qsTr("A shop out of a backup") : qsTr("A shop out of a folder of texts")
    about: maker.busy ? qsTr("The shop is being made …")
         : maker.ofBackup
         ? qsTr("The backup is proved whole and stays as it is. The shop on the desk, or one that "
                + "is damaged, stays where it is too.")
         : qsTr("The folder has shop.toml, the parts as CSV, templates and builds as TOML; what "
                + "this desk writes out is one to begin by. All of it is read before the file is "
                + "made.")
           + " " + qsTr("Out of texts a shop begins with the stock of the first day: what was "
                        + "moved, ordered or serviced since is not in them. A backup has all of "
                        + "it.")
    problem: maker.problem
    widest: 680
    onOpened: {
        from.path = root.maker.source;
        into.path = root.maker.suggested;
        from.enter();
    }

    PathLine {
        id: from

        key: "source"
        name: root.maker.ofBackup ? qsTr("the backup") : qsTr("the folder of texts")
        Layout.fillWidth: true
        onChooseAsked: root.sourceAsked()
        onEntered: into.enter()
    }
    PathLine {
        id: into

        key: "newShop"
        name: qsTr("the new shop file, which is not there yet")
        Layout.fillWidth: true
        onChooseAsked: root.fileAsked()
        onEntered: root.finish()
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            objectName: "makeShop"
            text: qsTr("Make it and open it")
            enabled: !root.maker.busy
            onClicked: root.finish()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
