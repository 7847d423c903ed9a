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

    onSpotChanged: pictures.pressure.takeWhatOpens(spot)

    PlotView {
        anchors.fill: parent
        visible: root.pictures.shown === BuildPictures.Pressure
        focus: true
        plot: root.pictures.pressure
        busy: root.pictures.isWorking
        onOpened: spot => root.opened(spot)
        onEntered: root.entered()
    }
}
