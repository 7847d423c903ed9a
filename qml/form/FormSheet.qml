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
    property bool isOfBefore: false // Filled in when the desk ended in the midst of it.
    /// What is drawn below the fields, besides what the form says that it would come to.
    property alias picture: drawn.data

    function values(): var {
        const all = {};
        for (let at = 0; at < fields.count; ++at) {
            const field = fields.itemAt(at) as FormField;
            if (field !== null) // One that is asked for since a moment is being made.
                all[field.key] = field.filled;
        }
        return all;
    }
    function consider() {
        if (!root.opened)
            return;
        const filled = root.values();
        root.form.keep(filled);
        root.form.consider(filled);
    }
    function takeUp() {
        const before = root.form.takenUp(root.values());
        root.isOfBefore = Object.keys(before).length > 0;
        for (let at = 0; at < fields.count; ++at) {
            const field = fields.itemAt(at) as FormField;
            if (before[field.key] !== undefined)
                field.fill(before[field.key]); // A choice may ask for more fields below it.
        }
    }
    function finish() {
        if (!root.busy)
            root.form.finish(root.values());
    }
    /// Whether the code belongs into a field of this form; of what the form does not know that is
    /// the one that has the keyboard.
    function scan(code: string): bool {
        const key = root.form.fieldOf(code);
        for (let at = 0; at < fields.count; ++at) {
            const field = fields.itemAt(at) as FormField;
            if (key !== "" ? field.key !== key : !field.activeFocus || !field.isTyped)
                continue;
            field.write(code);
            return true;
        }
        return false;
    }

    title: form.title
    about: form.about
    widest: 620
    saidBelow: true
    onOpened: {
        if (fields.count > 0)
            fields.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
        else
            button.forceActiveFocus(Qt.TabFocusReason);
        root.takeUp();
        root.consider();
    }
    onClosed: root.form.putAway()

    OfBefore {
        visible: root.isOfBefore
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
        columns: root.width >= 840 ? 3 : root.width >= 560 ? 2 : 1
        columnSpacing: Theme.wideGap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        Repeater {
            id: fields

            model: root.form.fields

            FormField {
                Layout.fillWidth: true
                onEntered: root.finish()
                onFilledChanged: root.consider()
            }
        }
    }
    ColumnLayout {
        id: drawn

        visible: children.length > 0
        Layout.fillWidth: true
    }
    Words {
        objectName: "formOutlook"
        visible: text !== ""
        text: root.form.outlook
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
        Layout.fillWidth: true
    }
    RowLayout {
        spacing: Theme.gap
        Layout.topMargin: 4

        DeskButton {
            id: button

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
        SheetProblem {
            text: root.problem
        }
    }
}
