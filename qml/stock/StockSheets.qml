// SPDX-License-Identifier: MIT
//
// The sheets on which a hand says what it does with what is in hand, each put away when it is done.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property StockDesk stock

    readonly property bool takesScans: sheet.opened || bench.opened

    signal explained(string sentence)

    /// By a deed's key. Whether it can be done.
    function begin(deed: string): bool {
        if (deed === "photo" || deed === "noPhoto") {
            deed === "photo" ? photoFile.open() : root.stock.photo.putAway();
            return true;
        }
        const begun = deed === "label" ? root.shown(root.stock.labels.begin(), labelSheet)
            : deed === "place" ? root.shown(root.stock.place.begin(), placeSheet)
            : root.shown(root.stock.bench.begin(deed), bench);
        return begun || root.shown(root.stock.form.begin(deed), sheet);
    }
    function takeBack(movement: string, what: string) {
        root.shown(root.stock.goingBack.begin(movement, what), back);
    }
    function shown(begun: bool, on: FormSheet): bool {
        if (begun)
            on.open();
        return begun;
    }
    function scan(code: string): bool {
        return bench.opened ? bench.scan(code) : sheet.scan(code);
    }

    FormSheet {
        id: sheet

        form: root.stock.form
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    FormSheet {
        id: bench

        form: root.stock.bench
        problem: Desk.pen.problem
        busy: Desk.pen.busy
        widest: 900
        picture: [
            Repeater {
                model: root.stock.bench.cuts

                CutBar {
                    Layout.fillWidth: true
                }
            }
        ]
    }
    FormSheet {
        id: back

        form: root.stock.goingBack
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    FormSheet {
        id: placeSheet

        form: root.stock.place
        problem: Desk.pen.problem
        busy: root.stock.place.busy
    }
    FormSheet {
        id: labelSheet

        form: root.stock.labels
        problem: Desk.pen.problem
        busy: root.stock.labels.busy
    }
    FileToRead {
        id: photoFile

        objectName: "photoFile"
        title: qsTr("A photo of %1").arg(root.stock.selected)
        nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png)")]
        onAccepted: root.stock.photo.put(selectedFile)
    }
    FileToWrite {
        id: labelFile

        objectName: "labelFile"
        title: root.stock.labels.title
        nameFilters: [qsTr("Labels (*.pdf)")]
        onAccepted: root.stock.labels.write(selectedFile)
    }
    Connections {
        target: root.stock.place

        function onWrote() {
            placeSheet.close();
        }
    }
    Connections {
        target: root.stock.labels

        function onFilled() {
            labelSheet.close();
            labelFile.ask(root.stock.labels.fileName);
        }
        function onTold(sentence: string) {
            root.explained(sentence);
        }
    }
    Connections {
        target: Desk.pen

        function onWrote() {
            sheet.close();
            bench.close();
            back.close();
        }
    }
}
