// SPDX-License-Identifier: MIT
//
// The widths of the columns of what is short. Where it gets narrow, what is on its way folds away
// first, then by when to order: the panel says both.

import QtQml

QtObject {
    required property real width

    readonly property real figure: width < 620 ? 84 : 98
    readonly property bool hasComing: width >= 860
    readonly property bool hasOrderBy: width >= 640
    readonly property real orderBy: hasOrderBy ? 116 : 0
    readonly property real rest: width - 2 * figure - orderBy - 34
    readonly property real coming: hasComing ? rest * 0.22 : 0
    readonly property real whom: (rest - coming) * 0.42
    readonly property real part: rest - coming - whom
}
