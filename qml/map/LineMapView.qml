// SPDX-License-Identifier: MIT
//
// The line map: plates, runs and marks where the view model puts them. One stop for Tab; the arrow
// keys walk from spot to spot and open each, Enter goes on into what is open.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property LineMap map
    required property string spot
    property bool showsKey: true
    property real room: 0 // The height that the map should not exceed.

    readonly property real keyHeight: key.implicitHeight + 12
    readonly property real wantedHeight: map.height + (showsKey ? keyHeight : 0)

    signal opened(string spot)
    signal entered()

    function walk(way: int) {
        root.opened(map.step(root.spot, way));
    }
    function reveal() {
        const box = map.place(root.spot);
        if (box.height <= 0)
            return;
        if (box.y - 20 < flick.contentY)
            flick.contentY = Math.max(0, box.y - 20);
        else if (box.y + box.height + 20 > flick.contentY + flick.height)
            flick.contentY = box.y + box.height + 20 - flick.height;
    }

    onSpotChanged: reveal()

    Binding {
        target: root.map
        property: "width"
        value: flick.width - 10 // The scroll bar stands beside the map.
        when: flick.width > 0
    }

    Binding {
        target: root.map
        property: "room"
        value: root.room
    }
    Flickable {
        id: flick

        objectName: "lineMap"
        anchors.fill: parent
        anchors.margins: 3
        anchors.bottomMargin: root.showsKey ? root.keyHeight : 3
        contentHeight: Math.max(height, root.map.height)
        contentWidth: width
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.List
        Accessible.name: qsTr("line map, in the order of the flow")
        Accessible.focusable: true
        Keys.onLeftPressed: root.walk(LineMap.Back)
        Keys.onRightPressed: root.walk(LineMap.On)
        Keys.onUpPressed: root.walk(LineMap.Up)
        Keys.onDownPressed: root.walk(LineMap.Down)
        Keys.onReturnPressed: root.entered()
        Keys.onEnterPressed: root.entered()
        Keys.onPressed: event => {
            event.accepted = event.key === Qt.Key_Home || event.key === Qt.Key_End;
            if (event.accepted)
                root.walk(event.key === Qt.Key_Home ? LineMap.First : LineMap.Last);
        }

        Item {
            width: flick.width
            height: root.map.height

            PipeDrawing {
                anchors.fill: parent
                map: root.map
                pipe: Theme.pipe
                rim: Theme.surface
                arrow: Theme.pipeArrow
                openedRun: root.spot.startsWith("run|") ? root.spot.slice(4) : ""
                openedInk: Theme.accent
            }
            Repeater {
                model: Steps {
                    of: root.map.bands
                }

                LevelBand {
                    required property real atY
                    required property real high

                    x: 6
                    y: atY
                    height: high
                }
            }
            Repeater {
                model: Steps {
                    of: root.map.runs
                }

                RunLabel {
                    required property string key
                    required property real atX
                    required property real atY

                    x: atX
                    y: atY
                    opened: root.spot === "run|" + key
                    onPressed: root.opened("run|" + key)
                }
            }
            Repeater {
                model: Steps {
                    of: root.map.plates
                }

                MapPlate {
                    required property string station
                    required property real atX
                    required property real atY
                    required property real wide
                    required property real high

                    x: atX
                    y: atY
                    width: wide
                    height: high
                    opened: root.spot === "station|" + station
                    onPressed: root.opened("station|" + station)
                }
            }
            Repeater {
                model: Steps {
                    of: root.map.marks
                }

                MapMark {
                    required property string key
                    required property real atX
                    required property real atY

                    x: atX - width / 2
                    y: atY - height / 2
                    opened: root.spot === "joint|" + key
                    onPressed: root.opened("joint|" + key)
                }
            }
            MouseArea {
                anchors.fill: parent
                hoverEnabled: true
                cursorShape: root.map.near(mouseX, mouseY) ? Qt.PointingHandCursor : Qt.ArrowCursor
                onClicked: mouse => {
                    flick.forceActiveFocus(Qt.MouseFocusReason);
                    const spot = root.map.near(mouse.x, mouse.y);
                    if (spot !== "")
                        root.opened(spot);
                }
            }
        }
    }
    MarkKey {
        id: key

        visible: root.showsKey
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: 8
        anchors.leftMargin: 14
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
