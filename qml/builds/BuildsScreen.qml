// SPDX-License-Identifier: MIT
//
// Builds: one build with its answers, its line map, its bill and its findings. A roomy window shows
// all at once. A lower one folds it into two parts, the map with what is open on it, and the bill
// with the findings; a narrow one into three. What is folded away still says its answer: the two
// questions above, and the total on the tab.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property BuildDesk build
    required property HandingOut handing
    required property BuildPictures pictures
    readonly property bool wide: width >= 1120
    readonly property bool roomy: wide && height >= 756
    property int part: 0

    readonly property real sideWidth: Math.max(300, Math.min(400, width * 0.26))
    property bool billFolded: false // A long map then has its room.
    readonly property bool showsMap: pictures.shown === BuildPictures.Line
    // Above the map there is some air of its own, over which the tabs reach.
    readonly property real tabsHeight: !roomy || billFolded ? 0 : showsMap ? 30 : Theme.target

    signal otherBuild()
    signal buildAsked(string key)
    signal byDate()
    signal papersAsked()
    signal stepAsked(string step)
    signal jointAsked(string spot)
    signal stepExplained(string why)

    function showPart(part: string) {
        root.part = 1;
        root.billFolded = false;
        ledger.showPart(part);
    }
    function showShort() {
        root.part = 1;
        root.billFolded = false;
        ledger.showShort();
    }
    function showFindings() {
        root.part = root.wide ? 1 : 2;
        slips.forceActiveFocus(Qt.OtherFocusReason);
    }
    function showOnMap(where: string) {
        if (where === "")
            return;
        root.part = 0;
        root.build.openAt(where);
    }
    // "kind|HE-10": that group of the bill, beside the picture of the cost.
    function pointAtMoney(what: string) {
        const at = what.split("|");
        if (at[0] === "build")
            return;
        root.build.byKind = at[0] === "kind";
        ledger.pointAt(at[1]);
    }
    function goToMoney(what: string) {
        const at = what.split("|");
        if (at[0] === "build")
            root.buildAsked(at[1]);
        else if (what !== "")
            root.showPart(at[1]);
    }
    function showPicture(picture: int) {
        root.part = 0;
        root.pictures.shown = picture;
    }

    onWideChanged: {
        if (wide && part === 2)
            part = 1;
    }

    Foothold {
        screen: root
        first: [root.showsMap ? mapView : picture, ledger, slips][root.roomy ? 0 : root.part]
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        anchors.topMargin: 8
        anchors.bottomMargin: 8
        spacing: root.roomy ? 8 : 6

        BuildTitle {
            id: buildTitle

            build: root.build
            Layout.fillWidth: true
            onOtherBuild: root.otherBuild()
            onByDate: root.byDate()
            onShowShort: root.showShort()
            onShowFindings: root.showFindings()
        }
        AnswerStrip {
            build: root.build
            Layout.fillWidth: true
        }
        PartTabs {
            visible: !root.roomy
            part: root.part
            picture: root.pictures.shown
            total: root.build.total
            findings: root.wide ? "" : root.build.anythingStopped
            byDateRoom: buildTitle.narrow ? buildTitle.width : 0
            onChosen: part => root.part = part
            onPictureChosen: picture => root.showPicture(picture)
            onByDate: root.byDate()
        }
        Item {
            id: board

            readonly property real billLeast: root.billFolded ? 46 : 208
            readonly property real mapRoom: height - billLeast - 12
            readonly property real wanted: root.showsMap ? mapView.wantedHeight + 8 : 400
            readonly property real mapHeight: !root.roomy ? height : root.billFolded ? mapRoom
                : Math.min(wanted + root.tabsHeight, mapRoom)
            readonly property real halfWay: Math.abs(mapHeight - height * 0.54) < 40
                ? mapHeight : height * 0.54
            readonly property real panelHeight: root.roomy ? halfWay : height
            readonly property real mainWidth: width - root.sideWidth - 12

            Layout.fillWidth: true
            Layout.fillHeight: true

            // Over the picture; a folded bill has more room for it.
            PictureTabs {
                visible: root.roomy
                z: 1
                x: root.billFolded ? 200 : 8
                y: root.billFolded ? board.mapHeight + 15 : 0
                picture: root.pictures.shown
                onChosen: picture => root.showPicture(picture)
            }
            Sheet {
                visible: root.roomy || root.part === 0
                width: board.mainWidth
                height: board.mapHeight

                LineMapView {
                    id: mapView

                    visible: root.showsMap
                    anchors.fill: parent
                    anchors.topMargin: root.tabsHeight
                    map: root.build.map
                    spot: root.build.opened.spot
                    room: (root.roomy ? board.mapRoom - root.tabsHeight : board.height)
                          - keyHeight - 8
                    showsKey: root.wide
                              && (!root.roomy || map.height + keyHeight + 8 + root.tabsHeight
                                                 <= board.mapRoom)
                    onOpened: spot => root.build.openSpot(spot)
                    onEntered: panel.enter()
                }
                BuildPicture {
                    id: picture

                    visible: !root.showsMap
                    anchors.fill: parent
                    anchors.topMargin: root.tabsHeight
                    pictures: root.pictures
                    spot: root.build.opened.spot
                    onOpened: spot => root.build.openSpot(spot)
                    onEntered: panel.enter()
                    onMoneyOpened: what => root.pointAtMoney(what)
                    onMoneyEntered: what => root.goToMoney(what)
                }
            }
            Sheet {
                visible: root.roomy || root.part === 0
                x: board.mainWidth + 12
                width: root.sideWidth
                height: board.panelHeight

                OpenedPanel {
                    id: panel

                    anchors.fill: parent
                    opened: root.build.opened
                    canOpenAgain: root.handing.inCar.count > 0
                    onOpenedAgain: spot => root.jointAsked(spot)
                    onPicked: (slot, value) => root.build.pick(slot, value)
                    onLetGo: slot => root.build.letGo(slot)
                }
            }
            Sheet {
                visible: root.roomy || root.part === 1
                y: root.roomy ? board.mapHeight + 12 : 0
                width: root.wide ? board.mainWidth : board.width
                height: board.height - y

                BillLedger {
                    id: ledger

                    anchors.fill: parent
                    bill: root.build.bill
                    byKind: root.build.byKind
                    foot: root.build.billFoot
                    total: root.build.total
                    hasGot: root.build.billHasGot
                    hasTrailer: root.build.billHasTrailer
                    hasWay: root.build.billHasWay
                    folds: root.roomy
                    folded: root.roomy && root.billFolded
                    onFoldAsked: root.billFolded = !root.billFolded
                    steps: root.handing.steps
                    busy: root.handing.busy
                    onStepAsked: step => root.stepAsked(step)
                    onStepExplained: why => root.stepExplained(why)
                    onGrouped: byKind => root.build.byKind = byKind
                    onShown: where => root.showOnMap(where)
                }
            }
            Sheet {
                visible: root.roomy || root.part === (root.wide ? 1 : 2)
                x: root.wide ? board.mainWidth + 12 : 0
                y: root.roomy ? board.panelHeight + 12 : 0
                width: root.wide ? root.sideWidth : board.width
                height: board.height - y

                FindingList {
                    id: slips

                    anchors.fill: parent
                    findings: root.build.findings
                    onShown: where => root.showOnMap(where)
                    onMended: finding => root.build.mend(finding)
                    onPapersAsked: root.papersAsked()
                }
            }
        }
    }
}
