// SPDX-License-Identifier: MIT
//
// Which folder is meant.

import QtQuick.Dialogs
import Flarestock.Desk

FolderDialog {
    acceptLabel: qsTr("Take it")
    rejectLabel: qsTr("Not now") // Qt says it in English.
    currentFolder: PersonsFolder.url
}
