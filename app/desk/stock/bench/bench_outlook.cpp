// SPDX-License-Identifier: MIT
//
// What a deed at the bench would come to, before it is done.

#include "app/desk/stock/bench/bench_deed.h"
#include "app/desk/stock/bench/bench_words.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::size_t PiecesShown = 6;

QString saidValue(std::int64_t micros, const Workshop &shop)
{
    return saidMoney(
        {Decimal::scaled(micros, 6).rescaled(2, Rounding::HalfEven), shop.settings.currency});
}

/// A cut plan as words and as bars.
class SawPlan {
public:
    SawPlan(const CutWish &wish, CutAim aim, Units units)
        : m_wish(wish), m_named(wish), m_plan(planCuts(m_named.task(), aim)), m_units(units)
    {
        for (const auto &from : m_plan.from)
            m_longest = std::max(m_longest, from.had);
    }
    [[nodiscard]] BenchOutlook outlook() const
    {
        BenchOutlook outlook;
        for (std::size_t at = 0; at < std::min(m_plan.from.size(), PiecesShown); ++at)
            outlook.pieces.push_back(row(m_plan.from[at]));
        if (m_plan.from.size() > PiecesShown)
            outlook.says.append(
                BenchWords::tr("And off %1 pieces more.").arg(m_plan.from.size() - PiecesShown));
        if (!m_plan.lacking.empty())
            outlook.says.append(
                BenchWords::tr("Nothing here is long enough for %1. One piece of %2 would be.")
                    .arg(list(m_plan.lacking), amount(m_plan.lengthToBuy(m_named.task()))));
        outlook.says.append(BenchWords::tr("To waste: %1.").arg(amount(m_plan.waste())));
        if (m_plan.bound)
            outlook.says.append(
                BenchWords::tr("There was no time to prove that nothing is better."));
        return outlook;
    }

private:
    [[nodiscard]] QString amount(std::int64_t length) const
    {
        return saidStock(length, m_wish.part, m_units);
    }
    [[nodiscard]] QString list(const std::vector<std::size_t> &lengths) const
    {
        QStringList all;
        for (const std::size_t one : lengths)
            all.append(amount(m_wish.lengths[one]));
        return all.join(QStringLiteral(" + "));
    }
    [[nodiscard]] QVariantMap segment(const char *kind, std::int64_t length) const
    {
        return {{QStringLiteral("kind"), QString::fromLatin1(kind)},
                {QStringLiteral("share"),
                 static_cast<double>(length) /
                     static_cast<double>(std::max<std::int64_t>(m_longest, 1))}};
    }
    [[nodiscard]] Row row(const CutPlan::FromPiece &from) const
    {
        const BalanceKey &name = m_named.name(*from.piece); // No coil is bought here.
        QVariantList segments;
        for (const std::size_t one : from.lengths)
            segments.append(segment("cut", m_wish.lengths[one]));
        segments.append(segment("waste", from.waste));
        segments.append(segment("rest", from.rest));
        const QString piece =
            BenchWords::tr("%1 in %2, %3").arg(said(name.lot), said(name.place), amount(from.had));
        const QString cuts =
            from.rest > 0
                ? BenchWords::tr("%1, %2 is left").arg(list(from.lengths), amount(from.rest))
                : BenchWords::tr("%1, nothing is left").arg(list(from.lengths));
        return {said(name.place + '|' + name.lot + '|' + std::string(text(name.condition))),
                {piece, cuts, segments, BenchWords::tr("off %1: %2").arg(piece, cuts)}};
    }

    const CutWish &m_wish;
    NamedTask m_named;
    CutPlan m_plan;
    Units m_units;
    std::int64_t m_longest = 0;
};

BenchOutlook refused(const Problem &problem)
{
    return {{saidProblem(problem)}, {}};
}

BenchOutlook cutOutlook(const BenchFilled &filled, const By &by)
{
    const Workshop &shop = *filled.subject.book->workshop;
    const auto words = cuttingWordsIn(filled, shop);
    if (!words)
        return refused(words.error());
    if (words->lengths.empty())
        return words->build.empty()
                   ? BenchOutlook()
                   : BenchOutlook{{BenchWords::tr("The build wants no length of it any more.")},
                                  {}};
    const auto wish = cutWish(*words, shop, by);
    if (!wish)
        return refused(wish.error());
    const CutAim aim = parseCutAim(words->plan).value_or(CutAim::RemnantsFirst);
    return SawPlan(*wish, aim, filled.subject.units).outlook();
}

BenchOutlook madeOutlook(const BenchFilled &filled, const By &by)
{
    const Workshop &shop = *filled.subject.book->workshop;
    const MakingWords words = makingWords(filled);
    if (words.cut.empty() || words.tag.empty() || words.to.empty())
        return {};
    const auto made = madeUp(words, shop, by);
    if (!made)
        return refused(made.error());
    const Part &hose = *filled.subject.entry->part;
    const auto amount = [&](std::int64_t length) {
        return saidStock(length, hose, filled.subject.units);
    };
    QStringList says{
        BenchWords::tr("%1 comes off %2; between its seats the hose has %3.")
            .arg(amount(made->hose.cut), said(made->hose.hoseLot), amount(made->hose.seats)),
        BenchWords::tr("%1 is worth %2.").arg(said(made->hose.tag), saidValue(made->value, shop))};
    if (made->condition == PieceCondition::ToBeChecked)
        says.append(
            BenchWords::tr("Without a proof test it is to be checked, and free to nobody."));
    else if (made->condition == PieceCondition::NotToBeUsed)
        says.append(BenchWords::tr("It has failed its test: it is not to be used."));
    return {says, {}};
}

/// By what a piece of a box takes its share of the value.
QString saidShare(const std::string &by)
{
    if (by.rfind("offered", 0) == 0)
        return BenchWords::tr("by its offer");
    if (by.rfind("stated", 0) == 0)
        return BenchWords::tr("as it was written");
    return by.empty() ? BenchWords::tr("what is left of the box")
                      : BenchWords::tr("nobody sells it");
}

BenchOutlook openedOutlook(const BenchFilled &filled, const By &by)
{
    const Workshop &shop = *filled.subject.book->workshop;
    const auto opened = openedBox(openingWords(filled), shop, by);
    if (!opened)
        return refused(opened.error());
    QStringList says;
    for (const CameOff &piece : opened->pieces)
        says.append(BenchWords::tr("%1 of %2 to %3: %4, %5")
                        .arg(saidStock(piece.quantity, *piece.part, filled.subject.units),
                             said(piece.part->number), said(piece.to), saidValue(piece.value, shop),
                             saidShare(piece.by)));
    for (const std::string &missing : opened->missing)
        says.append(BenchWords::tr("%1 was found missing before.").arg(said(missing)));
    if (opened->build != nullptr)
        says.append(BenchWords::tr("The build %1 keeps what it has got in the box.")
                        .arg(said(opened->build->id)));
    return {says, {}};
}

} // namespace

QStringList cutCells()
{
    return {QStringLiteral("name"), QStringLiteral("cuts"), QStringLiteral("segments"),
            QStringLiteral("says")};
}

BenchOutlook outlookOf(const BenchFilled &filled, const By &by)
{
    switch (filled.deed) {
    case BenchDeed::Cut:
        return cutOutlook(filled, by);
    case BenchDeed::MakeUp:
        return madeOutlook(filled, by);
    case BenchDeed::Open:
        break;
    }
    return openedOutlook(filled, by);
}

} // namespace flarestock
