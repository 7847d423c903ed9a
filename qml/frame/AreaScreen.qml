// SPDX-License-Identifier: MIT
//
// What every area's screen is: it takes the keyboard, hears what is typed into the find field and
// what is scanned, and tells the bottom line what it has to explain. Areas.qml lists them.

import QtQuick
import Flarestock.Desk

FocusScope {
    property bool current: false      // It is the one that shows.
    property bool ready: true         // All that it shows has been read.
    property bool takesScans: false   // A sheet of its own is open that knows what to do with them.
    property string findHint: ""      // What stands in the find field while nothing is typed.
    property string findName: ""      // What the find field is called for who cannot see it.
    property Rows found: null         // What drops down below the find field; nothing: the screen
                                      // itself shows what was found.
    property string foundNothing: ""        // What is said where nothing was found.
    property var ownKinds: []         // Of what is found in the whole shop, the kinds that it
                                      // narrows itself: "order", "part" …

    signal explained(string sentence) // For the bottom line.
    signal wentTo(int area, string target) // To another area, and there to what is meant.
    signal forgotten()                // What was typed in the find field holds no more.

    function enter() {}                              // Takes the keyboard.
    function find(typed: string) {}                  // Something was typed in the find field.
    function go(kind: string, target: string) {}     // To a row of `found`.
    function widen() {}                              // Escape: all of it shows again.
    function done() {}                               // Enter in the find field, without `found`.
    function scan(code: string): bool {              // Whether the code means something here.
        return false;
    }
}
