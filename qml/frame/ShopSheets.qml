// SPDX-License-Identifier: MIT
//
// The sheets about the shop as a whole: another one, one on a server, what is done with this one,
// a backup before the desk goes.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    signal leave()

    function openOther() {
        shopSheet.open();
    }
    function act(deed: string) {
        if (deed === "file")
            fileDialog.open();
        else if (deed === "server")
            serverSheet.open();
        else if (deed === "demo")
            Desk.makeDemo();
        else
            keepingSheets.act(deed);
    }
    function askBeforeLeaving() {
        leaveSheet.problem = "";
        leaveSheet.open();
    }

    ShopSheet {
        id: shopSheet

        onAsked: deed => root.act(deed)
    }
    KeepingSheets {
        id: keepingSheets

        keeping: Desk.keeping
    }
    ServerSheet {
        id: serverSheet

        address: Desk.server.address
        problem: Desk.server.problem
        busy: Desk.server.busy
        onAsked: (address, password, keep) => Desk.server.open(address, password, keep)
    }
    Connections {
        target: Desk.server

        function onChanged() {
            if (Desk.server.problem !== "")
                serverSheet.open();
        }
        function onOpened() {
            serverSheet.close();
        }
    }
    LeavingSheet {
        id: leaveSheet

        newest: Desk.backups.newest
        busy: Desk.backups.busy
        isBackupDue: Desk.backups.due
        owes: Desk.isOwing ? Desk.kept : ""
        onBackUp: Desk.backups.now()
        onLeave: root.leave()
    }
    Connections {
        target: Desk.backups

        function onTold(sentence: string) {
            if (!leaveSheet.opened)
                return;
            if (!Desk.backups.due)
                root.leave();
            else
                leaveSheet.problem = sentence;
        }
    }
    FileToRead {
        id: fileDialog

        objectName: "fileDialog"
        acceptLabel: qsTr("Open it")
        title: qsTr("Open a shop file")
        nameFilters: [qsTr("Shop files (*.flarestock)"), qsTr("All files (*)")]
        onAccepted: Desk.openShop(selectedFile)
    }
}
