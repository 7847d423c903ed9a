// SPDX-License-Identifier: MIT
//
// A form of the bench that was filled in, as an action of the journal and as a sentence.

#include "app/desk/stock/bench/bench_deed.h"
#include "app/desk/stock/bench/bench_words.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

Result<Action> actionAtBench(const BenchFilled &filled, const Workshop &shop, const By &by)
{
    if (filled.deed == BenchDeed::Cut) {
        const auto words = cuttingWordsIn(filled, shop);
        if (!words)
            return tl::unexpected(words.error());
        return cutOff(*words, shop, by);
    }
    if (filled.deed == BenchDeed::MakeUp) {
        auto made = madeUp(makingWords(filled), shop, by);
        if (!made)
            return tl::unexpected(made.error());
        return std::move(made->action);
    }
    auto opened = openedBox(openingWords(filled), shop, by);
    if (!opened)
        return tl::unexpected(opened.error());
    return std::move(opened->action);
}

/// "24 in off COIL-17 as COIL-17/1, 30 in off COIL-17 as COIL-17/2"; of more than a few how many.
QString saidCuts(const BenchFilled &filled, const Action &action)
{
    const Part &part = *filled.subject.entry->part;
    QStringList cuts;
    for (const Movement &one : action.movements) {
        if (one.deed == Deed::Scrap)
            continue;
        const QString cut =
            BenchWords::tr("%1 off %2")
                .arg(saidStock(one.quantity, part, filled.subject.units), said(one.lot));
        cuts.append(one.newLot ? BenchWords::tr("%1 as %2").arg(cut, said(*one.newLot)) : cut);
    }
    constexpr int CutsSaid = 3; // More do not fit on the bottom line.
    return cuts.size() > CutsSaid ? BenchWords::tr("%1 lengths").arg(cuts.size())
                                  : cuts.join(QStringLiteral(", "));
}

} // namespace

Result<CuttingWords> cuttingWordsIn(const BenchFilled &filled, const Workshop &shop)
{
    CuttingWords words = cuttingWords(filled);
    const BuildPlan *plan = shop.build(words.build);
    const Part *part = shop.part(words.part);
    if (!words.lengths.empty() || plan == nullptr || part == nullptr)
        return words;
    const auto lengths = lengthsOfBuild(shop, *plan, *part);
    if (!lengths)
        return tl::unexpected(lengths.error());
    words.lengths = lengthsTyped(*lengths);
    return words;
}

Pen::MadeBy madeAtBench(const BenchFilled &filled)
{
    return [filled](const ShopFile &, const Workshop &shop, const By &by) -> Result<ToWrite> {
        auto action = actionAtBench(filled, shop, by);
        if (!action)
            return tl::unexpected(action.error());
        return ToWrite(std::move(*action));
    };
}

QString saidAtBench(const BenchFilled &filled, const Action &action)
{
    const QString number = said(filled.subject.entry->number);
    if (filled.deed == BenchDeed::Cut)
        return BenchWords::tr("Cut of %1: %2, to %3.")
            .arg(number, saidCuts(filled, action), said(action.movements.front().to));
    if (filled.deed == BenchDeed::MakeUp) {
        const Movement &made = action.movements.back();
        return BenchWords::tr("%1 is made up of %2, and lies at %3.")
            .arg(said(made.part), number, said(made.to));
    }
    QStringList pieces;
    for (const Movement &one : action.movements) {
        if (one.part != filled.subject.entry->number)
            pieces.append(said(one.part));
    }
    return BenchWords::tr("A box of %1 is opened; out of it came %2.")
        .arg(number, pieces.join(QStringLiteral(", ")));
}

} // namespace flarestock
