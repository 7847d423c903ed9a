// SPDX-License-Identifier: MIT
//
// How wide the columns are where builds stand side by side, and which of them are shown: the part
// stands still, the builds move past it.

import QtQuick

Item {
    id: root

    required property int count // So many builds.
    property bool roomy: true

    readonly property real part: width >= 1200 ? 252 : 188
    readonly property real least: 146
    readonly property int shown: Math.min(count, Math.max(1, Math.floor((width - part) / least)))
    readonly property real build: Math.min(300, Math.floor((width - part) / Math.max(1, shown)))
    readonly property real line: roomy ? 76 : 66 // The same while days are tried: nothing jumps.
    property int first: 0

    function show(column: int) {
        const latest = Math.max(0, count - shown);
        const wanted = column < first ? column : Math.max(first, column - shown + 1);
        first = Math.max(0, Math.min(latest, wanted));
    }

    onShownChanged: show(first)
}
