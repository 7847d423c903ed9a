// SPDX-License-Identifier: MIT
//
// The templates of the shop, and those that are typed and not written down: one to open, to copy,
// or a new one.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property TemplateDesk templates
    readonly property string choice: list.currentIndex >= 0 && list.currentIndex < list.count
        ? templates.choices.cell(list.currentIndex, "key") ?? "" : ""

    title: qsTr("Templates")
    about: qsTr("The form of a fluid system: its stations, its lines, "
                + "and what is asked of a builder.")
    problem: templates.problem
    widest: 620
    onOpened: {
        list.currentIndex = 0;
        list.forceActiveFocus(Qt.PopupFocusReason);
    }

    NamedList {
        id: list

        objectName: "templateList"
        names: root.templates.choices
        implicitHeight: contentHeight
        Accessible.name: qsTr("templates")
        Keys.onReturnPressed: root.templates.begin(root.choice)
        Keys.onEnterPressed: root.templates.begin(root.choice)
        section.property: "section"
        delegate: BuildLine {
            objectName: "templateLine"
            width: list.width
            current: ListView.isCurrentItem
            onClicked: list.currentIndex = index
            onDoubleClicked: root.templates.begin(root.choice)
        }
        Layout.fillWidth: true
        Layout.fillHeight: true

        FocusFrame {
            visible: list.activeFocus
        }
    }
    Words {
        visible: list.count === 0
        text: qsTr("This shop has no template yet. Begin a new one: a tank, a line and who is fed.")
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "openTemplate"
            text: qsTr("Open")
            enabled: root.choice !== ""
            onClicked: root.templates.begin(root.choice)
        }
        DeskButton {
            objectName: "copyTemplate"
            text: qsTr("Begin a copy of it")
            enabled: root.choice !== ""
            onClicked: root.templates.beginCopy(root.choice)
        }
        DeskButton {
            objectName: "newTemplate"
            text: qsTr("Begin a new one")
            onClicked: root.templates.beginNew()
        }
        DeskButton {
            objectName: "throwAway"
            visible: root.choice.startsWith("sketch|")
            text: qsTr("Throw away what was typed")
            onClicked: root.templates.throwAway(root.choice)
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
