// SPDX-License-Identifier: MIT
//
// A picture of a build: its answer as a sentence, then the drawing, then what the point in hand
// says. One stop for Tab; the arrow keys walk from point to point, Enter goes on into what it
// opens.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Plot plot
    property bool busy: false // The build has changed; the picture of before stands still.
    readonly property var inks: [Theme.ink, Theme.quiet, Theme.accent, Theme.pipe, Theme.rule,
        Theme.ruleStrong, Theme.caution, Theme.stop]

    signal opened(string what)
    signal entered(string what)

    function take(point: string) {
        const what = plot.take(point);
        if (what !== "")
            root.opened(what);
        root.reveal();
    }
    function walk(way: int) {
        root.take(plot.step(way));
    }
    function reveal() {
        const box = plot.place(plot.current);
        if (box.height <= 0 || box.height > flick.height)
            return;
        if (box.y < flick.contentY)
            flick.contentY = Math.max(0, box.y);
        else if (box.y + box.height > flick.contentY + flick.height)
            flick.contentY = box.y + box.height - flick.height;
    }

    Binding {
        target: root.plot
        property: "width"
        value: flick.width - 10 // The scroll bar stands beside it.
        when: flick.width > 20
    }
    Binding {
        target: root.plot
        property: "room"
        value: flick.height
        when: flick.height > 20
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: 12
        anchors.rightMargin: 4
        anchors.topMargin: 4
        anchors.bottomMargin: 4
        spacing: 2

        RowLayout {
            spacing: 4

            Words {
                objectName: "plotTitle"
                text: root.plot.title
                strong: true
                font.pixelSize: Theme.headText
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Words {
                visible: root.busy
                text: qsTr("working it out …")
                small: true
                quiet: true
            }
            Repeater {
                model: root.plot.views

                GroupButton {
                    required property string modelData
                    required property int index

                    objectName: "plotView"
                    text: modelData
                    checked: root.plot.view === index
                    onClicked: root.plot.view = index
                }
            }
        }
        Words {
            objectName: "plotSays"
            visible: root.plot.isThere
            text: root.plot.says
            wrapMode: Text.Wrap
            Layout.fillWidth: true
            Layout.rightMargin: 8
        }
        Flickable {
            id: flick

            objectName: "plot"
            contentHeight: Math.max(height, root.plot.height)
            contentWidth: width
            boundsBehavior: Flickable.StopAtBounds
            clip: true
            focus: true
            activeFocusOnTab: true
            ScrollBar.vertical: SlimScrollBar {}
            Accessible.role: Accessible.Graphic
            Accessible.name: root.plot.isThere ? root.plot.says : root.plot.whyNone
            Accessible.description: root.plot.currentSays
            Accessible.focusable: true
            Layout.fillWidth: true
            Layout.fillHeight: true
            Keys.onLeftPressed: root.walk(Plot.Back)
            Keys.onUpPressed: root.walk(Plot.Back)
            Keys.onRightPressed: root.walk(Plot.On)
            Keys.onDownPressed: root.walk(Plot.On)
            Keys.onReturnPressed: root.entered(root.plot.opens())
            Keys.onEnterPressed: root.entered(root.plot.opens())
            Keys.onPressed: event => {
                event.accepted = event.key === Qt.Key_Home || event.key === Qt.Key_End;
                if (event.accepted)
                    root.walk(event.key === Qt.Key_Home ? Plot.First : Plot.Last);
            }

            Item {
                visible: root.plot.isThere
                width: flick.width
                height: root.plot.height

                PlotDrawing {
                    anchors.fill: parent
                    plot: root.plot
                    inks: root.inks
                }
                Repeater {
                    model: Steps {
                        of: root.plot.labels
                    }

                    Words {
                        required property real atX
                        required property real atY
                        required property real wide
                        required property real high
                        required property string words
                        required property int ink
                        required property bool bold

                        objectName: "plotLabel"
                        x: atX
                        y: atY
                        width: wide
                        height: high
                        text: words
                        small: true
                        strong: bold
                        color: root.inks[ink]
                    }
                }
                Repeater {
                    model: Steps {
                        of: root.plot.marks
                    }

                    Item {
                        id: found

                        required property real atX
                        required property real atY
                        required property int mark

                        x: atX - 11
                        y: atY - 11

                        MarkIcon {
                            width: 22
                            mark: found.mark
                        }
                    }
                }
                Repeater {
                    model: Steps {
                        of: root.plot.points
                    }

                    PlotPointDot {
                        required property string key
                        required property real atX
                        required property real atY

                        x: atX - width / 2
                        y: atY - height / 2
                        inHand: root.plot.current === key
                        onPressed: root.take(key)
                    }
                }
                MouseArea {
                    anchors.fill: parent
                    hoverEnabled: true
                    cursorShape: root.plot.near(mouseX, mouseY) ? Qt.PointingHandCursor
                                                                : Qt.ArrowCursor
                    onClicked: mouse => {
                        flick.forceActiveFocus(Qt.MouseFocusReason);
                        root.take(root.plot.near(mouse.x, mouse.y));
                    }
                }
            }
            PlotEmpty {
                visible: !root.plot.isThere && root.plot.whyNone !== ""
                width: flick.width
                why: root.plot.whyNone
                what: root.plot.whatToDo
            }
        }
        Words {
            objectName: "plotCurrent"
            visible: root.plot.isThere
            text: root.plot.currentSays !== "" ? root.plot.currentSays
                                               : qsTr("← → go from point to point")
            quiet: root.plot.currentSays === ""
            small: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
            Layout.rightMargin: 8
            Layout.minimumHeight: 28
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
