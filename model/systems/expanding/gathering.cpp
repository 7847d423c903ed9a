// SPDX-License-Identifier: MIT

#include "model/systems/expanding/gathering.h"

#include "model/exact/case_fold.h"
#include "model/parts/fluid_allowed.h"
#include "model/systems/expanding/ranking.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace flarestock {

namespace {

/// Why a part is wanted, for which station and, where it lies in one, in which run.
struct Reason {
    std::string why;
    std::string station;
    std::string run = {};
};

class Gathering {
public:
    Gathering(const ExpandRequest &request, Expansion &into)
        : m_request(request), m_into(into), m_allotment(*request.catalogue, request.shelf)
    {
        for (const PlacedStation &placed : into.stations)
            m_titles.emplace(placed.id, &placed);
    }

    void station(const PlacedStation &placed)
    {
        if (!placed.part)
            return;
        add(*placed.part, 1, {placed.station->title, placed.id});
        fitting(*placed.part, 1, {placed.station->title, placed.id});
        if (placed.station->spareElements > 0)
            spares(placed);
    }

    void joint(const PlacedJoint &placed)
    {
        if (!placed.way)
            return;
        const Reason reason{placed.at, placed.station, placed.run};
        for (const Piece &piece : placed.way->pieces) {
            add(*piece.part, 1, reason);
            fitting(*piece.part, 1, reason);
        }
        for (const WayAid &aid : placed.way->aids)
            if (aid.part)
                add(*aid.part, countOf(aid),
                    {aid.need.text() + ", " + placed.at, placed.station, placed.run});
    }

    void line(const PlacedRun &placed)
    {
        if (!placed.line)
            return;
        const std::string way = titleOf(placed.from) + " to " + titleOf(placed.to);
        Line &line = add(*placed.line, placed.length.amount,
                         {way + ", " + placed.length.spoken(), placed.from, placed.id});
        line.bill.cuts.push_back(placed.length);
        if (placed.run->clampsEach > 0)
            clamps(placed, way);
    }

    void extra(const FlatExtra &flat)
    {
        const auto number = flat.extra->part.with(flat.scope->answers);
        if (!number || trimmed(*number).empty())
            return;
        const Part *part = m_request.catalogue->find(trimmed(*number));
        if (!part) {
            m_into.notes.push_back(*number + ", which the template takes as well (" +
                                   flat.extra->why + "), is not in the catalogue.");
            return;
        }
        add(*part, flat.extra->count, {flat.extra->why, ""});
    }

    /// The lines of all copies, checked.
    Result<std::vector<BillLine>> bill()
    {
        std::vector<BillLine> lines;
        for (Line &line : m_lines) {
            BillLine &made = line.bill;
            if (made.need.amount.sign() <= 0)
                continue;
            if (made.consumed)
                multiply(made);
            if (const auto whole = made.need.smallest(); !whole)
                return problem(made.part->number,
                               "the build would take " + made.need.text() + ": " +
                                   whole.error().wrong,
                               "Correct the template's lengths and counts.");
            std::sort(made.cuts.begin(), made.cuts.end(),
                      [](const Quantity &a, const Quantity &b) { return b.amount < a.amount; });
            lines.push_back(std::move(made));
        }
        return lines;
    }

private:
    struct Line {
        BillLine bill;
        std::unordered_set<std::string> said; ///< Reasons and, behind a slash, stations.
    };

    std::string titleOf(const std::string &station) const
    {
        return m_titles.at(station)->station->title;
    }

    void multiply(BillLine &line) const
    {
        line.need.amount = line.need.amount * Decimal(m_request.copies);
        const std::vector<Quantity> cuts = line.cuts;
        for (int copy = 1; copy < m_request.copies; ++copy)
            line.cuts.insert(line.cuts.end(), cuts.begin(), cuts.end());
    }

    Line &add(const Part &part, const Decimal &count, const Reason &reason)
    {
        const auto [found, isNew] = m_byPart.try_emplace(&part, m_lines.size());
        if (isNew) {
            m_lines.emplace_back();
            m_lines.back().bill.part = &part;
            m_lines.back().bill.need = {0, part.unit};
            m_lines.back().bill.consumed = part.consumed;
        }
        Line &line = m_lines[found->second];
        if (!part.consumed || isUsedByMeasure(part.kind))
            line.bill.need.amount = std::max(line.bill.need.amount, count);
        else
            line.bill.need.amount += count;
        if (!reason.why.empty() && line.said.insert(reason.why).second)
            line.bill.why.push_back(reason.why);
        if (!reason.station.empty() && line.said.insert("/" + reason.station).second)
            line.bill.stations.push_back(reason.station);
        line.bill.use({reason.station, reason.run, count});
        return line;
    }

    static Decimal countIn(const std::vector<PartCount> &list, std::string_view number)
    {
        Decimal count;
        for (const PartCount &one : list)
            if (sameFolded(one.part, number))
                count += one.count;
        return count;
    }

