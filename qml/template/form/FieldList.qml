// SPDX-License-Identifier: MIT
//
// The fields of the paragraph in hand.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
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

    name: qsTr("fields of the paragraph")

    GridLayout {
        width: parent.width
        columns: width > 460 ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap

        Repeater {
            id: fields

            model: root.form.fields

            FieldLine {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.alignment: Qt.AlignTop
                onFilledIn: filled => root.form.fill(key, filled)
                onOffersAsked: offers.show(this, root.form.offers(key))
                onVaried: deed => root.form.vary(key, deed)
                onUndone: root.undone()
                onRedone: root.redone()
                onReached: item => root.show(item)
            }
        }
    }
    OfferList {
        id: offers

        onChosen: (field, word) => field.take(root.form.withOffered(field.key, word))
    }
}
