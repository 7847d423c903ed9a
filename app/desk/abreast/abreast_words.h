// SPDX-License-Identifier: MIT
//
// Abreast words: what is said of one build and one part where builds stand side by side: what it
// gets and from where, in the few words of a cell; and why, in sentences.

#pragma once

#include "app/desk/abreast/abreast_book.h"
#include "app/desk/words/units.h"

#include <QCoreApplication>
#include <QStringList>

namespace flarestock {

struct AbreastWords {
    Q_DECLARE_TR_FUNCTIONS(Abreast)
};

/// "3 here, the last, short 1"
[[nodiscard]] QString saidGot(const AbreastBook &book, const NeedLine &line, Units units);
/// "order by Tue 8 Dec"; empty where nothing has to be ordered.
[[nodiscard]] QString saidOrdering(const AbreastBook &book, const NeedLine &line);
/// Both of them, on one line.
[[nodiscard]] QString saidGotAndOrdering(const AbreastBook &book, const NeedLine &line,
                                         Units units);

/// Why it gets that: what is its own, whose day comes first, what comes in time, what lacks.
[[nodiscard]] QStringList saidWhy(const AbreastBook &book, const NeedLine &line, Units units);

/// "Sat 12 Dec"; words where there is none.
[[nodiscard]] QString saidBuildDay(const AbreastBook &book, const std::string &day);
/// A few of them with "and 3 more" behind.
[[nodiscard]] QString saidFew(const QStringList &all, int most);

} // namespace flarestock
