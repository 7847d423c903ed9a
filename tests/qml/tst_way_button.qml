// SPDX-License-Identifier: MIT

import QtQuick
import QtTest
import Flarestock.Screens

Item {
    width: 400
    height: 200

    WayButton {
        id: way

        width: 280
        title: "AD-810 + HE-10"
        detail: "from the shelf; nothing to buy"
        cost: "15.00 USD"
        shortOf: 0
        inUse: true
    }
    SignalSpy {
        id: clicked

        target: way
        signalName: "clicked"
    }
    TestCase {
        name: "WayButton"
        when: windowShown
        visible: true

        function init() {
            failOnWarning(/.?/);
            clicked.clear();
            way.detail = "from the shelf; nothing to buy";
        }
        function test_saysAllOfItToAReader() {
            compare(way.Accessible.name, "AD-810 + HE-10, from the shelf; nothing to buy, 15.00 USD");
            verify(way.Accessible.checked);
        }
        function test_isPressedByEnterSpaceAndTouch() {
            way.forceActiveFocus();
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Space);
            mouseClick(way);
            compare(clicked.count, 3);
        }
        function test_growsWithItsWords() {
            const before = way.height;
            way.detail = "screws together, but leaks; leaves 2 short: AD-810, HE-10-90, RI-910, "
                       + "and the washers that go with it";
            tryVerify(() => way.height > before);
            verify(way.height >= Theme.target);
        }
    }
}
