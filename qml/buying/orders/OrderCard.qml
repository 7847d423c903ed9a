// SPDX-License-Identifier: MIT
//
// An order in the list of orders.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

BuyingCard {
    required property string key
    required property string supplier
    required property string stands
    required property string days
    required property string total

    objectName: "orderCard"
    number: key
    figure: total
    title: supplier
    detail: Gaps.fill(qsTr("%1  ·  %2"), stands, days)
}
