// SPDX-License-Identifier: MIT
//
// Day strip: the days on which something arrives or is needed, one after the other, each with what
// comes, what is needed, and how many parts are short from then on; and the same of one part, in
// pieces. Days on which nothing happens are left out, which the words between say.
//
//   Sat 28 Nov, today     Wed 2 Dec, in 4 days      Sat 12 Dec, in 14 days
//   4 parts by 2026-0003  1 part by 2026-0005       31 parts for Coupe, fuel
//   nothing short         nothing short             7 parts short

#pragma once

#include "app/desk/buying/buyers_book.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

#include <map>
#include <string>

namespace flarestock {

/// day away weekend comes needs lacks share partComes partNeeds partLacks partShort says. `share`:
/// how many are short, of the most on any day, from 0 to 1.
[[nodiscard]] QStringList stripCells();

class DayStrip {
public:
    /// Of no day.
    DayStrip() = default;
    /// Takes what it says out of the book, once for all parts. No day where the book says why it
    /// could not be worked out.
    DayStrip(const BuyersBook &book, Units units);

    /// `part`: whose pieces are told besides; empty: of none.
    [[nodiscard]] std::vector<Row> rows(const std::string &part) const;

private:
    struct OfPart {
        QString comes;
        QString needs;
        QString lacks; ///< From then on, on a day when something of it comes or is needed.
    };
    void add(const BuyersBook &book, Units units);

    std::vector<Row> m_days;                                      ///< As they are of no part.
    std::map<std::string, std::map<std::string, OfPart>> m_parts; ///< By part and day.
};

} // namespace flarestock
