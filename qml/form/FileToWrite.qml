// SPDX-License-Identifier: MIT
//
// Where a paper, a list or a copy is to be written: its name, which is offered, and its folder.
// Enter writes it; a file that is there already is written over only by a second one.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    property string acceptLabel: qsTr("Write it")
    property alias nameFilters: file.filters
    property bool mayReplace: true // A file that is there already, once that was asked.
    property alias folder: file.folder
    readonly property url selectedFile: file.url

    property url asked // It was said that this file is there already.
    property bool tried: false

    readonly property bool replaces: file.there && asked === file.url

    signal accepted()

    function ask(name: string) {
        file.name = name;
        asked = "";
        tried = false;
        open();
    }
    function finish() {
        file.look();
        tried = true;
        if (file.problem !== "" || file.there && !mayReplace)
            return;
        if (file.there && !replaces) {
            asked = file.url;
            return;
        }
        close();
        accepted();
    }

    title: qsTr("Write it to a file")
    problem: !tried ? "" : file.problem !== "" ? file.problem
        : file.there && !mayReplace
          ? qsTr("There is a file of this name already. Type another one.") : ""
    widest: 620
    onOpened: name.forceActiveFocus(Qt.TabFocusReason)

    FileToBe {
        id: file

        filters: [qsTr("Papers (*.pdf)")]
    }
    Words {
        text: qsTr("name of the file")
        small: true
        quiet: true
    }
    InkField {
        id: name

        objectName: "fileName"
        name: qsTr("name of the file")
        text: file.name
        onTextEdited: file.name = text
        Keys.onReturnPressed: root.finish()
        Keys.onEnterPressed: root.finish()
        Layout.fillWidth: true
    }
    Flow {
        visible: file.kinds.length > 1
        spacing: 4
        Layout.fillWidth: true

        Repeater {
            model: file.kinds

            GroupButton {
                required property string modelData
                required property int index

                objectName: "fileKind"
                text: modelData
                checked: file.kind === index
                onClicked: file.kind = index
            }
        }
    }
    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true

        Words {
            objectName: "fileFolder"
            text: qsTr("in %1").arg(file.where)
            wrapMode: Text.WrapAnywhere
            Layout.fillWidth: true
        }
        DeskButton {
            objectName: "otherFolder"
            text: qsTr("Other folder …")
            framed: false
            onClicked: folders.open()
        }
    }
    Words {
        objectName: "fileIsThere"
        visible: root.replaces
        text: qsTr("! There is a file of this name already. “Write over it” puts the new one "
                   + "in its place; another name keeps both.")
        color: Theme.caution
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            objectName: "writeFile"
            text: root.replaces ? qsTr("Write over it") : root.acceptLabel
            onClicked: root.finish()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
    FolderToTake {
        id: folders

        currentFolder: file.folder
        title: qsTr("Which folder it goes into")
        onAccepted: {
            file.folder = selectedFolder;
            name.forceActiveFocus(Qt.TabFocusReason);
        }
    }
}
