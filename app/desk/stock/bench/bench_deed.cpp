// SPDX-License-Identifier: MIT

#include "app/desk/stock/bench/bench_deed.h"

#include "app/desk/stock/bench/bench_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/desk/words/typed_figures.h"
#include "app/workshop/worked_build.h"

#include <array>

namespace flarestock {

namespace {

struct NamedBenchDeed {
    BenchDeed deed;
    const char *name;
};
constexpr std::array<NamedBenchDeed, 3> BenchNames{
    {{BenchDeed::Cut, "cut"}, {BenchDeed::MakeUp, "makeUp"}, {BenchDeed::Open, "open"}}};

/// Whether the part is one for that.
bool isFor(BenchDeed deed, const Part &part)
{
    switch (deed) {
    case BenchDeed::Cut:
        return isLength(part.unit);
    case BenchDeed::MakeUp:
        return part.as<HoseFacts>() != nullptr;
    case BenchDeed::Open:
        break;
    }
    return !part.box.empty();
}

QString labelOf(BenchDeed deed)
{
    switch (deed) {
    case BenchDeed::Cut:
        return BenchWords::tr("Cut");
    case BenchDeed::MakeUp:
        return BenchWords::tr("Make up");
    case BenchDeed::Open:
        break;
    }
    return BenchWords::tr("Open box");
}

QString purposeOf(BenchDeed deed)
{
    switch (deed) {
    case BenchDeed::Cut:
        return BenchWords::tr(
            "Lengths off it, to a place or for a build; which piece gives which.");
    case BenchDeed::MakeUp:
        return BenchWords::tr("A length and two ends become one piece with a tag of its own.");
    case BenchDeed::Open:
        break;
    }
    return BenchWords::tr("What lies in one box goes to stock, its value shared out.");
}

/// Why it cannot be done; empty where it can.
QString barrierTo(BenchDeed deed, const DeedSubject &subject)
{
    if (deed == BenchDeed::Open)
        return subject.place() != nullptr && subject.there() > 0
                   ? QString()
                   : BenchWords::tr("No box is chosen; choose one where it lies.");
    return subject.entry->here + subject.entry->trailer > 0
               ? QString()
               : BenchWords::tr("None of it is in stock.");
}

} // namespace

std::vector<Row> benchRows(const DeedSubject &subject)
{
    std::vector<Row> rows;
    if (subject.entry == nullptr || subject.entry->part == nullptr)
        return rows;
    for (const auto &[deed, name] : BenchNames) {
        if (!isFor(deed, *subject.entry->part))
            continue;
        const QString why = barrierTo(deed, subject);
        const QString detail = why.isEmpty() ? purposeOf(deed) : why;
        rows.push_back({QString::fromLatin1(name),
                        {labelOf(deed), why.isEmpty(), detail,
                         QString(labelOf(deed) + QStringLiteral(". ") + detail)}});
    }
    return rows;
}

std::optional<BenchDeed> benchDeedNamed(const QString &name)
{
    for (const auto &[deed, known] : BenchNames) {
        if (name == QLatin1String(known))
            return deed;
    }
    return {};
}

std::string BenchFilled::typed(const char *field) const
{
    return wordsIn(values, field);
}

std::string BenchFilled::figures(const char *field) const
{
    return figuresTyped(values, field);
}

std::string BenchFilled::chosen(const char *field) const
{
    const auto ids = benchChoices(QString::fromLatin1(field), subject);
    const int at = values.value(QString::fromLatin1(field)).toInt();
    return at < 0 || at >= static_cast<int>(ids.size()) ? std::string()
                                                        : ids[static_cast<std::size_t>(at)];
}

CuttingWords cuttingWords(const BenchFilled &filled)
{
    CuttingWords words;
    words.part = filled.subject.entry->number;
    words.lengths = lengthsTyped(filled.figures("lengths"));
    words.build = filled.chosen("build");
    words.to = filled.typed("to");
    words.kerf = filled.figures("kerf");
    words.leastUseful = filled.figures("least");
    words.plan = filled.chosen("plan");
    if (words.plan.rfind("lot|", 0) == 0) {
        words.lot = words.plan.substr(4);
        words.plan = text(CutAim::LeastWaste);
    }
    return words;
}

MakingWords makingWords(const BenchFilled &filled)
{
    MakingWords words;
    words.hose = filled.subject.entry->number;
    words.cut = filled.figures("cut");
    words.startEnd = filled.chosen("start");
    words.farEnd = filled.chosen("far");
    words.tag = filled.typed("tag");
    words.to = filled.typed("to");
    words.lot = filled.chosen("lot");
    words.clocking = filled.figures("clocking");
    words.pressure = filled.figures("pressure");
    words.medium = filled.typed("medium");
    words.result = filled.chosen("result");
    words.testedBy = filled.typed("testedBy");
    words.useBy = dayTyped(filled.values, "useBy");
    return words;
}

OpeningWords openingWords(const BenchFilled &filled)
{
    const BalanceKey &box = *filled.subject.pieces;
    OpeningWords words;
    words.part = box.part;
    words.from = box.place;
    words.to = filled.typed("to");
    words.lot = box.lot;
    words.condition = text(box.condition);
    if (const std::string only = filled.chosen("only"); !only.empty())
        words.only = {only};
    words.nothingLeft = filled.values.value(QStringLiteral("left")).toInt() == 1;
    const QString costs = QString::fromStdString(filled.figures("costs"));
    for (const QString &cost : costs.split(u';', Qt::SkipEmptyParts))
        words.costs.push_back(cost.trimmed().toStdString());
    return words;
}

std::vector<std::string> lengthsTyped(const std::string &typed)
{
    std::vector<std::string> lengths;
    constexpr int CountMost = 200; // More cuts than anybody makes in one go.
    for (const QString &one : QString::fromStdString(typed).split(u'+', Qt::SkipEmptyParts)) {
        const QString length = one.trimmed();
        const qsizetype times = std::max(length.indexOf(u'x'), length.indexOf(u'×'));
        bool isCount = false;
        const int count = times > 0 ? length.left(times).trimmed().toInt(&isCount) : 1;
        const bool several = isCount && count >= 1 && count <= CountMost;
        const QString each = several ? length.mid(times + 1).trimmed() : length;
        lengths.insert(lengths.end(), static_cast<std::size_t>(several ? count : 1),
                       each.toStdString());
    }
    return lengths;
}

Result<std::string> lengthsOfBuild(const Workshop &workshop, const BuildPlan &plan,
                                   const Part &part)
{
    const Shelf shelf = workshop.shelfFor(plan); // It has to outlive the build.
    const auto worked = workBuild(workshop, plan, shelf);
    if (!worked)
        return tl::unexpected(worked.error());
    std::string typed;
    for (const BillLine &line : worked->expansion.lines) {
        if (line.part == nullptr || line.part->number != part.number)
            continue;
        std::int64_t wanted =
            line.need.smallest().value_or(0) - workshop.ledger.claim({part.number, plan.id}).issued;
        for (const Quantity &cut : line.cuts) {
            const std::int64_t length = cut.smallest().value_or(0);
            if (length <= 0 || length > wanted)
                continue; // It is in the car already.
            wanted -= length;
            typed += (typed.empty() ? "" : " + ") + spoken(length, part);
        }
    }
    return typed;
}

} // namespace flarestock
