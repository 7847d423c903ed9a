// SPDX-License-Identifier: MIT
//
// A day for a build to be tried by, typed.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property AbreastDesk abreast
    property string build

    function ask(build: string) {
        root.build = build;
        root.problem = "";
        field.text = root.abreast.typedDay(build);
        root.open();
    }
    function finish() {
        root.problem = root.abreast.moveTo(root.build, field.text);
        if (root.problem === "")
            root.close();
        else
            field.forceActiveFocus(Qt.OtherFocusReason);
    }

    title: qsTr("Try another day")
    about: qsTr("Nothing is written until the days are kept.")
    widest: 420
    saidBelow: true
    onOpened: field.forceActiveFocus(Qt.TabFocusReason)

    InkField {
        id: field

        objectName: "dayField"
        name: qsTr("done by, a day")
        placeholderText: root.abreast.dayHint()
        Layout.fillWidth: true
        Keys.onReturnPressed: root.finish()
        Keys.onEnterPressed: root.finish()
    }
    RowLayout {
        spacing: Theme.gap

        DeskButton {
            objectName: "tryDay"
            text: qsTr("Try it")
            onClicked: root.finish()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
    SheetProblem {
        text: root.problem
        linesKept: 2
    }
}
