// SPDX-License-Identifier: MIT
//
// Every colour, size and duration of the screens, light and dark. Paper and ink of a shop ledger,
// the grey of hose, one accent.

pragma Singleton

import QtQuick
import Flarestock.Desk

QtObject {
    readonly property bool dark: Look.dark

    // Paper
    readonly property color window: dark ? "#14181a" : "#eeebe2"
    readonly property color side: dark ? "#1b2123" : "#e1dccf"
    readonly property color surface: dark ? "#1d2326" : "#fbfaf5"
    readonly property color stripe: dark ? "#181d1f" : "#f3f0e7"
    readonly property color rule: dark ? "#343c40" : "#d8d2c3"
    readonly property color ruleStrong: dark ? "#6f7b81" : "#857c68"

    // Ink
    readonly property color ink: dark ? "#edeae2" : "#1d2225"
    readonly property color quiet: dark ? "#aab3b7" : "#555c61"
    readonly property color accent: dark ? "#63cfbf" : "#0a5d56"
    readonly property color onAccent: dark ? "#0e1f1d" : "#ffffff"
    readonly property color accentFill: dark ? "#1c3a36" : "#d9eae4"
    readonly property color selection: dark ? "#1f5a52" : "#a9d5ca"

    // The line
    readonly property color pipe: dark ? "#6e7d87" : "#6f7f8a"
    readonly property color pipeArrow: dark ? "#14181a" : "#ffffff"

    // What stands how: always beside a shape and a word
    readonly property color stop: dark ? "#ff9d90" : "#a1221b"
    readonly property color stopFill: dark ? "#45221f" : "#f6ddd8"
    readonly property color caution: dark ? "#e9be5e" : "#765000"
    readonly property color cautionFill: dark ? "#3b311b" : "#f3e6c6"

    // Type
    readonly property string family: "DejaVu Sans"
    readonly property int smallText: 11
    readonly property int noteText: 12
    readonly property int text: 13
    readonly property int headText: 15
    readonly property int titleText: 20

    // Room
    readonly property int gap: 8
    readonly property int wideGap: 16
    readonly property int corner: 4
    readonly property int target: 40 // Least side of whatever is touched, with gloves on.
    readonly property int ring: 2

    function markInk(mark: int): color {
        switch (mark) {
        case Standing.Trap:
        case Standing.Open:
            return stop;
        case Standing.Caution:
        case Standing.Short:
            return caution;
        case Standing.Note:
            return quiet;
        }
        return accent;
    }
}
