// SPDX-License-Identifier: MIT
//
// The builds that the shop has planned, and its templates to try out.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

Popup {
    id: root

    required property Rows builds
    property bool triedOut: false // What is on the desk is a template, and no build yet.

    signal chosen(string key)
    signal templatesAsked()
    signal byDate()
    signal deedAsked(string deed)

    function take(row: int) {
        root.close();
        root.chosen(builds.cell(row, "key"));
    }

    modal: true
    focus: true
    anchors.centerIn: Overlay.overlay
    width: 560
    height: Math.min(parent ? parent.height - 80 : 480,
                     list.contentHeight + foot.height + 2 * padding)
    padding: 8
    onOpened: list.forceActiveFocus()

    background: Sheet {
        border.color: Theme.ruleStrong
    }
    NamedList {
        id: list

        width: parent.width
        height: parent.height - foot.height
        objectName: "buildList"
        names: root.builds
        Accessible.name: qsTr("builds and templates")
        Keys.onReturnPressed: root.take(currentIndex)
        Keys.onEnterPressed: root.take(currentIndex)
        section.property: "section"
        delegate: BuildLine {
            width: list.width
            current: ListView.isCurrentItem
            onClicked: root.take(index)
        }
    }
    Flow {
        id: foot

        anchors.bottom: parent.bottom
        width: parent.width
        topPadding: 4
        spacing: 4

        component Deed: DeskButton {
            required property string deed

            framed: false
            objectName: "build-" + deed
            onClicked: {
                root.close();
                root.deedAsked(deed);
            }
        }
        Deed {
            deed: "plan"
            text: root.triedOut ? qsTr("Plan what is on the desk…")
                                : qsTr("Plan another one like it…")
            Accessible.description: qsTr("Ctrl+N")
        }
        DeskButton {
            objectName: "toBuildsByDate"
            text: qsTr("All of them by date…")
            framed: false
            Accessible.description: qsTr("Ctrl+D")
            onClicked: {
                root.close();
                root.byDate();
            }
        }
        Deed {
            visible: !root.triedOut
            deed: "change"
            text: qsTr("Its title, car, day…")
        }
        Deed {
            visible: !root.triedOut
            deed: "give-up"
            text: qsTr("Give it up…")
        }
        DeskButton {
            objectName: "toTemplates"
            text: qsTr("Change templates, or make one…")
            framed: false
            Accessible.description: qsTr("Ctrl+T")
            onClicked: {
                root.close();
                root.templatesAsked();
            }
        }
    }
}
