// SPDX-License-Identifier: MIT
//
// The widths of the stock table's columns for a width of the table: figures keep theirs, words
// share the rest. Where that gets too narrow, what is on order folds away first, then where it
// lies, then what is in the trailer: the panel says all three.

import QtQml

QtObject {
    required property real width

    readonly property real figure: width < 700 ? 70 : 82
    readonly property bool hasTrailer: width >= 600
    readonly property bool hasWhere: width >= 740
    readonly property bool hasDue: width >= 860
    readonly property real trailer: hasTrailer ? figure : 0
    readonly property real due: hasDue ? 128 : 0
    readonly property real rest: width - 4 * figure - trailer - due - 28
    readonly property real where: hasWhere ? Math.min(190, rest * 0.32) : 0
    readonly property real part: rest - where
}
