// SPDX-License-Identifier: MIT
//
// The widths of the bill's columns for a width of the table: figures keep theirs, words share the
// rest. What no line has a figure for folds away; where the words would get too narrow the reasons
// fold under the part of the row in hand, and at last the price of one.

import QtQml

QtObject {
    required property real width
    property bool hasGot: false
    property bool hasTrailer: false
    property bool hasWay: false

    readonly property bool tight: width < 940
    readonly property real figure: tight ? 74 : 84
    readonly property real got: hasGot ? figure : 0
    readonly property real trailer: hasTrailer ? figure : 0
    readonly property real way: hasWay ? figure : 0
    readonly property real shortage: tight ? 92 : 100
    readonly property real eachWanted: tight ? 92 : 108
    readonly property bool hasEach: rest - eachWanted >= 150
    readonly property real each: hasEach ? eachWanted : 0
    readonly property real cost: tight ? 78 : 96
    readonly property real rest: width - 2 * figure - got - trailer - way - shortage - cost - 24
    readonly property real words: Math.max(120, rest - each)
    readonly property bool hasWhy: words >= 320
    readonly property real part: hasWhy ? words * 0.58 : words
    readonly property real why: hasWhy ? words * 0.42 : 0
}
