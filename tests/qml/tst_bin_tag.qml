// SPDX-License-Identifier: MIT

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    width: 400
    height: 200

    BinTag {
        id: tag

        width: 160
        place: "C4"
        amount: "3"
        detail: "new"
        isFree: true
        kind: "bin"
        says: "3 at C4, new"
    }
    SignalSpy {
        id: clicked

        target: tag
        signalName: "clicked"
    }
    TestCase {
        name: "BinTag"
        when: windowShown
        visible: true

        function init() {
            failOnWarning(/.?/);
            clicked.clear();
            tag.checked = false;
            tag.detail = "new";
        }
        function test_isTakenByKeyboard() {
            tag.forceActiveFocus();
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Space);
            compare(clicked.count, 2);
        }
        function test_saysInWordsThatItIsInHand() {
            verify(!tag.Accessible.checked);
            tag.checked = true;
            verify(tag.Accessible.checked);
            verify(findChild(tag, "binDetail").text.startsWith("in hand"));
        }
        function test_growsWithWhatHasToBeSaid() {
            const before = tag.height;
            tag.detail = "COIL-17, to be checked, only for car-2, past its day Sat 31 Oct 2026";
            tryVerify(() => tag.height > before);
        }
        function test_isBigEnoughForGloves() {
            verify(tag.height >= Theme.target);
        }
    }
}
