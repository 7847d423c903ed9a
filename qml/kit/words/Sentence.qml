// SPDX-License-Identifier: MIT
//
// Words that take as many lines as they need, and in which a part number stays on one of them.

import QtQuick
import Flarestock.Screens

Words {
    property string sentence

    // Else a line may end behind each hyphen: of PT-8-K, too.
    text: sentence.replace(/([A-Z0-9])-(?=[A-Z0-9])/g, "$1\u2011")
    wrapMode: Text.Wrap
}
