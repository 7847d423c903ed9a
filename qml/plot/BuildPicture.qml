// SPDX-License-Identifier: MIT
//
// The picture of a build that is looked at instead of the line map. What is open in the panel is in
// hand in it, and the other way round.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property BuildPictures pictures
    required property string spot

    signal opened(string spot)
    signal entered()
    signal moneyOpened(string what)  // A group of the bill is in hand …
    signal moneyEntered(string what) // … and somebody goes on into it, or into a build.

    onSpotChanged: {
        pictures.pressure.takeWhatOpens(spot);
        pictures.pump.takeWhatOpens(spot);
    }

    PlotView {
        anchors.fill: parent
        visible: root.pictures.shown === BuildPictures.Pressure
        focus: visible
        plot: root.pictures.pressure
        busy: root.pictures.isWorking
        onOpened: spot => root.opened(spot)
        onEntered: root.entered()
    }
    PlotView {
        anchors.fill: parent
        visible: root.pictures.shown === BuildPictures.Pump
        focus: visible
        plot: root.pictures.pump
        busy: root.pictures.isWorking
        onOpened: spot => root.opened(spot)
        onEntered: root.entered()
    }
    PlotView {
        anchors.fill: parent
        visible: root.pictures.shown === BuildPictures.Cost
        focus: visible
        plot: root.pictures.cost
        onOpened: what => root.moneyOpened(what)
        onEntered: what => root.moneyEntered(what)
    }
}