    /// What fitting so many more of a part takes that their boxes do not hold.
    void fitting(const Part &part, const Decimal &count, const Reason &reason)
    {
        if (part.fitting.empty())
            return;
        const Decimal before = m_fitted[&part];
        const Decimal after = m_fitted[&part] = before + count;
        for (const PartCount &used : part.fitting) {
            const Part *other = m_request.catalogue->find(used.part);
            if (!other)
                continue;
            const Decimal inBox = countIn(part.box, used.part);
            const Decimal missing =
                inBox.isZero() ? Decimal() : newlyMissing({part, *other, inBox}, before, after);
            const Decimal wanted = std::max(used.count - inBox, Decimal()) * count + missing;
            const std::string why = missing.sign() > 0 ? "missing from the box of " : "fitting ";
            if (wanted.sign() > 0)
                add(*other, wanted,
                    {why + part.number + ", " + reason.why, reason.station, reason.run});
        }
    }

    /// One part that lies in the box of another, so many of it.
    struct Boxed {
        const Part &part;
        const Part &inside;
        Decimal count;
    };

    /// How many were found missing from the boxes of those between `before` and `after`. Whole
    /// boxes are used first; which of the others lacks what is not known, so that the worst counts.
    Decimal newlyMissing(const Boxed &boxed, const Decimal &before, const Decimal &after)
    {
        const FreeStock *stock = m_allotment.stock(boxed.part);
        if (!stock)
            return {};
        const Decimal missing(std::count_if(
            stock->missing.begin(), stock->missing.end(),
            [&](const std::string &one) { return sameFolded(one, boxed.inside.number); }));
        const Decimal &free = stock->free.amount;
        const Decimal whole = std::max(free - missing, Decimal());
        const auto lacking = [&](const Decimal &used) {
            const Decimal boxes = std::max(std::min(used, free) - whole, Decimal());
            return std::min(boxes * boxed.count, missing);
        };
        return lacking(after) - lacking(before);
    }

    void spares(const PlacedStation &placed)
    {
        const auto *filter = placed.part->as<FilterFacts>();
        const Part *element = filter ? m_request.catalogue->find(filter->element) : nullptr;
        if (element)
            add(*element, placed.station->spareElements,
                {"spare element, " + placed.station->title, placed.id});
        else
            m_into.notes.push_back("No spare element for " + placed.id + ": " +
                                   placed.part->number + " names none.");
    }

    /// One clamp in so many millimetres of a line and one for the rest: of those that say `line`
    /// and the line's size.
    void clamps(const PlacedRun &placed, const std::string &way)
    {
        const auto *tubing = placed.line->as<TubingFacts>();
        const std::string size = tubing ? tubing->tubeSize : "-" + std::to_string(placed.dash);
        std::vector<Ranked> ranked;
        for (const Part *clamp : m_request.catalogue->ofKind(Kind::Clamp))
            if (clamp->says("line") && clamp->says(size)) {
                const bool here = m_allotment.left(*clamp) >= Decimal(1);
                ranked.push_back({clamp, here, m_allotment.cost(*clamp, 1, here)});
            }
        if (ranked.empty()) {
            m_into.notes.push_back("No clamp for the line of " + placed.id +
                                   ": the catalogue has "
                                   "none of size " +
                                   size + ".");
            return;
        }
        rank(ranked, m_request.preference);
        const auto length = placed.length.in(Unit::Millimetre);
        const Decimal count =
            length->over(Rational(Decimal(placed.run->clampsEach))).toDecimal(0, Rounding::Ceiling);
        const Reason reason{"holds " + way + ", one in " + std::to_string(placed.run->clampsEach) +
                                " mm",
                            placed.from, placed.id};
        add(*ranked.front().part, count, reason);
        fitting(*ranked.front().part, count, reason);
    }

    const ExpandRequest &m_request;
    Expansion &m_into;
    Allotment m_allotment; ///< Untouched: the shelf as it was.
    std::vector<Line> m_lines;
    std::unordered_map<const Part *, std::size_t> m_byPart;
    std::unordered_map<const Part *, Decimal> m_fitted;
    std::unordered_map<std::string_view, const PlacedStation *> m_titles;
};

} // namespace

Result<void> gatherBill(const ExpandRequest &request, const FlatSystem &system,
                        Expansion &expansion)
{
    Gathering gathering(request, expansion);
    // Runs stand by the station that they leave, joints in the order of the runs, and the plugs of
    // a station before its runs.
    std::size_t run = 0;
    std::size_t joint = 0;
    const auto jointsWhile = [&](auto belongs) {
        while (joint < expansion.joints.size() && belongs(expansion.joints[joint]))
            gathering.joint(expansion.joints[joint++]);
    };
    for (std::size_t i = 0; i < expansion.stations.size(); ++i) {
        gathering.station(expansion.stations[i]);
        jointsWhile([&](const PlacedJoint &one) {
            return one.run.empty() && one.station == expansion.stations[i].id;
        });
        for (; run < system.runs.size() && system.runs[run].from == i; ++run) {
            const PlacedRun &placed = expansion.runs[run];
            jointsWhile([&](const PlacedJoint &one) { return one.id == placed.joints.front(); });
            gathering.line(placed);
            jointsWhile([&](const PlacedJoint &one) { return one.run == placed.id; });
        }
    }
    for (const FlatExtra &extra : system.extras)
        gathering.extra(extra);
    auto lines = gathering.bill();
    if (!lines)
        return tl::unexpected(lines.error());
    expansion.lines = std::move(*lines);
    return {};
}

} // namespace flarestock
