// SPDX-License-Identifier: MIT
//
// Letters typed one soon after the other on a choice find what begins with them, closed and open.

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    id: root

    property int kind: 0

    width: 400
    height: 700

    ChoiceBox {
        id: choice

        width: 260
        name: "kind"
        model: ["adapter", "engine", "hose", "hose end", "tank", "tee", "T-piece"].concat(
            Array.from({ length: 30 }, (none, at) => "x" + at))
        currentIndex: root.kind
        onActivated: at => root.kind = at
    }
    SignalSpy {
        id: activated

        target: choice
        signalName: "activated"
    }
    TestCase {
        name: "ChoiceBox"
        when: windowShown
        visible: true

        function init() {
            failOnWarning(/.?/);
            wait(1100); // Another word begins.
            root.kind = 0;
            compare(choice.currentIndex, 0); // What it is bound to stays so.
            choice.forceActiveFocus(Qt.TabFocusReason);
            activated.clear();
        }
        function type(letters: string) {
            for (const letter of letters)
                keyClick(letter);
        }
        function test_severalLettersAreOneWord() {
            type("tee");
            compare(choice.currentText, "tee");
            compare(root.kind, 5);
        }
        function test_theBlankIsPartOfAWord() {
            type("hose e");
            compare(choice.currentText, "hose end");
            verify(!choice.popup.visible);
        }
        function test_oneLetterAgainGoesOn() {
            type("t");
            compare(choice.currentText, "tank");
            type("t");
            compare(choice.currentText, "tee");
            type("t");
            compare(choice.currentText, "T-piece");
            type("t");
            compare(choice.currentText, "tank");
        }
        function test_whatBeginsNothingChangesNothing() {
            type("zz");
            compare(choice.currentIndex, 0);
            compare(activated.count, 0);
        }
        function test_anOpenListHasItInHandAndChoosesByEnter() {
            keyClick(Qt.Key_Space);
            tryVerify(() => choice.popup.opened);
            verify(choice.popup.height <= 9 * Theme.target);
            type("te");
            compare(choice.highlightedIndex, 5);
            compare(root.kind, 0);
            keyClick(Qt.Key_Return);
            tryVerify(() => !choice.popup.visible);
            compare(root.kind, 5);
        }
    }
}
