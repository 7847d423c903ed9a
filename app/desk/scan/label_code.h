// SPDX-License-Identifier: MIT
//
// Label code: what a scanned or typed code means, as labels carry it: a part number, a lot or
// serial, or both as "PART=LOT". A blank is part of it.

#pragma once

#include <QString>

namespace flarestock {

struct LabelCode {
    QString part; ///< All of it where there is no mark between two; it may be a lot then.
    QString lot;  ///< Empty: not said.

    [[nodiscard]] static LabelCode of(const QString &code);
    /// Whether a line of that part and lot is meant, however the code is written.
    [[nodiscard]] bool means(const QString &ofPart, const QString &ofLot) const;
};

} // namespace flarestock
