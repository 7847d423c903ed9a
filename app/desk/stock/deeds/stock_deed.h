// SPDX-License-Identifier: MIT
//
// Stock deed: what a hand can do with a part in stock, as a form of a few fields and as an action
// of the journal, which the stockroom makes as it does for the commands.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/shop/pen.h"
#include "app/desk/stock/stock_book.h"
#include "app/desk/words/units.h"

#include <QVariantMap>

namespace flarestock {

enum class StockDeed : std::uint8_t {
    Take,    ///< For a build, to a car, or used up.
    PutBack, ///< What is in a car, lent or out for repair, to a place of stock.
    Move,    ///< To another place of stock.
    Count,   ///< Written down before it is said what should lie there.
    Receive, ///< Without an order.
    Lend,    ///< To somebody, or out for repair.
    Scrap,
    Judge, ///< What it is from now on.
    Keep,  ///< How much its place is to hold.
    Level, ///< How much is seen of what nobody counts.
};

/// What a deed is done with: a part and, where it is done with pieces, which.
struct DeedSubject {
    std::shared_ptr<const StockBook> book;
    const StockEntry *entry = nullptr;
    std::optional<BalanceKey> pieces; ///< Nothing where none is chosen.
    Units units = Units::Metric;
    /// Of a copy of the shop that travels: the places that went along; nothing: it is the shop.
    std::optional<std::vector<std::string>> along = {};

    [[nodiscard]] const Place *place() const; ///< Of the pieces; nullptr where none.
    [[nodiscard]] std::int64_t there() const; ///< How much lies there, smallest units.
};

/// label ready detail says; the key is the deed's name ("take" …). `ready` is whether there is
/// anything to do it with; `detail` says why not, or what it does.
[[nodiscard]] QStringList deedCells();
[[nodiscard]] std::vector<Row> deedRows(const DeedSubject &subject);
[[nodiscard]] std::optional<StockDeed> deedNamed(const QString &name);
/// That lengths of it are promised, and not which pieces they come from; empty where none are, or
/// where it does not come in lengths.
[[nodiscard]] QString saidLengthsPromised(const DeedSubject &subject);
/// That in a copy the pieces lie where the shop goes on meanwhile; empty where they do not.
[[nodiscard]] QString saidNotAlong(const DeedSubject &subject);
[[nodiscard]] QString saidDeedTitle(StockDeed deed, const DeedSubject &subject);

/// The fields of its form.
[[nodiscard]] std::vector<Row> fieldRows(StockDeed deed, const DeedSubject &subject);

/// What was filled in, by the keys of the fields.
struct FilledIn {
    StockDeed deed;
    DeedSubject subject;
    QVariantMap values;

    /// Words without blanks at their ends; figures as the model reads them; what stands there.
    [[nodiscard]] std::string typed(const char *field) const;
    [[nodiscard]] std::string figures(const char *field) const;
    [[nodiscard]] QString shown(const char *field) const;
    /// The id behind the choice that was made.
    [[nodiscard]] std::string chosen(const char *field) const;
};
/// Who and where pieces can go or come from by choice: ids of places, or "build|id".
[[nodiscard]] std::vector<std::string> choicesOf(StockDeed deed, const char *field,
                                                 const DeedSubject &subject);
/// That no more can be taken than lies there, and how much does; empty where it can.
[[nodiscard]] QString saidTooMuch(const FilledIn &filled);
/// What it does, as a sentence.
[[nodiscard]] QString saidDone(const FilledIn &filled);
/// The action; not for a count.
[[nodiscard]] Pen::MadeBy madeOf(const FilledIn &filled);
[[nodiscard]] Pen::CountBy countOf(const FilledIn &filled);
/// "Counted C5: found 5, the book said 6: 1 less."
[[nodiscard]] QString saidCounted(const FilledIn &filled, const Counted &counted);

} // namespace flarestock
