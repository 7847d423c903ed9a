// SPDX-License-Identifier: MIT
//
// The widths of a car's columns. Where it gets too narrow, since when it is in and how often it was
// washed fold away: the panel says both.

import QtQml

QtObject {
    required property real width

    readonly property real mark: 48
    readonly property bool hasSince: width >= 660
    readonly property bool hasWashed: width >= 600
    readonly property real washed: hasWashed ? 70 : 0
    readonly property real rest: width - mark - washed - 20
    readonly property real since: hasSince ? rest * 0.25 : 0
    readonly property real state: rest * (hasSince ? 0.38 : 0.46)
    readonly property real piece: rest - since - state
}
