// SPDX-License-Identifier: MIT

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    width: 400
    height: 200

    StockColumns {
        id: columns

        width: 900
    }
    TestCase {
        name: "StockColumns"

        /// From the narrowest window's table to the widest.
        function test_neverNeedAHorizontalScrollBar() {
            for (let width = 520; width <= 2300; width += 10) {
                columns.width = width;
                const sum = columns.part + columns.where + 3 * columns.figure + columns.trailer
                    + columns.keep
                    + columns.due;
                verify(sum + 12 <= width, width + " " + sum);
                verify(columns.part >= 140, width + " " + columns.part);
                verify(!columns.hasWhere || columns.where >= 80, width + " " + columns.where);
            }
        }
    }
}
