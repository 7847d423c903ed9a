// SPDX-License-Identifier: MIT
//
// Over each group of lines stands its own name, whatever came, went, or changed its group before:
// an item that stood over another group is used again for it.

import QtQuick
import QtTest
import Flarestock.Screens

TestCase {
    id: root

    name: "grouped list"
    when: windowShown
    visible: true
    width: 300
    height: 400

    /// The names that stand in the list, from above.
    function heads(): string {
        const all = [];
        for (let at = 0; at < list.contentItem.children.length; ++at) {
            const one = list.contentItem.children[at];
            if (one.visible && one.group !== undefined)
                all.push([one.y, one.group]);
        }
        return all.sort((a, b) => a[0] - b[0]).map(one => one[1]).join(" ");
    }
    function fill(groups: string) {
        rows.clear();
        for (let at = 0; at < groups.length; ++at)
            rows.append({line: "line of " + groups[at], group: groups[at]});
    }
    function init() {
        fill("AB");
        tryVerify(() => heads() === "A B");
    }

    function test_anEmptiedListGetsOtherGroups() {
        rows.clear();
        tryVerify(() => heads() === "");
        fill("CD");
        tryVerify(() => heads() === "C D", 1000, heads());
    }
    function test_aListThatIsNotSeenGetsOtherGroups() {
        list.visible = false;
        fill("CD");
        wait(20);
        list.visible = true;
        tryVerify(() => heads() === "C D", 1000, heads());
    }
    function test_aLineGoesToAnotherGroup() {
        rows.setProperty(0, "group", "B");
        tryVerify(() => heads() === "B", 1000, heads());
        rows.setProperty(1, "group", "C");
        tryVerify(() => heads() === "B C", 1000, heads());
    }
    function test_linesComeBeforeAndBetween() {
        rows.insert(0, {line: "first", group: "Z"});
        rows.insert(1, {line: "second", group: "Y"});
        tryVerify(() => heads() === "Z Y A B", 1000, heads());
        rows.remove(0);
        tryVerify(() => heads() === "Y A B", 1000, heads());
        rows.remove(1);
        tryVerify(() => heads() === "Y B", 1000, heads());
    }
    function test_aLongListIsWalked() {
        fill("AABBCCDDEEFFGGHHIIKKLLMM");
        list.positionViewAtEnd();
        tryVerify(() => heads().endsWith("L M"), 1000, heads());
        list.positionViewAtBeginning();
        tryVerify(() => heads().startsWith("A B C D"), 1000, heads());
    }

    ListModel {
        id: rows
    }
    GroupedList {
        id: list

        anchors.fill: parent
        model: rows
        section.property: "group"
        delegate: Text {
            required property string line

            height: 30
            text: line
        }
    }
}
