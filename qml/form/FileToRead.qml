// SPDX-License-Identifier: MIT
//
// Which file is to be read.

import QtQuick.Dialogs
import Flarestock.Desk

FileDialog {
    acceptLabel: qsTr("Read it")
    rejectLabel: qsTr("Not now") // Qt says it in English.
    currentFolder: PersonsFolder.url
}
