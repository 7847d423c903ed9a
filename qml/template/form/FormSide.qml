// SPDX-License-Identifier: MIT
//
// A template as a form: its paragraphs at the left, the fields of the one in hand beside them.
// While the text cannot be read it shows what it last was, and takes nothing.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property TemplateEditor editor
    readonly property TemplateForm form: editor.form

    function enter() {
        paragraphs.forceActiveFocus(Qt.OtherFocusReason);
    }

    Sheet {
        anchors.fill: parent
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 6
        spacing: 4

        Words {
            objectName: "formStale"
            visible: text !== ""
            text: root.editor.stale
            strong: true
            color: Theme.caution
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
            Layout.fillWidth: true
        }
        RowLayout {
            spacing: Theme.gap
            opacity: root.form.stale ? 0.55 : 1
            Layout.fillWidth: true
            Layout.fillHeight: true

            ColumnLayout {
                spacing: 4
                Layout.preferredWidth: Math.max(210, root.width * 0.42)
                Layout.maximumWidth: 320
                Layout.fillHeight: true

                ParagraphList {
                    id: paragraphs

                    form: root.form
                    focus: true
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                }
                AddRow {
                    enabled: !root.form.stale
                    Layout.fillWidth: true
                    onAsked: kind => {
                        root.form.add(kind);
                        fields.begin();
                    }
                }
            }
            ColumnLayout {
                spacing: 4
                Layout.fillWidth: true
                Layout.fillHeight: true

                ParagraphHead {
                    form: root.form
                    Layout.fillWidth: true
                    onTakenOut: root.enter()
                }
                FieldList {
                    id: fields

                    form: root.form
                    enabled: !root.form.stale
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    onUndone: root.editor.undo()
                    onRedone: root.editor.redo()
                }
            }
        }
    }
}
