// SPDX-License-Identifier: MIT

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    width: 600
    height: 300

    FormField {
        id: typed

        width: 260
        key: "to"
        title: "to which place"
        form: "typed"
        choices: []
        value: "C4"
        hint: "type or scan the bin"
    }
    FormField {
        id: chosen

        width: 260
        y: 100
        key: "now"
        title: "from now on"
        form: "choice"
        choices: ["as it was", "new", "to be checked"]
        value: "0"
        hint: ""
    }
    SignalSpy {
        id: entered

        target: typed
        signalName: "entered"
    }
    TestCase {
        name: "FormField"
        when: windowShown
        visible: true

        function init() {
            failOnWarning(/.?/);
            entered.clear();
            findChild(typed, "field-to").text = "C4";
            findChild(chosen, "choice-now").currentIndex = 0;
        }
        function test_beginsWithWhatIsLikely() {
            compare(typed.filled, "C4");
            compare(chosen.filled, 0);
        }
        function test_whatIsTypedReplacesIt() {
            typed.forceActiveFocus(Qt.TabFocusReason);
            keyClick("b");
            keyClick("1");
            compare(typed.filled, "b1");
            keyClick(Qt.Key_Return);
            compare(entered.count, 1);
        }
        function test_aChoiceIsItsNumber() {
            chosen.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Down);
            compare(chosen.filled, 2);
        }
        function test_hasANameForWhoCannotSeeIt() {
            compare(findChild(typed, "field-to").Accessible.name, "to which place");
            compare(findChild(chosen, "choice-now").Accessible.name, "from now on");
        }
        function test_isBigEnoughForGloves() {
            verify(findChild(typed, "field-to").height >= Theme.target);
            verify(findChild(chosen, "choice-now").height >= Theme.target);
        }
    }
}
