// SPDX-License-Identifier: MIT
//
// Text can be read on its ground in both looks: contrast at least 4.5 to 1 (WCAG 2.1, 1.4.3).

import QtQuick
import QtTest
import Flarestock.Desk
import Flarestock.Screens

TestCase {
    name: "Theme"

    function light(part: real): real {
        return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
    function luminance(colour: color): real {
        return 0.2126 * light(colour.r) + 0.7152 * light(colour.g) + 0.0722 * light(colour.b);
    }
    function contrast(a: color, b: color): real {
        const pair = [luminance(a), luminance(b)].sort((x, y) => y - x);
        return (pair[0] + 0.05) / (pair[1] + 0.05);
    }
    function test_textIsReadable_data() {
        const rows = [];
        for (const dark of [false, true]) {
            for (const ink of ["ink", "quiet", "accent", "stop", "caution"]) {
                for (const ground of ["window", "surface", "stripe", "accentFill"])
                    rows.push({ tag: ink + " on " + ground + (dark ? ", dark" : ", light"),
                                dark: dark, ink: ink, ground: ground });
            }
            rows.push({ tag: "stop on its fill " + dark, dark: dark, ink: "stop", ground: "stopFill" });
            rows.push({ tag: "caution on its fill " + dark, dark: dark, ink: "caution", ground: "cautionFill" });
            rows.push({ tag: "ink on a selection " + dark, dark: dark, ink: "ink", ground: "selection" });
            rows.push({ tag: "accent on the column " + dark, dark: dark, ink: "accent", ground: "side" });
            rows.push({ tag: "accent on its fill of caution " + dark, dark: dark, ink: "accent", ground: "cautionFill" });
            rows.push({ tag: "quiet on the column " + dark, dark: dark, ink: "quiet", ground: "side" });
        }
        return rows;
    }
    function test_textIsReadable(row) {
        Look.dark = row.dark;
        const got = contrast(Theme[row.ink], Theme[row.ground]);
        verify(got >= 4.5, row.tag + ": " + got);
    }
    // Outlines that show what can be pressed or typed into, and marks: 3 to 1 (WCAG 2.1, 1.4.11).
    function test_outlinesCanBeSeen_data() {
        const rows = [];
        for (const dark of [false, true]) {
            for (const edge of ["ruleStrong", "accent", "stop", "caution", "pipe"]) {
                for (const ground of ["window", "surface", "side"])
                    rows.push({ tag: edge + " on " + ground + (dark ? ", dark" : ", light"),
                                dark: dark, edge: edge, ground: ground });
            }
        }
        return rows;
    }
    function test_outlinesCanBeSeen(row) {
        Look.dark = row.dark;
        const got = contrast(Theme[row.edge], Theme[row.ground]);
        verify(got >= 3, row.tag + ": " + got);
    }
    function cleanupTestCase() {
        Look.dark = false;
    }
    function test_contrastOfBlackAndWhite() {
        compare(Math.round(contrast(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1))), 21); // WCAG 2.1, definition
    }
}
