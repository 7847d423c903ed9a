// SPDX-License-Identifier: MIT
//
// A list whose rows stand in groups, each under its name. Without `pragma ComponentBehavior`,
// because a bound section delegate stays empty in Qt 6.4.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

ListView {
    id: root

    property alias step: unfolding.step // So much of it more is shown at a time.

    function holdOne() { // A list whose rows came later may have none in hand.
        if (activeFocus && currentIndex < 0 && count > 0)
            currentIndex = 0;
    }

    onActiveFocusChanged: holdOne()
    onCountChanged: {
        if (Pace.inSteps)
            soon.restart(); // Its line is not made while the rows come.
        else
            holdOne();
    }
    clip: true
    displayMarginEnd: unfolding.margin
    currentIndex: -1 // Who comes with the keyboard is given one.
    cacheBuffer: 0 // Rows made ahead of time are made late: their list may be another one by then.
    activeFocusOnTab: true
    keyNavigationEnabled: true
    boundsBehavior: Flickable.StopAtBounds
    highlightMoveDuration: 0
    section.delegate: GroupHead {}
    ScrollBar.vertical: SlimScrollBar {}

    Timer {
        id: soon

        interval: 0
        onTriggered: root.holdOne()
    }
    Unfolding {
        id: unfolding

        list: root
        reuses: root.reuseItems
    }
}
