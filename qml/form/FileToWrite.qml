// SPDX-License-Identifier: MIT
//
// Where a paper, a list or a copy is to be written: its file, with a name that says what it is.

import QtQuick.Dialogs
import Flarestock.Desk

FileDialog {
    id: root

    function ask(name: string) {
        root.currentFile = root.currentFolder + "/" + name;
        root.open();
    }

    fileMode: FileDialog.SaveFile
    acceptLabel: qsTr("Write it")
    currentFolder: PersonsFolder.url
    defaultSuffix: "pdf"
}
