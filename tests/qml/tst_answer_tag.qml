// SPDX-License-Identifier: MIT

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    width: 400
    height: 200

    AnswerTag {
        id: measure

        title: "power"
        form: "measure"
        choices: []
        answer: "450 hp"
        problem: ""
    }
    AnswerTag {
        id: choice

        y: 80
        title: "fluid"
        form: "choice"
        choices: ["gasoline", "E85"]
        answer: "E85"
        problem: ""
    }
    SignalSpy {
        id: typed

        target: measure
        signalName: "typed"
    }
    SignalSpy {
        id: picked

        target: choice
        signalName: "picked"
    }
    TestCase {
        name: "AnswerTag"
        when: windowShown
        visible: true

        function init() {
            failOnWarning(/.?/);
            typed.clear();
            picked.clear();
            measure.problem = "";
        }
        function test_showsItsAnswer() {
            compare(findChild(measure, "measure").text, "450 hp");
            compare(findChild(choice, "choice").displayText, "E85");
            verify(!findChild(measure, "choice").visible);
            verify(!findChild(choice, "measure").visible);
        }
        function test_otherChoicesKeepTheAnswer() {
            choice.choices = ["diesel", "gasoline", "E85"];
            compare(findChild(choice, "choice").displayText, "E85");
            choice.choices = ["gasoline", "E85"];
            compare(findChild(choice, "choice").displayText, "E85");
        }
        function test_saysWhatWasTypedOnce() {
            const field = findChild(measure, "measure");
            field.forceActiveFocus();
            field.text = "520 hp";
            keyClick(Qt.Key_Return);
            compare(typed.count, 1);
            compare(typed.signalArguments[0][0], "520 hp");
            field.text = "450 hp";
            keyClick(Qt.Key_Return);
            compare(typed.count, 1);
        }
        function test_escapeBringsTheAnswerBack() {
            const field = findChild(measure, "measure");
            field.forceActiveFocus();
            field.text = "5";
            keyClick(Qt.Key_Escape);
            compare(field.text, "450 hp");
        }
        function test_isRefusedInWordsNotOnlyInColour() {
            measure.problem = "power: has no unit";
            verify(measure.refused);
            compare(findChild(measure, "measure").Accessible.description, "power: has no unit");
        }
        function test_choosesByKeyboard() {
            const box = findChild(choice, "choice");
            box.forceActiveFocus();
            keyClick(Qt.Key_Up);
            compare(picked.count, 1);
            compare(picked.signalArguments[0][0], 0);
        }
        function test_isBigEnoughForGloves() {
            verify(measure.height >= Theme.target);
            verify(measure.width >= Theme.target);
        }
    }
}
