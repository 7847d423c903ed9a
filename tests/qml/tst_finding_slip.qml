// SPDX-License-Identifier: MIT

import QtQuick
import QtTest
import Flarestock.Desk
import Flarestock.Screens

Item {
    width: 400
    height: 300

    FindingSlip {
        id: slip

        width: 340
        index: 0
        mark: Standing.Trap
        severity: "stop"
        about: "Rail inlet: a -6 flare in a -6 boss screws in and leaks"
        why: "The cone touches nothing and there is no ring."
        source: "SAE J514, SAE J1926-1"
        remedy: "Put an adapter between them."
        mend: "use AD-66"
        says: "stop. Rail inlet"
    }
    SignalSpy {
        id: mended

        target: slip
        signalName: "mended"
    }
    TestCase {
        name: "FindingSlip"
        when: windowShown
        visible: true

        function init() {
            failOnWarning(/.?/);
            mended.clear();
            slip.mend = "use AD-66";
        }
        function test_itsButtonMends() {
            const button = findChild(slip, "mend");
            verify(button.visible);
            verify(button.height >= Theme.target);
            mouseClick(button);
            compare(mended.count, 1);
        }
        function test_hasNoButtonWhereTheProgramCannotMend() {
            const before = slip.height;
            slip.mend = "";
            verify(!findChild(slip, "mend").visible);
            tryVerify(() => slip.height < before);
        }
        function test_isReadOutWhole() {
            compare(slip.Accessible.name, "stop. Rail inlet");
        }
    }
}
