// SPDX-License-Identifier: MIT
//
// The six areas, and the one place where they are registered: a name, and the file of its screen
// (an AreaScreen). A screen is made when it is first looked at. Where somebody sits at the window,
// those that nobody has asked for yet are made beside what goes on, before anybody does.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    property int area: 0
    property int made: 0 // So many of them are made whether anybody asks for them or not.
    readonly property var areas: [
        {
            name: qsTr("Builds"),
            screen: "builds/BuildsArea.qml"
        },
        {
            name: qsTr("Stock"),
            screen: "stock/StockArea.qml"
        },
        {
            name: qsTr("Buying"),
            screen: "buying/BuyingArea.qml"
        },
        {
            name: qsTr("Trailer"),
            screen: "trailer/TrailerArea.qml"
        },
        {
            name: qsTr("Service"),
            screen: "service/ServiceArea.qml"
        },
        {
            name: qsTr("Parts"),
            screen: "parts/PartsArea.qml"
        }
    ]
    readonly property var areaOf: ({
            order: 2,
            claim: 2,
            build: 0,
            car: 4,
            place: 1,
            lot: 1,
            part: 1
        })
    readonly property AreaScreen screen: screenOf(area)
    readonly property bool ready: screen !== null && screen.ready
    property string awaited: "" // What it is to go to once it is ready.

    signal explained(string sentence)
    signal forgotten()

    onAreaChanged: enter()
    onReadyChanged: arriving.start()

    function screenOf(index: int): AreaScreen {
        const loader = loaders.count > index ? loaders.itemAt(index) as Loader : null;
        return loader ? loader.item as AreaScreen : null;
    }
    function show(index: int) {
        root.explained("");
        if (index !== area)
            Desk.pen.hear(); // What was refused was of the area before.
        awaited = "";
        area = index;
        root.enter();
    }
    /// To what was found in the whole shop, on the screen of the area that shows such things.
    function goTo(kind: string, target: string) {
        if (kind === "build")
            Desk.openBuild(target);
        show(areaOf[kind]);
        if (kind !== "build")
            goOn(kind === "lot" ? target.slice(target.indexOf("=") + 1) : target);
    }
    function goOn(target: string) {
        awaited = target;
        arrive();
    }
    /// A screen that is still being read goes there once it is.
    function arrive() {
        if (awaited !== "" && screen && screen.scan(awaited))
            awaited = "";
    }
    function enter() {
        if (screen)
            screen.enter();
    }

    Timer {
        id: arriving

        interval: 0 // Not while it becomes ready.
        onTriggered: root.arrive()
    }
    Timer {
        interval: 250
        repeat: true
        running: Pace.inSteps && root.visible && root.made < root.areas.length // Its size is known.
        onTriggered: root.made += 1
    }
    Repeater {
        id: loaders

        model: root.areas

        Loader {
            id: loader

            required property var modelData
            required property int index
            readonly property bool shows: index === root.area
            property bool wanted: false

            anchors.fill: parent
            active: wanted || index < root.made
            visible: shows
            focus: shows
            asynchronous: Pace.inSteps && !shows // Who asks for it does not wait.
            source: modelData.screen
            onShowsChanged: wanted = wanted || shows
            Component.onCompleted: wanted = shows

            Binding {
                target: loader.item
                property: "current"
                value: loader.shows
                when: loader.item !== null
            }
            Connections {
                target: loader.item as AreaScreen

                function onExplained(sentence: string) {
                    root.explained(sentence);
                }
                function onForgotten() {
                    root.forgotten();
                }
                function onWentTo(area: int, target: string) {
                    root.show(area);
                    root.goOn(target);
                }
            }
        }
    }
}
