// SPDX-License-Identifier: MIT

#include "app/desk/language/sentences.h"
#include "app/desk/opened/detail.h"
#include "app/desk/opened/detail_words.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

/// Of pieces that are counted, so that the units do not matter.
Whereabouts counted(const WorkedOut &worked, const Part &part, int wanted)
{
    return whereabouts(*worked.shelf, part, Decimal(wanted), Units::Metric);
}

/// Rows of a list whose keys only need to differ from one another.
class PieceList {
public:
    void add(const QString &form, const QString &title, const QString &detail,
             const Whereabouts &at = {})
    {
        append(form,
               {form, title, detail, at.text, at.isShort, -1, says({title, detail, at.text})});
    }
    void addLink(const Link &link)
    {
        append(QStringLiteral("link"),
               {QStringLiteral("link"), saidVerdict(link.mating.verdict), inWords(link.mating.why),
                QString(), false, static_cast<int>(standing(link)),
                saidVerdict(link.mating.verdict)});
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    [[nodiscard]] static QString says(QStringList words)
    {
        words.removeAll(QString());
        return words.join(QStringLiteral(", "));
    }
    void append(const QString &form, QVariantList cells)
    {
        m_rows.push_back({QString(form + QString::number(m_rows.size())), std::move(cells)});
    }
    std::vector<Row> m_rows;
};

QString portsOf(const Piece &piece)
{
    const PartPort *in = piece.part->port(piece.in);
    const PartPort *out = piece.part->port(piece.out);
    if (in == nullptr || out == nullptr)
        return said(piece.part->description);
    return QString(said(in->port.text()) + QStringLiteral("  ·  ") + said(out->port.text()));
}

void addAids(PieceList &pieces, const WorkedOut &worked, const Way &way)
{
    for (const WayAid &aid : way.aids) {
        if (aid.part == nullptr) {
            pieces.add(QStringLiteral("aid"), inWords(aid.need.text()),
                       DetailWords::tr("not in the catalogue"), {DetailWords::tr("none"), true});
            continue;
        }
        pieces.add(QStringLiteral("aid"), said(aid.part->number), inWords(aid.need.text()),
                   counted(worked, *aid.part, aid.need.count));
    }
}

void addFarEnd(PieceList &pieces, const WorkedOut &worked, const PlacedJoint &joint, Units units)
{
    const PlacedRun *run = worked.expansion->run(joint.run);
    if (run == nullptr)
        return; // A closed port: the plug is the last piece.
    const bool isCut = joint.to.family == Family::Hose || joint.to.family == Family::Tube;
    if (run->line != nullptr && isCut) {
        pieces.add(QStringLiteral("line"), said(run->line->number),
                   QString(said(run->line->description) + QStringLiteral("  ·  ") +
                           saidAmount(run->length, units)),
                   whereabouts(*worked.shelf, *run->line, run->length.amount, units));
        return;
    }
    pieces.add(QStringLiteral("port"), saidPort(joint.to),
               run->line == nullptr && isCut
                   ? DetailWords::tr("no line in the catalogue: %1").arg(said(run->wanted))
                   : DetailWords::tr("the other end"));
}

std::vector<Row> explode(const WorkedOut &worked, const PlacedJoint &joint, Units units)
{
    PieceList pieces;
    pieces.add(QStringLiteral("port"), saidPort(joint.from), said(joint.at));
    if (!joint.way) {
        pieces.add(QStringLiteral("gap"), DetailWords::tr("nothing in the catalogue joins these"),
                   DetailWords::tr("buy or make a piece with these two ends"),
                   {DetailWords::tr("none"), true});
    } else {
        const Way &way = *joint.way;
        for (std::size_t at = 0; at < way.links.size(); ++at) {
            pieces.addLink(way.links[at]);
            if (at < way.pieces.size())
                pieces.add(QStringLiteral("piece"), said(way.pieces[at].part->number),
                           portsOf(way.pieces[at]), counted(worked, *way.pieces[at].part, 1));
        }
        addAids(pieces, worked, way);
    }
    addFarEnd(pieces, worked, joint, units);
    return pieces.take();
}

const Link *gravest(const Way &way)
{
    const auto found =
        std::min_element(way.links.begin(), way.links.end(), [](const Link &a, const Link &b) {
            return a.mating.verdict < b.mating.verdict;
        });
    return found == way.links.end() ? nullptr : &*found;
}

/// What each way is best at, over all of them; empty where it is best at nothing.
QString badgeOf(const Way &way, const std::vector<const Way *> &all)
{
    const auto best = [&](auto &&less) {
        return std::none_of(all.begin(), all.end(),
                            [&](const Way *other) { return less(*other, way); });
    };
    QStringList badges;
    if (way.toBuy == 0)
        badges.append(DetailWords::tr("from the shelf"));
    if (best([](const Way &a, const Way &b) { return a.pieces.size() < b.pieces.size(); }))
        badges.append(DetailWords::tr("fewest pieces"));
    if (way.priced && best([](const Way &a, const Way &b) { return a.priced && a.cost < b.cost; }))
        badges.append(DetailWords::tr("least money"));
    return badges.join(QStringLiteral(", "));
}

int inWay(const Way &way, const Part &part)
{
    int count = 0;
    for (const Piece &piece : way.pieces)
        count += piece.part == &part ? 1 : 0;
    for (const WayAid &aid : way.aids)
        count += aid.part == &part ? aid.need.count : 0;
    return count;
}

/// How many more of a part the build would be short of with this way than it is now.
int moreShort(const WorkedOut &worked, const PricedLine &line, const std::array<int, 2> &nowThen)
{
    const Part &part = *line.line->part;
    const auto stock = worked.shelf->find(part.number);
    const Decimal free = stock == worked.shelf->end() ? Decimal() : stock->second.usable();
    const Decimal need = line.line->need.amount + Decimal(nowThen[1] - nowThen[0]);
    const Decimal more = std::max(need - free, Decimal()) - line.shortBy;
    return static_cast<int>(
        std::max<std::int64_t>(0, more.rescaled(0, Rounding::Ceiling).toInt64().value_or(0)));
}

/// What of a way other than that in use would be short because the rest of the build takes it.
QStringList takenElsewhere(const WorkedOut &worked, const Way &way, const Way *inUse)
{
    QStringList numbers;
    for (const PricedLine &line : worked.bill->lines) {
        const Part &part = *line.line->part;
        const int now = inUse ? inWay(*inUse, part) : 0;
        const int then = inWay(way, part);
        if (line.line->consumed && then > now && moreShort(worked, line, {now, then}) > 0)
            numbers.append(said(part.number));
    }
    return numbers;
}

/// "nothing to buy", "leaves 2 short: AD-810, HE-10"
QString missingOf(const WorkedOut &worked, const Way &way, const Way *inUse)
{
    if (way.toBuy == 0) {
        const QStringList elsewhere = takenElsewhere(worked, way, inUse);
        return elsewhere.isEmpty() ? DetailWords::tr("nothing to buy")
                                   : DetailWords::tr("leaves short elsewhere: %1")
                                         .arg(elsewhere.join(QStringLiteral(", ")));
    }
    QStringList numbers;
    for (const Piece &piece : way.pieces) {
        if (counted(worked, *piece.part, 1).isShort)
            numbers.append(said(piece.part->number));
    }
    for (const WayAid &aid : way.aids) {
        if (aid.part == nullptr || counted(worked, *aid.part, aid.need.count).isShort)
            numbers.append(said(aid.part != nullptr ? aid.part->number : aid.need.text()));
    }
    // What earlier joints have taken is still on the shelf; the number knows it, the list does not.
    if (numbers.isEmpty())
        return DetailWords::tr("leaves %n short", nullptr, way.toBuy);
    return DetailWords::tr("leaves %n short: %1", nullptr, way.toBuy)
        .arg(numbers.join(QStringLiteral(", ")));
}

QString titleOf(const Way &way)
{
    return way.pieces.empty() ? DetailWords::tr("straight together") : said(way.key());
}

QString moneyOf(const WorkedOut &worked, const Way &way)
{
    const Money cost{way.cost, worked.bill->total.currency};
    return way.priced ? saidMoney(cost.toMinorDigits(Rounding::HalfEven))
                      : DetailWords::tr("no price");
}

Row wayRow(const WorkedOut &worked, const Way &way, const std::vector<const Way *> &all,
           const Way *inUse)
{
    const QString key = said(way.key());
    QString detail = missingOf(worked, way, inUse);
    if (!fits(way.verdict()))
        detail = QString(saidVerdict(way.verdict()) + QStringLiteral("; ") + detail);
    const QString badge = badgeOf(way, all);
    return {key,
            {titleOf(way),
             badge.isEmpty() ? detail : QString(badge + QStringLiteral("; ") + detail),
             moneyOf(worked, way), way.toBuy, all.front() == &way, key}};
}

std::vector<Row> wayRows(const WorkedOut &worked, const PlacedJoint &joint)
{
    std::vector<const Way *> all;
    if (joint.way)
        all.push_back(&*joint.way);
    for (const Way &way : joint.others) {
        const auto sameKey = [&way](const Way *other) { return other->key() == way.key(); };
        if (std::none_of(all.begin(), all.end(), sameKey))
            all.push_back(&way);
    }
    std::vector<Row> rows;
    rows.reserve(all.size());
    for (const Way *way : all)
        rows.push_back(wayRow(worked, *way, all, joint.way ? &*joint.way : nullptr));
    if (!joint.way) // Nothing is in use: the mark for it must not stand at the first of the others.
        for (Row &row : rows)
            row.cells[4] = false;
    return rows;
}

} // namespace

