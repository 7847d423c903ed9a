// SPDX-License-Identifier: MIT
//
// A part number never goes on in the next line: by itself its middle gives way, among other words
// it goes to the next line whole.

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    id: root

    width: 400
    height: 200

    PartNumber {
        id: number

        width: 90
        text: "HE-10-45-SWIVEL-L"
    }
    PartNumber {
        id: wide

        width: 300
        text: number.text
    }
    Sentence {
        id: sentence

        y: 60
        width: 120
        sentence: "car 2: coupe; PT-8-LONG-K, hose -8"
    }

    TestCase {
        name: "PartNumber"
        when: windowShown
        visible: true

        function test_itsMiddleGivesWay() {
            compare(number.lineCount, 1);
            verify(number.truncated);
            verify(number.contentWidth <= number.width);
            compare(number.text, "HE-10-45-SWIVEL-L"); // What a screen reader says.
            verify(!wide.truncated);
        }
        function test_isWholeAmongWords() {
            verify(sentence.lineCount > 1);
            compare(sentence.text.indexOf("-"), sentence.text.lastIndexOf("-")); // That of "-8".
            compare(sentence.text.length, sentence.sentence.length);
            verify(sentence.text.endsWith("hose -8"));
        }
    }
}
