// SPDX-License-Identifier: MIT
//
// A form that was filled in, as an action of the journal and as a sentence.

#include "app/desk/stock/deeds/deed_words.h"
#include "app/desk/stock/deeds/stock_deed.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/desk/words/typed_figures.h"
#include "app/stockroom/byhand/coming_in.h"
#include "app/stockroom/byhand/moving.h"
#include "app/stockroom/byhand/seeing.h"
#include "app/stockroom/handing_out.h"

namespace flarestock {

namespace {

const std::string NobodySaid;

std::string conditionAt(int choice)
{
    return choice < 0 || choice > 3 ? NobodySaid
                                    : std::string(text(static_cast<PieceCondition>(choice)));
}

MoveWords moveWords(const FilledIn &filled)
{
    MoveWords words;
    words.part = filled.subject.entry->number;
    words.quantity = filled.figures("quantity");
    words.from = filled.subject.pieces->place;
    words.to = filled.typed("to");
    words.lot = filled.subject.pieces->lot;
    words.condition = text(filled.subject.pieces->condition);
    words.now = conditionAt(filled.values.value(QStringLiteral("now")).toInt() - 1);
    return words;
}

/// For a build out of what lies there: of a length it is cut off.
Result<Action> takenFor(const std::string &build, const FilledIn &filled, const Workshop &shop,
                        const By &by)
{
    const auto plan = buildAsked(build, shop);
    if (!plan)
        return tl::unexpected(plan.error());
    const Part *part = shop.part(filled.subject.entry->number);
    const auto quantity = quantityAsked(filled.figures("quantity"), *part);
    if (!quantity)
        return tl::unexpected(quantity.error());
    PickList list;
    list.picks.push_back({part, *filled.subject.pieces, *quantity, {}});
    if (isLength(part->unit) && *quantity < shop.ledger.balance(*filled.subject.pieces).quantity)
        list.picks.front().lengths = {*quantity};
    const auto movements = issueMovements(list, shop, **plan);
    if (!movements)
        return tl::unexpected(movements.error());
    return changed(*movements, shop, **plan, by);
}

/// The build that has got it in that car; nothing where it was put there without one.
const BuildPlan *buildIn(const BalanceKey &key, const Workshop &shop)
{
    for (const BuildPlan &plan : shop.builds) {
        if (plan.car == key.place && shop.ledger.claim({key.part, plan.id}).issued > 0)
            return &plan;
    }
    return nullptr;
}

Result<Action> putBack(const FilledIn &filled, const Workshop &shop, const By &by)
{
    const MoveWords words = moveWords(filled);
    if (const BuildPlan *plan = buildIn(*filled.subject.pieces, shop)) {
        const auto movement = givenBack(
            {plan->id, words.part, words.quantity, words.to, words.lot, words.condition, words.now},
            shop);
        if (!movement)
            return tl::unexpected(movement.error());
        return changed({*movement}, shop, *plan, by);
    }
    const auto movement = moved(words, shop, by.at);
    if (!movement)
        return tl::unexpected(movement.error());
    return numbered({*movement}, by);
}

Result<Action> movedAs(const MoveWords &words, const Workshop &shop, const By &by)
{
    const auto movement = moved(words, shop, by.at);
    if (!movement)
        return tl::unexpected(movement.error());
    return numbered({*movement}, by);
}

Result<Action> scrappedFor(const FilledIn &filled, const Workshop &shop, By by)
{
    by.why = filled.typed("why");
    if (by.why.empty())
        return problem(filled.subject.entry->number, "is thrown away for no reason",
                       "Say why; whoever looks for it later wants to know.");
    const auto movement = scrapped(moveWords(filled), shop);
    if (!movement)
        return tl::unexpected(movement.error());
    return numbered({*movement}, by);
}

Result<Action> broughtIn(const FilledIn &filled, const Workshop &shop, const By &by)
{
    return cameIn({filled.subject.entry->number, filled.figures("quantity"), filled.chosen("from"),
                   filled.typed("to"), filled.figures("cost"), filled.typed("lot"),
                   filled.typed("document"), dayTyped(filled.values, "useBy"),
                   filled.chosen("owner")},
                  shop, by);
}

Result<Action> keptAt(const FilledIn &filled, const Workshop &shop, const By &by)
{
    const auto keeping = keepingOf({filled.subject.entry->number, filled.typed("place"),
                                    filled.figures("least"), filled.figures("most")},
                                   shop, by);
    if (!keeping)
        return tl::unexpected(keeping.error());
    return Action{{keeping->asRecord()}, {}};
}

Result<Action> seenAt(const FilledIn &filled, const Workshop &shop, const By &by)
{
    const int choice = filled.values.value(QStringLiteral("level")).toInt();
    const auto level = static_cast<StockLevel>(2 - std::clamp(choice, 0, 2));
    const auto seen = levelOf({filled.subject.entry->number, filled.typed("place"),
                               std::string(text(level)), filled.typed("holds")},
                              shop, by);
    if (!seen)
        return tl::unexpected(seen.error());
    return Action{{seen->asRecord()}, {}};
}

Result<Action> actionOf(const FilledIn &filled, const Workshop &shop, const By &by)
{
    MoveWords words = filled.subject.pieces ? moveWords(filled) : MoveWords();
    switch (filled.deed) {
    case StockDeed::Take:
        words.to = filled.chosen("for");
        if (words.to.rfind("build|", 0) == 0)
            return takenFor(words.to.substr(6), filled, shop, by);
        return movedAs(words, shop, by);
    case StockDeed::PutBack:
        return putBack(filled, shop, by);
    case StockDeed::Lend:
        words.to = filled.chosen("whom");
        words.until = dayTyped(filled.values, "until");
        return movedAs(words, shop, by);
    case StockDeed::Judge:
        words.to = words.from;
        words.now = conditionAt(filled.values.value(QStringLiteral("is")).toInt());
        return movedAs(words, shop, by);
    case StockDeed::Scrap:
        return scrappedFor(filled, shop, by);
    case StockDeed::Receive:
        return broughtIn(filled, shop, by);
    case StockDeed::Keep:
        return keptAt(filled, shop, by);
    case StockDeed::Level:
        return seenAt(filled, shop, by);
    case StockDeed::Move:
    case StockDeed::Count:
        break;
    }
    return movedAs(words, shop, by);
}

QString placeTitle(const FilledIn &filled, const std::string &id)
{
    const Workshop &shop = *filled.subject.book->workshop;
    if (id.rfind("build|", 0) == 0) {
        const BuildPlan *plan = shop.build(id.substr(6));
        return said(plan && !plan->title.empty() ? plan->title : id.substr(6));
    }
    const Place *place = shop.ledger.place(id);
    return said(place ? place->title : id);
}

} // namespace

std::string FilledIn::typed(const char *field) const
{
    return shown(field).toStdString();
}

std::string FilledIn::figures(const char *field) const
{
    return figuresTyped(values, field);
}

QString FilledIn::shown(const char *field) const
{
    return values.value(QString::fromLatin1(field)).toString().trimmed();
}

std::string FilledIn::chosen(const char *field) const
{
    const auto ids = choicesOf(deed, field, subject);
    const int at = values.value(QString::fromLatin1(field)).toInt();
    return at < 0 || at >= static_cast<int>(ids.size()) ? NobodySaid
                                                        : ids[static_cast<std::size_t>(at)];
}

QString saidDone(const FilledIn &filled)
{
    const QString part = said(filled.subject.entry->number);
    const QString some = filled.shown("quantity");
    const QString from = filled.subject.pieces ? said(filled.subject.pieces->place) : QString();
    switch (filled.deed) {
    case StockDeed::Take:
        return DeedWords::tr("%1 of %2 taken from %3 for %4.")
            .arg(some, part, from, placeTitle(filled, filled.chosen("for")));
    case StockDeed::PutBack:
        return DeedWords::tr("%1 of %2 put back from %3 to %4.")
            .arg(some, part, from, filled.shown("to"));
    case StockDeed::Lend:
        return DeedWords::tr("%1 of %2 from %3: %4.")
            .arg(some, part, from, placeTitle(filled, filled.chosen("whom")));
    case StockDeed::Scrap:
        return DeedWords::tr("%1 of %2 from %3 thrown away.").arg(some, part, from);
    case StockDeed::Judge:
        return DeedWords::tr("%1 of %2 at %3 is %4 from now on.")
            .arg(some, part, from,
                 allConditions().value(filled.values.value(QStringLiteral("is")).toInt()));
    case StockDeed::Receive:
        return DeedWords::tr("%1 of %2 received from %3, to %4.")
            .arg(some, part, placeTitle(filled, filled.chosen("from")), filled.shown("to"));
    case StockDeed::Keep:
        return DeedWords::tr("%1 at %2: at least %3 is kept there.")
            .arg(part, filled.shown("place"), filled.shown("least"));
    case StockDeed::Level:
        return DeedWords::tr("%1 at %2: seen, and written down.").arg(part, filled.shown("place"));
    case StockDeed::Move:
    case StockDeed::Count:
        break;
    }
    return DeedWords::tr("%1 of %2 moved from %3 to %4.").arg(some, part, from, filled.shown("to"));
}

Pen::MadeBy madeOf(const FilledIn &filled)
{
    return [filled](const ShopFile &, const Workshop &shop, const By &by) {
        return actionOf(filled, shop, by);
    };
}

Pen::CountBy countOf(const FilledIn &filled)
{
    return [filled](const Workshop &shop, const By &by) {
        CountWords words{
            filled.subject.entry->number, filled.figures("found"), filled.typed("place"), {}, {}};
        const auto &pieces = filled.subject.pieces;
        if (pieces && pieces->place == words.place) {
            words.lot = pieces->lot;
            words.condition = text(pieces->condition);
        }
        return countOf(words, shop, by);
    };
}

QString saidCounted(const FilledIn &filled, const Counted &counted)
{
    const auto found = quantityAsked(filled.figures("found"), *filled.subject.entry->part);
    const auto amount = [&](std::int64_t some) {
        return saidStock(some, *filled.subject.entry->part, filled.subject.units);
    };
    const std::int64_t difference = found.value_or(counted.expected) - counted.expected;
    const QString counting = DeedWords::tr("Counted %1 at %2: found %3, the book said %4")
                                 .arg(said(filled.subject.entry->number), filled.shown("place"),
                                      filled.shown("found"), amount(counted.expected));
    if (difference == 0)
        return DeedWords::tr("%1. Nothing to change.").arg(counting);
    return difference < 0 ? DeedWords::tr("%1: %2 less.").arg(counting, amount(-difference))
                          : DeedWords::tr("%1: %2 more.").arg(counting, amount(difference));
}

} // namespace flarestock