Detail jointDetail(const WorkedOut &worked, const PlacedJoint &joint, Units units)
{
    Detail detail;
    detail.title = said(joint.at);
    detail.subtitle = QString(saidPort(joint.from) + QStringLiteral(" → ") + saidPort(joint.to));
    detail.mark = standing(joint);
    detail.toBuy = lacksPieces(joint);
    detail.standing = saidStanding(joint);
    if (joint.way && joint.way->toBuy > 0)
        detail.standing += DetailWords::tr("; %n to buy", nullptr, joint.way->toBuy);
    const Link *link = joint.way ? gravest(*joint.way) : nullptr;
    if (link != nullptr) {
        detail.why = inWords(link->mating.why);
        detail.source = inWords(link->mating.source);
    }
    detail.picked = joint.picked;
    detail.slot = said(joint.id);
    detail.pieces = explode(worked, joint, units);
    detail.ways = wayRows(worked, joint);
    detail.waysTitle = DetailWords::tr("ways to make it");
    if (joint.outdone && !joint.others.empty()) {
        const Way &better = joint.others.front();
        detail.betterPick = said(better.key());
        detail.better = DetailWords::tr("Your pick stays. %1 would now be taken: %2, %3.")
                            .arg(titleOf(better), moneyOf(worked, better),
                                 missingOf(worked, better, joint.way ? &*joint.way : nullptr));
    }
    return detail;
}

} // namespace flarestock
