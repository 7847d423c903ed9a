// SPDX-License-Identifier: MIT

#include "app/desk/abreast/abreast_rows.h"

#include "app/desk/abreast/abreast_words.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

constexpr int ContestedCell = 5;
constexpr int ChangedCell = 6;
constexpr int SaysCell = 8;

/// How a build stands: its lines that are short, those that nobody can bring any more, those that
/// wait for an order.
struct LineCounts {
    int lacks = 0;
    int late = 0;
    int waits = 0;
};

LineCounts countsOf(const AbreastBook &book, const BuildPlan &plan)
{
    LineCounts all;
    for (const NeedLine &line : book.needs.lines) {
        if (line.whom != plan.id || !isOfBuild(line))
            continue;
        all.lacks += line.shortBy.sign() > 0 ? 1 : 0;
        all.late += line.shortBy.sign() > 0 && line.isTooLate() ? 1 : 0;
        all.waits += line.shortBy.sign() <= 0 && !line.coming.empty() ? 1 : 0;
    }
    return all;
}

std::pair<QString, Standing::Mark> saidCounts(const LineCounts &all)
{
    if (all.late > 0)
        return {AbreastWords::tr("%1 short, %2 too late").arg(all.lacks).arg(all.late),
                Standing::Trap};
    if (all.lacks > 0)
        return {AbreastWords::tr("%1 short").arg(all.lacks), Standing::Short};
    if (all.waits > 0)
        return {AbreastWords::tr("%1 on the way, all in time").arg(all.waits), Standing::Needs};
    return {AbreastWords::tr("all here"), Standing::Made};
}

Row headRow(const Abreast &abreast, const BuildPlan &plan)
{
    const AbreastBook &book = abreast.now;
    const QString title = saidWhom(plan.id, *book.workshop);
    const QString car =
        plan.car.empty() ? AbreastWords::tr("no car") : saidWhom(plan.car, *book.workshop);
    const QString day = saidBuildDay(book, plan.by);
    const BuildPlan *stands = abreast.before.build(plan.id);
    const bool isMoved = stands != nullptr && stands->by != plan.by;
    const QString was =
        isMoved ? AbreastWords::tr("was %1").arg(saidBuildDay(book, stands->by)) : QString();
    const auto [word, mark] = saidCounts(countsOf(book, plan));
    QStringList says{title, car, day, was, word};
    says.removeAll(QString());
    return {said(plan.id), {title, car, day, was, word, mark, says.join(QStringLiteral(", "))}};
}

double amountOf(const Decimal &amount)
{
    return QString::fromStdString(amount.text()).toDouble(); // For a drawing only.
}

/// One part and one build.
class AbreastCell {
public:
    AbreastCell(const Abreast &abreast, const Part &part, const BuildPlan &plan)
        : m_abreast(abreast), m_part(part), m_plan(plan),
          m_now(abreast.now.want(plan.id, part.number)),
          m_before(abreast.before.want(plan.id, part.number))
    {
    }

