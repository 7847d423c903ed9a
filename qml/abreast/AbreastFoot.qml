// SPDX-License-Identifier: MIT
//
// The cell in hand: what the build gets and why, what can be done about it, and what the shapes
// mean.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property AbreastDesk abreast
    property bool busy: false
    property bool roomy: true

    signal buyAsked()
    signal openAsked()
    signal explained(string why)

    component Deed: DeskButton {
        small: !root.roomy
        padding: root.roomy ? 14 : 9
    }

    spacing: Theme.gap

    ColumnLayout {
        spacing: 2
        Layout.fillWidth: true

        Words {
            objectName: "abreastInHand"
            text: root.abreast.inHand
            strong: true
            small: true
            wrapMode: Text.Wrap
            fontSizeMode: Text.Fit
            minimumPixelSize: 8
            Layout.fillWidth: true
            Layout.preferredHeight: 28
        }
        Words {
            objectName: "abreastWhy"
            text: root.abreast.why
            small: true
            wrapMode: Text.Wrap
            fontSizeMode: Text.Fit
            minimumPixelSize: 8
            Layout.fillWidth: true
            Layout.preferredHeight: root.roomy ? 42 : 28
        }
    }
    Deed {
        objectName: "abreastReserve"
        text: qsTr("Reserve it")
        enabled: !root.busy
        quiet: root.abreast.whyNotReserve !== ""
        Accessible.description: root.abreast.whyNotReserve !== "" ? root.abreast.whyNotReserve
            : qsTr("What is free of this part becomes this build's own, whatever the days.")
        onClicked: {
            if (root.abreast.whyNotReserve === "")
                root.abreast.reserve();
            else
                root.explained(root.abreast.whyNotReserve);
        }
    }
    Deed {
        objectName: "abreastBuy"
        text: qsTr("To Buying")
        quiet: !root.abreast.lacks
        Accessible.description: qsTr("to this part among what is short")
        onClicked: {
            if (root.abreast.lacks)
                root.buyAsked();
            else
                root.explained(qsTr("This build is not short of it."));
        }
    }
    Deed {
        objectName: "abreastOpen"
        text: qsTr("To the build")
        enabled: root.abreast.build !== ""
        onClicked: root.openAsked()
    }
}
