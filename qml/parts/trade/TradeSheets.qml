// SPDX-License-Identifier: MIT
//
// The sheets of trade: the suppliers, one of them or an offer that is written, a list that is read
// in.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property PartsDesk parts

    signal wrote() // One of them is done with.

    function ask(deed: string) {
        if (deed === "import")
            list.open();
        else if (deed === "suppliers")
            suppliers.open();
        else if (deed === "offer" || deed.startsWith("offer|"))
            root.parts.tradeForm.beginOffer(root.parts.selected, deed.slice(6));
    }

    Connections {
        target: root.parts.tradeForm

        function onOpened() {
            trade.open();
        }
    }
    Connections {
        target: Desk.pen

        function onWrote() {
            if (list.opened || trade.opened) {
                list.close();
                trade.close();
                root.wrote();
            }
        }
    }
    SupplierSheet {
        id: suppliers

        suppliers: root.parts.tradeForm.suppliers
        onChosen: id => {
            suppliers.close();
            root.parts.tradeForm.beginSupplier(id);
        }
    }
    FormSheet {
        id: trade

        form: root.parts.tradeForm
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    ImportSheet {
        id: list

        list: root.parts.importing
        refused: Desk.pen.problem
        busy: Desk.pen.busy
        onFileAsked: listDialog.open()
    }
    FileToRead {
        id: listDialog

        title: qsTr("Choose the list")
        nameFilters: [qsTr("Tables (*.csv)"), qsTr("All files (*)")]
        onAccepted: root.parts.importing.read(selectedFile)
    }
}
