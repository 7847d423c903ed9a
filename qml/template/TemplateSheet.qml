// SPDX-License-Identifier: MIT
//
// A template that is typed: its line map above, drawn while one types; below it the form and the
// text, which are the same thing. A window that is not wide shows one of the two.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property TemplateEditor editor
    property bool busy: false
    property bool showsText: false
    readonly property bool wide: width >= 1200

    function begin() {
        root.showsText = false;
        root.open();
        typed.goTo(0);
        form.enter();
    }
    /// The other of the two, where there is room for one.
    function turn() {
        root.showsText = !root.showsText;
        if (root.showsText)
            typed.forceActiveFocus(Qt.OtherFocusReason);
        else
            form.enter();
    }

    objectName: "templateSheet"
    widest: 4000
    height: ground ? ground.height - 20 : 600
    width: ground ? ground.width - 20 : 1000
    padding: 12
    closePolicy: Popup.CloseOnEscape
    onClosed: {
        if (editor.open)
            editor.close();
    }

    Shortcut {
        sequences: [StandardKey.Save] // qmllint disable unqualified
        enabled: root.opened
        onActivated: root.editor.finish()
    }
    Shortcut {
        sequences: [StandardKey.Undo] // qmllint disable unqualified
        enabled: root.opened
        onActivated: root.editor.undo()
    }
    Shortcut {
        sequences: [StandardKey.Redo] // qmllint disable unqualified
        enabled: root.opened
        onActivated: root.editor.redo()
    }
    Shortcut {
        sequence: "F6"
        enabled: root.opened
        onActivated: root.turn()
    }
    TemplateTop {
        editor: root.editor
        turns: root.wide ? "" : root.showsText ? qsTr("Form  F6") : qsTr("Text  F6")
        busy: root.busy
        Layout.fillWidth: true
        onTurned: root.turn()
        onLeaveAsked: root.close()
    }
    Sheet {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: root.height * 0.42
        Layout.maximumHeight: Math.min(mapView.wantedHeight + 12, root.height * 0.46)

        LineMapView {
            id: mapView

            anchors.fill: parent
            map: root.editor.map
            spot: root.editor.spot
            room: root.height * 0.46 - 12 - (showsKey ? keyHeight : 0)
            showsKey: root.wide
            onOpened: spot => root.editor.openSpot(spot)
            onEntered: form.enter()
        }
    }
    StillOpen {
        editor: root.editor
        Layout.fillWidth: true
    }
    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: root.height * 0.4

        FormSide {
            id: form

            visible: root.wide || !root.showsText
            editor: root.editor
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: root.width * 0.55
        }
        TemplateText {
            id: typed

            visible: root.wide || root.showsText
            editor: root.editor
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: root.width * 0.45
        }
    }
}
