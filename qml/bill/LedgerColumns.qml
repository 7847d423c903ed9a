// SPDX-License-Identifier: MIT
//
// The widths of the bill's columns for a width of the table: figures keep theirs, words share the
// rest.

import QtQml

QtObject {
    required property real width

    readonly property real figure: width < 760 ? 72 : 84
    readonly property real shortage: width < 760 ? 84 : 96
    readonly property real money: width < 760 ? 96 : 104
    readonly property real words: Math.max(120, width - 2 * figure - shortage - 2 * money - 24)
    readonly property real part: words * 0.58
    readonly property real why: words * 0.42
}
