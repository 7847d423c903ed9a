// SPDX-License-Identifier: MIT
//
// The sheets of handing out, each opened by its step, and put away when its deed is done.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property HandingOut handing
    required property string who

    readonly property bool takesScans: another.opened || pick.opened

    function open(step: string) {
        root.handing.hear();
        if (step === "reserve")
            root.handing.reserve();
        else if (step === "pick")
            pick.open();
        else if (step === "give")
            give.open();
        else if (root.handing.isDone)
            root.handing.openAgain();
        else
            done.open();
    }

    /// The joint of that spot of the map is opened for service. Whether it is one.
    function openJoint(spot: string): bool {
        if (!root.handing.beginJoint(spot))
            return false;
        joint.open();
        return true;
    }
    /// Whether a sheet that is open has a field for the code, or ticks it and says if it cannot.
    function scan(code: string): bool {
        if (pick.opened)
            root.handing.scan(code);
        return pick.opened || another.opened && another.scan(code);
    }

    Connections {
        target: Desk.pen

        function onWrote() {
            another.close();
            joint.close();
            done.close();
        }
    }
    Connections {
        target: root.handing.picks

        function onCountChanged() { // What was written comes back as a list a moment later.
            if (root.handing.picks.count === 0)
                pick.close();
        }
    }
    Connections {
        target: root.handing.inCar

        function onCountChanged() {
            if (root.handing.inCar.count === 0)
                give.close();
        }
    }
    Connections {
        target: root.handing

        function onFound(row: int) {
            pick.show(row);
        }
    }
    PickSheet {
        id: pick

        picks: root.handing.picks
        notFound: root.handing.notFound
        tickedCount: root.handing.tickedCount
        problem: root.handing.problem
        busy: root.handing.busy
        onTicked: row => root.handing.tick(row)
        onScanned: code => root.handing.scan(code)
        onIssued: all => root.handing.issue(all)
    }
    GiveBackSheet {
        id: give

        inCar: root.handing.inCar
        problem: root.handing.problem
        busy: root.handing.busy
        onGiven: (row, typed, to, now) => root.handing.giveBack(row, typed, to, now)
        onAnother: row => {
            if (!root.handing.beginAnother(row))
                return;
            give.close();
            another.open();
        }
    }
    FormSheet {
        id: another

        form: root.handing.another
        problem: root.handing.problem
        busy: root.handing.busy
        widest: 760
    }
    FormSheet {
        id: joint

        form: root.handing.joint
        problem: root.handing.problem
        busy: root.handing.busy
    }
    DoneSheet {
        id: done

        kept: root.handing.test
        newestTest: root.handing.newestTest
        whyNotDone: root.handing.whyNotDone
        against: root.handing.against
        brakes: root.handing.brakes
        who: root.who
        problem: root.handing.problem
        busy: root.handing.busy
        onFinished: test => root.handing.finish(test)
    }
}
