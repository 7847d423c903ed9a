// SPDX-License-Identifier: MIT
//
// The sheets about a shop as a whole: made out of a backup or of texts, proved whole, its texts
// written out and taken in.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property Shopkeeping keeping

    function make(ofBackup: bool, source: string) {
        root.keeping.maker.begin(ofBackup, source);
        madeSheet.open();
    }
    function act(deed: string) {
        if (deed === "prove")
            proofSheet.open();
        else if (deed === "out")
            outSheet.open();
        else if (deed === "in")
            root.takeTexts();
        else
            root.make(deed === "backup", "");
    }
    function takeTexts() {
        Desk.pen.hear();
        inSheet.open();
    }

    MadeShopSheet {
        id: madeSheet

        maker: root.keeping.maker
        onSourceAsked: {
            if (!root.keeping.maker.ofBackup) {
                sourceDialog.open();
                return;
            }
            backupDialog.currentFolder = root.keeping.backupsFolder;
            backupDialog.open();
        }
        onFileAsked: fileDialog.ask(qsTr("new-shop.flarestock"))
    }
    Connections {
        target: root.keeping.maker

        function onOpened() {
            madeSheet.close();
        }
    }
    ProofSheet {
        id: proofSheet

        proof: root.keeping.proof
        onBackupAsked: backup => root.make(true, backup)
    }
    TextsOutSheet {
        id: outSheet

        texts: root.keeping.texts
        onFolderAsked: outDialog.open()
    }
    TextsInSheet {
        id: inSheet

        texts: root.keeping.texts
        busy: Desk.pen.busy
        refused: Desk.pen.problem
        onFolderAsked: inDialog.open()
    }
    Connections {
        target: root.keeping.texts

        function onTookIn() {
            inSheet.close();
        }
    }
    FileToRead {
        id: backupDialog

        title: qsTr("Choose the backup")
        nameFilters: [qsTr("Shop files (*.flarestock)"), qsTr("All files (*)")]
        onAccepted: madeSheet.setSource(root.keeping.pathOf(selectedFile))
    }
    FolderToTake {
        id: sourceDialog

        title: qsTr("Choose the folder of texts")
        onAccepted: madeSheet.setSource(root.keeping.pathOf(selectedFolder))
    }
    FileToWrite {
        id: fileDialog

        title: qsTr("Where the new shop goes")
        mayReplace: false
        nameFilters: [qsTr("Shop files (*.flarestock)")]
        onAccepted: madeSheet.setFile(root.keeping.pathOf(selectedFile))
    }
    FolderToTake {
        id: outDialog

        title: qsTr("Choose a new or empty folder")
        onAccepted: outSheet.setFolder(root.keeping.pathOf(selectedFolder))
    }
    FolderToTake {
        id: inDialog

        title: qsTr("Choose the folder with the edited texts")
        onAccepted: inSheet.setFolder(root.keeping.pathOf(selectedFolder))
    }
}
