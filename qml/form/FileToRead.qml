// SPDX-License-Identifier: MIT
//
// Which file is to be read.

import QtQuick.Dialogs
import Flarestock.Desk

FileDialog {
    acceptLabel: qsTr("Read it")
    currentFolder: PersonsFolder.url
}
