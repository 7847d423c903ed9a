// SPDX-License-Identifier: MIT
//
// The sheets on which templates are chosen and typed, over whatever area shows.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    readonly property TemplateDesk templates: Desk.templates

    Binding {
        target: root.templates.editor
        property: "inInches"
        value: Look.inInches
    }
    Shortcut {
        sequence: "Ctrl+T"
        enabled: Desk.hasShop
        onActivated: root.templates.ask()
    }
    Connections {
        target: root.templates

        function onAsked() {
            chooser.open();
        }
    }
    Connections {
        target: root.templates.editor

        function onOpened() {
            chooser.close();
            sheet.begin();
        }
        function onClosed() {
            sheet.close();
        }
    }
    TemplateChooser {
        id: chooser

        templates: root.templates
    }
    TemplateSheet {
        id: sheet

        editor: root.templates.editor
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
}
