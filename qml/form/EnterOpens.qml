// SPDX-License-Identifier: MIT
//
// A choice that Enter opens, as the space bar does.

import QtQuick
import QtQuick.Controls

ComboBox {
    id: root

    property bool entering: false // Enter went down here, and did not come up yet.

    Keys.onReturnPressed: entering = !popup.visible
    Keys.onEnterPressed: entering = !popup.visible
    Keys.onReleased: event => { // Opened by the press, it would be closed by the release.
        if (!entering || event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter)
            return;
        entering = false;
        event.accepted = true;
        popup.open();
    }
}
