// SPDX-License-Identifier: MIT
//
// A form to fill in: a few fields, most of them filled with what is likely. Enter does it; a
// scanned code goes into the field where it belongs.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property Form form
    property bool busy: false

    function values(): var {
        const all = {};
        for (let at = 0; at < fields.count; ++at) {
            const field = fields.itemAt(at) as FormField;
            all[field.key] = field.filled;
        }
        return all;
    }
    function finish() {
        if (!root.busy)
            root.form.finish(root.values());
    }
    /// Whether the code belongs into a field of this form.
    function scan(code: string): bool {
        const key = root.form.fieldOf(code);
        for (let at = 0; at < fields.count; ++at) {
            const field = fields.itemAt(at) as FormField;
            if (field.key === key)
                field.write(code);
        }
        return key !== "";
    }

    title: form.title
    about: form.about
    widest: 620
    onOpened: {
        if (fields.count > 0)
            fields.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
    }

    Words {
        visible: text !== ""
        text: root.form.caution
        small: true
        color: Theme.caution
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    GridLayout {
        columns: root.width >= 560 ? 2 : 1
        columnSpacing: Theme.wideGap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        Repeater {
            id: fields

            model: root.form.fields

            FormField {
                Layout.fillWidth: true
                onEntered: root.finish()
            }
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            objectName: "doDeed"
            text: root.form.button
            enabled: !root.busy
            onClicked: root.finish()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
