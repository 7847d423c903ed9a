// SPDX-License-Identifier: MIT
//
// The fields of the paragraph in hand.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

ScrolledColumn {
    id: root

    required property TemplateForm form

    signal undone()
    signal redone()

    function begin() {
        contentY = 0;
        if (fields.count > 0)
            fields.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
    }

    /// Its fields are others then; the keyboard stays where it was.
    function vary(row: int, deed: string) {
        const field = fields.itemAt(row) as FieldLine;
        root.form.vary(field.key, deed);
        reaching.row = row;
        reaching.start();
    }
    function reach(row: int) {
        const field = fields.itemAt(Math.min(row, fields.count - 1));
        if (field)
            field.forceActiveFocus(Qt.OtherFocusReason);
    }

    name: qsTr("fields of the paragraph")

    // A layout may still ask for a field that has gone, and end the program (Qt 6.4).
    Flow {
        id: flow

        readonly property int columns: width > 460 ? 2 : 1
        readonly property real fieldWidth: Math.floor((width - (columns - 1) * spacing) / columns)

        width: parent.width
        spacing: Theme.gap

        Repeater {
            id: fields

            model: root.form.fields

            FieldLine {
                required property int index

                width: flow.fieldWidth
                onFilledIn: filled => root.form.fill(key, filled)
                onOffersAsked: offers.show(this, root.form.offers(key))
                onVaried: deed => root.vary(index, deed)
                onUndone: root.undone()
                onRedone: root.redone()
                onReached: item => root.show(item)
            }
        }
    }
    Timer {
        id: reaching

        property int row: 0

        interval: 0
        onTriggered: root.reach(row)
    }
    OfferList {
        id: offers

        onChosen: (field, word) => field.take(root.form.withOffered(field.key, word))
    }
}
