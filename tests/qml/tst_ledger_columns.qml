// SPDX-License-Identifier: MIT

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    width: 400
    height: 200

    LedgerColumns {
        id: columns

        width: 900
    }
    TestCase {
        name: "LedgerColumns"

        function sum() {
            return columns.part + columns.why + 2 * columns.figure + columns.got
                + columns.trailer + columns.way + columns.shortage + columns.each + columns.cost;
        }
        /// From the narrowest window's table to the widest, whatever columns there are.
        function test_neverNeedAHorizontalScrollBar() {
            for (let width = 740; width <= 2300; width += 10) {
                for (let some = 0; some < 8; ++some) {
                    columns.width = width;
                    columns.hasGot = (some & 1) !== 0;
                    columns.hasTrailer = (some & 2) !== 0;
                    columns.hasWay = (some & 4) !== 0;
                    verify(sum() + 12 <= width, width + " " + some + " " + sum());
                    verify(columns.part >= 120, width + " " + some + " " + columns.part);
                    verify(!columns.hasWhy || columns.why >= 130, width + " " + columns.why);
                }
            }
        }
        function test_whatNoLineHasTakesNoRoom() {
            columns.hasGot = columns.hasTrailer = columns.hasWay = false;
            compare(columns.got + columns.trailer + columns.way, 0);
            const before = columns.words;
            columns.hasTrailer = true;
            compare(columns.words, before - columns.figure);
        }
    }
}
