// SPDX-License-Identifier: MIT
//
// One thing that is known: what it is about, and in words below it how it stands.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property string title
    required property string detail
    required property bool flagged

    spacing: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: Gaps.fill(qsTr("%1: %2"), title, detail)

    Sentence {
        width: root.width
        sentence: root.title
    }
    Sentence {
        width: root.width
        sentence: root.flagged ? qsTr("! %1").arg(root.detail) : root.detail
        small: true
        strong: root.flagged
        color: root.flagged ? Theme.caution : Theme.quiet
    }
}
