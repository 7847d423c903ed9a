// SPDX-License-Identifier: MIT
//
// What to order of whom: what is to come first above, a slip for each supplier side by side, and
// what is to be known besides below.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property SlipsPage page
    property bool busy: false
    property bool roomy: true

    signal orderAsked(string number)

    function enter() {
        for (let at = 0; at < aims.count; ++at) {
            const aim = aims.itemAt(at) as AimButton;
            if (aim.checked)
                return aim.forceActiveFocus(Qt.TabFocusReason);
        }
        scroll.forceActiveFocus(Qt.TabFocusReason);
    }
    /// Whatever gets the keyboard comes into sight.
    function show(item: Item) {
        const left = item.mapToItem(slips, 0, 0).x;
        if (left < scroll.contentX)
            scroll.contentX = Math.max(0, left - 8);
        else if (left + item.width > scroll.contentX + scroll.width)
            scroll.contentX = left + item.width - scroll.width + 8;
    }

    Timer {
        id: soon // Once the plan is there, which aim holds has the keyboard.

        interval: 0
        onTriggered: root.enter()
    }
    ColumnLayout {
        anchors.fill: parent
        spacing: root.roomy ? 10 : 6

        RowLayout {
            visible: aims.count > 0
            spacing: 10
            Layout.fillWidth: true
            Layout.fillHeight: false

            Words {
                visible: root.width > 1100
                text: qsTr("Order so that it is")
                quiet: true
            }
            Repeater {
                id: aims

                model: root.page.aims
                onCountChanged: {
                    if (scroll.activeFocus)
                        soon.restart();
                }

                AimButton {
                    checked: key === root.page.aim
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.fillHeight: true
                    onClicked: root.page.aim = key
                }
            }
            DeskButton {
                objectName: "draftAll"
                visible: root.page.slips.count > 1
                enabled: !root.busy
                text: qsTr("Draft all")
                Accessible.description: qsTr("a draft of an order for each slip")
                onClicked: root.page.draft("")
            }
        }
        Flickable {
            id: scroll

            objectName: "slipsScroll"
            contentWidth: slips.width
            contentHeight: height
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            flickableDirection: Flickable.HorizontalFlick
            activeFocusOnTab: true
            Accessible.role: Accessible.Pane
            Accessible.name: qsTr("order slips, %1").arg(root.page.slips.count)
            Layout.fillWidth: true
            Layout.fillHeight: true
            ScrollBar.horizontal: SlimScrollBar {}
            Keys.onLeftPressed: scroll.contentX = Math.max(0, contentX - 60)
            Keys.onRightPressed: scroll.contentX = Math.min(Math.max(0, contentWidth - width),
                                                            contentX + 60)

            Row {
                id: slips

                height: scroll.height
                spacing: 12

                Repeater {
                    model: root.page.slips

                    SlipPaper {
                        id: paper

                        objectName: "slip-" + key
                        width: Math.max(316, Math.min(380, (scroll.width - 24) / 3))
                        height: slips.height - 10
                        busy: root.busy
                        onDrafted: root.page.draft(key)
                        onOrderAsked: number => root.orderAsked(number)
                        onFocused: root.show(paper)
                    }
                }
            }
            Words {
                objectName: "slipsNothing"
                parent: scroll // Not of what scrolls, which is empty then.
                anchors.centerIn: parent
                width: Math.min(scroll.width - 48, 460)
                visible: text !== ""
                text: root.page.nothing
                quiet: true
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
            }
            FocusFrame {
                visible: scroll.activeFocus
            }
        }
        ScrollView {
            id: besides

            visible: root.page.notes.length > 0
            contentWidth: availableWidth
            activeFocusOnTab: false
            Accessible.name: qsTr("to know besides")
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(notes.implicitHeight, root.roomy ? 92 : 50)

            Column {
                id: notes

                width: besides.availableWidth

                Repeater {
                    model: root.page.notes

                    Words {
                        required property string modelData

                        width: notes.width
                        text: modelData
                        small: true
                        color: Theme.caution
                        wrapMode: Text.Wrap
                        Accessible.role: Accessible.StaticText
                        Accessible.name: text
                    }
                }
            }
        }
    }
}
