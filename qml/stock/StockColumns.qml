// SPDX-License-Identifier: MIT
//
// The widths of the stock table's columns for a width of the table: figures keep theirs, words
// share the rest. Where that gets too narrow, what is on order folds away first, then where it
// lies, then how much is kept: the panel says all three. What is in the trailer
// stays, because it is counted in what is free.

import QtQml

QtObject {
    required property real width

    readonly property real figure: width < 700 ? 70 : 82
    readonly property bool hasKeep: width >= 600
    readonly property bool hasWhere: width >= 740
    readonly property bool hasDue: width >= 860
    readonly property real trailer: width < 700 ? 96 : figure // Its heading is long.
    readonly property real keep: hasKeep ? figure : 0
    readonly property real due: hasDue ? 128 : 0
    readonly property real rest: width - 3 * figure - trailer - keep - due - 28
    readonly property real where: hasWhere ? Math.min(190, rest * 0.32) : 0
    readonly property real part: rest - where
}