    [[nodiscard]] bool isWanted() const { return m_now != nullptr; }
    [[nodiscard]] bool isShort() const
    {
        return (m_now && m_now->shortBy.sign() > 0) || (m_before && m_before->shortBy.sign() > 0);
    }
    [[nodiscard]] QVariantMap map(bool isChanged) const
    {
        QVariantMap cell;
        QStringList says;
        if (m_now) {
            cell = drawn();
            says = {AbreastWords::tr("needs %1").arg(cell.value(QStringLiteral("need")).toString()),
                    saidGotAndOrdering(m_abreast.now, *m_now, m_abreast.units)};
        } else {
            says = {AbreastWords::tr("wants none")};
        }
        const QString before = isChanged ? saidBefore() : QString();
        if (isChanged)
            says.append(before);
        cell.insert(QStringLiteral("changed"), isChanged);
        cell.insert(QStringLiteral("before"), before);
        cell.insert(QStringLiteral("says"),
                    AbreastWords::tr("%1, %2 %3: %4")
                        .arg(saidWhom(m_plan.id, *m_abreast.now.workshop), said(m_part.number),
                             said(m_part.description), says.join(QStringLiteral(", "))));
        return cell;
    }

private:
    /// Only what is otherwise now.
    [[nodiscard]] QString saidBefore() const
    {
        if (!m_before)
            return AbreastWords::tr("before: wanted none");
        const QString got = saidGot(m_abreast.before, *m_before, m_abreast.units);
        const bool isSame = m_now && m_now->need == m_before->need &&
                            got == saidGot(m_abreast.now, *m_now, m_abreast.units);
        return AbreastWords::tr("before: %1")
            .arg(isSame ? saidOrdering(m_abreast.before, *m_before) : got);
    }
    [[nodiscard]] QVariantMap drawn() const
    {
        Decimal coming;
        for (const NeedLine::Coming &one : m_now->coming)
            coming += one.quantity;
        return {{QStringLiteral("need"), saidMuch(m_now->need, m_part, m_abreast.units)},
                {QStringLiteral("got"), saidGot(m_abreast.now, *m_now, m_abreast.units)},
                {QStringLiteral("more"), saidOrdering(m_abreast.now, *m_now)},
                {QStringLiteral("reserved"), amountOf(m_now->own)},
                {QStringLiteral("here"), amountOf(m_now->free)},
                {QStringLiteral("coming"), amountOf(coming)},
                {QStringLiteral("lacks"), amountOf(m_now->shortBy)},
                {QStringLiteral("pieces"), m_part.unit == Unit::Each},
                {QStringLiteral("late"), m_now->isTooLate()}};
    }

    const Abreast &m_abreast;
    const Part &m_part;
    const BuildPlan &m_plan;
    const NeedLine *m_now;
    const NeedLine *m_before;
};

QString saidStock(const Abreast &abreast, const Part &part)
{
    const Shelf &shelf = abreast.now.workshop->shelf;
    const auto found = shelf.find(part.number);
    if (found == shelf.end() || found->second.onHand.amount.sign() <= 0)
        return found != shelf.end() && found->second.level ? AbreastWords::tr("not counted")
                                                           : AbreastWords::tr("none here");
    const FreeStock &stock = found->second;
    QStringList places;
    for (const FreeStock::AtPlace &at : stock.places)
        places.append(AbreastWords::tr("%1 in %2")
                          .arg(saidMuch(at.free.amount, part, abreast.units), said(at.place)));
    const QString here = AbreastWords::tr("%1 here, %2 free")
                             .arg(saidMuch(stock.onHand.amount, part, abreast.units),
                                  saidMuch(stock.free.amount, part, abreast.units));
    return places.isEmpty() ? here : AbreastWords::tr("%1: %2").arg(here, saidFew(places, 2));
}

QString saidOnOrder(const Abreast &abreast, const Part &part)
{
    QStringList all;
    for (const OnOrder &one : abreast.now.coming)
        if (one.part == part.number)
            all.append(one.day.empty() ? AbreastWords::tr("%1 on order, no day said")
                                             .arg(saidMuch(one.quantity, part, abreast.units))
                                       : AbreastWords::tr("%1 due %2")
                                             .arg(saidMuch(one.quantity, part, abreast.units),
                                                  saidDayOf(one.day, abreast.now.today)));
    return all.join(QStringLiteral(", "));
}

using ChangedCells = std::set<std::pair<std::string, std::string>>; // Build and part.

ChangedCells changedCells(const Abreast &abreast)
{
    ChangedCells cells;
    if (&abreast.now == &abreast.before)
        return cells;
    for (const ChangedNeed &one : changesBetween(abreast.before.needs, abreast.now.needs)) {
        const NeedLine &line = one.after ? *one.after : *one.before;
        if (isOfBuild(line))
            cells.emplace(line.whom, line.part->number);
    }
    return cells;
}

