// SPDX-License-Identifier: MIT
//
// A claim in the list of what is owed.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

BuyingCard {
    required property string key
    required property string owed
    required property string supplier
    required property string fault
    required property string stands

    objectName: "claimCard"
    number: key
    title: owed
    figure: stands
    detail: Gaps.fill(qsTr("%1  ·  %2"), fault, supplier)
}
