// SPDX-License-Identifier: MIT
//
// The six areas, and the one place where they are registered: a name, and the file of its screen
// (an AreaScreen), empty while it is not built. A screen is made when it is first looked at.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Screens

FocusScope {
    id: root

    property int area: 0
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
            screen: ""
        },
        {
            name: qsTr("Trailer"),
            screen: ""
        },
        {
            name: qsTr("Service"),
            screen: ""
        },
        {
            name: qsTr("Parts"),
            screen: ""
        }
    ]
    readonly property AreaScreen screen: screenOf(area)

    signal explained(string sentence)
    signal forgotten()

    onAreaChanged: enter()

    function screenOf(index: int): AreaScreen {
        const loader = loaders.count > index ? loaders.itemAt(index) as Loader : null;
        return loader ? loader.item as AreaScreen : null;
    }
    /// Whether it is built and shows now; otherwise the bottom line says that it is not.
    function show(index: int): bool {
        if (areas[index].screen === "") {
            root.explained(qsTr("%1 is not built yet.").arg(areas[index].name));
            return false;
        }
        root.explained("");
        area = index;
        root.enter();
        return true;
    }
    /// The places of those besides the first that are built.
    function builtBesides(): var {
        const built = [];
        for (let at = 1; at < areas.length; ++at) {
            if (areas[at].screen !== "")
                built.push(at);
        }
        return built;
    }
    function enter() {
        if (screen)
            screen.enter();
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
            visible: shows
            focus: shows
            active: wanted
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
            }
        }
    }
}
