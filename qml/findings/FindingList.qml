// SPDX-License-Identifier: MIT
//
// Before you build: the findings in order of danger.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows findings

    signal shown(string where)
    signal mended(int finding)
    signal papersAsked()

    function showGrave(row: int) {
        const mark = root.findings.cell(row, "mark");
        if (row === 0 || mark !== Standing.Caution && mark !== Standing.Note)
            soon.restart();
    }

    Timer {
        id: soon // Once the view has laid out what is there now.

        interval: 0
        onTriggered: {
            if (!list.activeFocus)
                list.currentIndex = 0;
            list.positionViewAtBeginning();
        }
    }
    InSight {
        id: sight

        flick: list
    }
    Timer {
        id: holding

        interval: 0
        onTriggered: list.holdInSight()
    }
    Connections { // What comes among the gravest is seen, wherever the list was.
        target: root.findings

        function onRowsInserted(parent: var, first: int) {
            root.showGrave(first);
        }
        function onModelReset() {
            soon.restart();
        }
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        RowLayout {
            spacing: Theme.gap
            Layout.preferredHeight: 42

            Words {
                text: qsTr("Before you build")
                strong: true
                font.pixelSize: Theme.headText
                leftPadding: 12
                Layout.fillWidth: true
            }
            DeskButton {
                objectName: "papers"
                text: qsTr("Print…")
                framed: false
                Accessible.name: qsTr("Print: build sheet, pick list or line map")
                Accessible.description: qsTr("Ctrl+P")
                onClicked: root.papersAsked()
            }
        }
        ListView {
            id: list

            property AbstractButton reached: null // Within a slip, which may be the longer one.

            function holdInSight() {
                if (currentItem && currentItem.activeFocus)
                    return positionViewAtIndex(currentIndex, ListView.Contain);
                if (reached && reached.visualFocus)
                    sight.show(reached);
            }

            objectName: "findingList"
            model: root.findings
            clip: true
            displayMarginEnd: unfolding.margin
            cacheBuffer: 0
            focus: true
            activeFocusOnTab: true
            keyNavigationEnabled: true
            boundsBehavior: Flickable.StopAtBounds
            highlightMoveDuration: 0
            Accessible.role: Accessible.List
            Accessible.name: qsTr("findings, gravest first")
            Layout.fillWidth: true
            Layout.fillHeight: true
            ScrollBar.vertical: SlimScrollBar {}
            onActiveFocusChanged: { // Whoever comes again comes to the finding, not to its button.
                if (!activeFocus && currentItem)
                    currentItem.focus = true;
            }
            // What is gone leaves the one in hand where it can be seen.
            onCountChanged: positionViewAtIndex(Math.max(0, currentIndex), ListView.Contain)
            Keys.onReturnPressed: root.shown(root.findings.cell(currentIndex, "where"))
            delegate: FindingSlip {
                required property string where

                objectName: "findingSlip"
                width: list.width
                current: ListView.isCurrentItem && list.activeFocus
                onCurrentChanged: holding.restart()
                onReached: button => {
                    list.reached = button;
                    holding.restart();
                }
                onClicked: {
                    list.currentIndex = index;
                    root.shown(where);
                }
                onMended: {
                    root.mended(index); // Its button may be gone then.
                    list.currentIndex = 0;
                    list.forceActiveFocus(Qt.OtherFocusReason);
                }
            }

            Unfolding {
                id: unfolding

                list: list
            }

            Words {
                anchors.centerIn: parent
                width: parent.width - 48
                visible: list.count === 0
                text: qsTr("No finding in the data entered. That proves no joint tight.")
                quiet: true
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
            }
        }
        Words {
            text: qsTr("Advice from the data entered, not a safety certificate: the series' "
                       + "rulebook, the part maker's data and local codes come first; have fuel "
                       + "and brake work checked by someone qualified.")
            small: true
            quiet: true
            wrapMode: Text.Wrap
            leftPadding: 12
            rightPadding: 12
            topPadding: 6
            bottomPadding: 8
            Layout.fillWidth: true
        }
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
