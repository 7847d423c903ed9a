// SPDX-License-Identifier: MIT

#include "model/spares/carry/wearing_out.h"

#include <cassert>

namespace flarestock {

DuePieces replacementsDue(const WearingOut &wear)
{
    assert(wear.lasts.sign() > 0 && wear.coming.sign() >= 0);
    DuePieces due;
    if (wear.coming.isZero())
        return due;
    for (const Decimal &used : wear.used) {
        // A piece that is past its life is replaced once, not as often as it should have been.
        const Decimal from = used < wear.lasts ? used : wear.lasts;
        const Decimal run = from + wear.coming;
        const std::int64_t ended = divide(run, wear.lasts, 0, Rounding::Down).toInt64().value_or(0);
        const bool endsJustThen = remainder(run, wear.lasts).isZero();
        due.during += endsJustThen ? ended - 1 : ended;
        due.after += endsJustThen ? 1 : 0;
    }
    return due;
}

} // namespace flarestock
