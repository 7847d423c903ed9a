// SPDX-License-Identifier: MIT
//
// One day of the strip: a box for each arrival stands on the line of the day, a tag for each need
// hangs from it; the foot says how much is short from then on, as a bar and in words.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string key
    required property string day
    required property string away
    required property bool weekend
    required property var comes
    required property var needs
    required property string lacks
    required property real share
    required property string partComes
    required property string partNeeds
    required property string partLacks
    required property bool partShort
    required property string says
    property string ofPart: ""
    property bool roomy: true
    property bool current: false

    readonly property int most: roomy ? 3 : 2 // So many arrivals or needs are named.
    readonly property real rowHeight: 20

    function named(all: var): var {
        return all.length <= most ? all
                                  : all.slice(0, most - 1).concat(qsTr("and %1 more").arg(
                                                                      all.length - most + 1));
    }

    function saidOfPart(): string {
        if (partLacks !== "")
            return Gaps.fill(qsTr("%1: %2 short"), ofPart, partLacks);
        if (partNeeds !== "")
            return Gaps.fill(qsTr("%1: needs %2"), ofPart, partNeeds);
        return partComes === "" ? "" : Gaps.fill(qsTr("%1: %2 come"), ofPart, partComes);
    }

    padding: 0
    focusPolicy: Qt.NoFocus
    hoverEnabled: true
    Accessible.role: Accessible.ListItem
    Accessible.name: says

    background: Rectangle {
        color: root.current || root.hovered ? Theme.accentFill
            : root.weekend ? Theme.stripe : Theme.surface

        Rectangle {
            anchors.right: parent.right
            width: 1
            height: parent.height
            color: Theme.rule
        }
    }
    Item {
        anchors.fill: parent

        Column {
            id: head

            x: 8
            y: 5
            width: root.width - 16

            Words {
                width: head.width
                text: root.day
                strong: true
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 9
            }
            Words {
                text: root.away
                small: true
                quiet: true
            }
        }
        Column {
            id: above

            anchors.bottom: line.top
            anchors.bottomMargin: 2
            x: 8
            width: root.width - 16

            Repeater {
                model: root.named(root.comes)

                Item {
                    id: box

                    required property string modelData

                    width: above.width
                    height: root.rowHeight

                    Rectangle {
                        y: 4
                        width: 12
                        height: 12
                        color: Theme.accentFill
                        border.color: Theme.accent

                        Rectangle {
                            x: 5
                            width: 2
                            height: 5
                            color: Theme.accent
                        }
                    }
                    Words {
                        x: 18
                        width: box.width - 18
                        height: box.height
                        text: box.modelData
                        small: true
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: 8
                        verticalAlignment: Text.AlignVCenter
                        elide: Text.ElideRight
                    }
                }
            }
        }
        Rectangle {
            id: line

            y: root.roomy ? 102 : 80
            width: root.width
            height: 2
            color: Theme.ruleStrong
        }
        Column {
            anchors.top: line.bottom
            x: 8
            width: root.width - 16

            Repeater {
                model: root.named(root.needs)

                Item {
                    id: tag

                    required property string modelData

                    width: root.width - 16
                    height: root.rowHeight

                    Rectangle {
                        x: 5
                        width: 2
                        height: parent.height
                        color: Theme.ruleStrong
                    }
                    Words {
                        x: 13
                        width: tag.width - 13
                        height: tag.height
                        text: tag.modelData
                        small: true
                        verticalAlignment: Text.AlignVCenter
                        elide: Text.ElideRight
                    }
                }
            }
        }
        Column {
            id: foot

            anchors.bottom: parent.bottom
            anchors.bottomMargin: 5
            x: 8
            width: root.width - 16
            spacing: 2

            Words {
                width: foot.width
                visible: text !== ""
                text: root.saidOfPart()
                small: true
                strong: root.partShort
                color: root.partShort ? Theme.caution : Theme.ink
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 8
            }
            Words {
                width: foot.width
                text: root.lacks
                small: true
                color: root.share > 0 ? Theme.caution : Theme.quiet
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 8
            }
            Rectangle {
                width: foot.width
                height: 5
                color: "transparent"
                border.color: root.share > 0 ? Theme.caution : Theme.rule

                Rectangle {
                    width: parent.width * root.share
                    height: parent.height
                    color: Theme.caution
                }
            }
        }
    }
}