Row lineRow(const Abreast &abreast, const Part &part, const ChangedCells &changed)
{
    QVariantList cells;
    int wanted = 0;
    bool isShort = false;
    bool isChanged = false;
    for (const BuildPlan &plan : abreast.now.builds) {
        const AbreastCell cell(abreast, part, plan);
        const bool isCellChanged = changed.contains({plan.id, part.number});
        wanted += cell.isWanted() ? 1 : 0;
        isShort = isShort || cell.isShort();
        isChanged = isChanged || isCellChanged;
        cells.append(cell.map(isCellChanged));
    }
    const QString stock = saidStock(abreast, part);
    const QString coming = saidOnOrder(abreast, part);
    QStringList says{said(part.number), said(part.description), stock, coming};
    says.removeAll(QString());
    const QString group = isShort      ? AbreastWords::tr("not enough for all")
                          : wanted > 1 ? AbreastWords::tr("enough for all")
                                       : AbreastWords::tr("one build only, all here");
    return {said(part.number),
            {said(part.number), said(part.description), stock, coming, group, isShort || wanted > 1,
             isChanged, cells, says.join(QStringLiteral(", "))}};
}

/// The parts that builds want, as the days stand or as they are tried, in the order in which they
/// are wanted.
std::vector<const Part *> wantedParts(const Abreast &abreast)
{
    std::vector<const Part *> parts;
    std::set<std::string> known;
    for (const AbreastBook *book : {&abreast.before, &abreast.now})
        for (const NeedLine &line : book->needs.lines)
            if (isOfBuild(line) && known.insert(line.part->number).second)
                parts.push_back(line.part);
    return parts;
}

} // namespace

QStringList abreastHeadCells()
{
    return {QStringLiteral("title"), QStringLiteral("car"),  QStringLiteral("day"),
            QStringLiteral("was"),   QStringLiteral("word"), QStringLiteral("mark"),
            QStringLiteral("says")};
}

std::vector<Row> abreastHeads(const Abreast &abreast)
{
    std::vector<Row> rows;
    rows.reserve(abreast.now.builds.size());
    for (const BuildPlan &plan : abreast.now.builds)
        rows.push_back(headRow(abreast, plan));
    return rows;
}

QStringList abreastLineCells()
{
    return {QStringLiteral("part"),    QStringLiteral("what"),  QStringLiteral("stock"),
            QStringLiteral("coming"),  QStringLiteral("group"), QStringLiteral("contested"),
            QStringLiteral("changed"), QStringLiteral("cells"), QStringLiteral("says")};
}

std::vector<Row> abreastLines(const Abreast &abreast)
{
    const ChangedCells changed = changedCells(abreast);
    std::vector<Row> rows;
    for (const Part *part : wantedParts(abreast))
        rows.push_back(lineRow(abreast, *part, changed));
    const QString first = AbreastWords::tr("not enough for all");
    const QString second = AbreastWords::tr("enough for all");
    const auto rank = [&first, &second](const Row &row) {
        const QString group = row.cells.at(4).toString();
        return group == first ? 0 : group == second ? 1 : 2;
    };
    std::stable_sort(rows.begin(), rows.end(),
                     [&rank](const Row &a, const Row &b) { return rank(a) < rank(b); });
    return rows;
}

std::vector<Row> abreastShown(const std::vector<Row> &lines, AbreastShown shown,
                              const QString &typed)
{
    std::vector<Row> rows;
    for (const Row &line : lines) {
        const bool isShown =
            shown == AbreastShown::All ||
            line.cells.at(shown == AbreastShown::Contested ? ContestedCell : ChangedCell).toBool();
        if (isShown && hasWords(line.cells.at(SaysCell).toString(), typed))
            rows.push_back(line);
    }
    return rows;
}

} // namespace flarestock
