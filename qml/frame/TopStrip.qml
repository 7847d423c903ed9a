// SPDX-License-Identifier: MIT
//
// The strip above every screen: find, and where the data lives.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

Rectangle {
    id: root

    required property AreaScreen screen // The area that shows; nothing while there is none.
    required property FindAnywhere anywhere
    required property string shopTitle
    required property string shopFile
    required property string kept
    property bool isOwing: false // It says that something could not be kept.
    property string backedUp: "" // "backed up today 14:02"; empty where there is no shop.
    property bool backupDue: false
    property bool backingUp: false
    readonly property alias findField: field

    signal wentTo(string kind, string target)
    signal takeBackAsked()
    signal backupAsked()
    signal otherShopAsked()

    implicitHeight: 52
    color: Theme.window

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        spacing: Theme.wideGap

        FindField {
            id: field

            objectName: "findField"
            screen: root.screen
            anywhere: root.anywhere
            enabled: root.shopFile !== ""
            Layout.preferredWidth: 560
            Layout.maximumWidth: 560
            Layout.fillWidth: true
            onWentTo: (kind, target) => root.wentTo(kind, target)
            onTakeBackAsked: root.takeBackAsked()
        }
        Item {
            Layout.fillWidth: true
        }
        Column {
            visible: root.shopFile !== ""
            spacing: 1
            Layout.preferredWidth: Math.max(title.implicitWidth, file.implicitWidth,
                                            backup.implicitWidth)
            Layout.maximumWidth: 380

            Words {
                id: title

                width: parent.width
                text: root.shopTitle
                small: true
                strong: true
                elide: Text.ElideRight
                horizontalAlignment: Text.AlignRight
            }
            Words {
                id: file

                objectName: "shopFile"
                width: parent.width
                elide: root.isOwing ? Text.ElideRight : Text.ElideMiddle
                wrapMode: root.isOwing ? Text.Wrap : Text.NoWrap
                maximumLineCount: root.isOwing ? 2 : 1
                horizontalAlignment: Text.AlignRight
                text: root.isOwing ? qsTr("! %1").arg(root.kept)
                                   : Gaps.fill(qsTr("%1  ·  %2"), root.shopFile, root.kept)
                small: true
                quiet: !root.isOwing
                strong: root.isOwing
                color: root.isOwing ? Theme.caution : Theme.quiet
            }
            Words {
                id: backup

                objectName: "backedUp"
                visible: text !== "" && !root.isOwing
                width: parent.width
                elide: Text.ElideRight
                horizontalAlignment: Text.AlignRight
                text: root.backedUp
                small: true
                strong: root.backupDue
                color: root.backupDue ? Theme.caution : Theme.quiet
            }
        }
        DeskButton {
            objectName: "backUpNow"
            visible: root.backedUp !== ""
            text: qsTr("Back up now")
            small: true
            padding: 10
            quiet: !root.backupDue
            enabled: !root.backingUp
            onClicked: root.backupAsked()
        }
        DeskButton {
            objectName: "otherShop"
            visible: root.shopFile !== ""
            text: qsTr("Other shop…")
            Accessible.description: qsTr("Ctrl+O")
            small: true
            padding: 10
            onClicked: root.otherShopAsked()
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
