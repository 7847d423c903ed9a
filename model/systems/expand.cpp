// SPDX-License-Identifier: MIT

#include "model/systems/expand.h"

#include "model/exact/case_fold.h"
#include "model/systems/expanding/gathering.h"
#include "model/systems/expanding/joining.h"
#include "model/systems/expanding/station_choice.h"
#include "model/systems/expanding/template_size.h"
#include "model/systems/sizing/settled_pumps.h"
#include "model/systems/slots.h"
#include "model/systems/together/shared_ways.h"

#include <cassert>

namespace flarestock {

namespace {

constexpr int CopiesMax = 1000;

tl::unexpected<Problem> unknownTemplate(const ExpandRequest &request)
{
    std::string known;
    for (const auto &[id, form] : *request.book)
        known += (known.empty() ? "" : ", ") + id;
    return problem(request.templateId, "is no template of this shop",
                   known.empty() ? "The shop has none." : "Templates are: " + known + ".");
}

/// Whether each number of a pick is a part, and that of a run a line.
Result<void> pickAllowed(const ExpandRequest &request, const Template &form,
                         const std::string &slot, std::string_view pick)
{
    const SlotForm slotIs = slotForm(*request.book, form, slot);
    if (slotIs == SlotForm::Unknown)
        return problem(slot, "is no station, run or joint of template " + form.id,
                       "Pick for a station (prefilter), a run (supply) or a joint (supply.start).");
    if (trimmed(pick).empty() || sameFolded(trimmed(pick), "direct"))
        return {};
    while (!pick.empty()) {
        const auto plus = slotIs == SlotForm::Joint ? pick.find(" + ") : std::string_view::npos;
        const std::string number(trimmed(pick.substr(0, plus)));
        const Part *part = request.catalogue->find(number);
        if (!part)
            return problem(number, "picked for " + slot + ", is no part of the catalogue",
                           "Pick a part by its number.");
        const bool isLine = part->kind == Kind::Hose || part->kind == Kind::Tubing;
        if (slotIs == SlotForm::Run && !(isLine && isLength(part->unit)))
            return problem(number,
                           "picked for run " + slot + ", is a " + std::string(text(part->kind)),
                           "Pick hose or tubing that is counted by its length.");
        pick.remove_prefix(plus == std::string_view::npos ? pick.size() : plus + 3);
    }
    return {};
}

/// A system whose answers are worked out with the pumps that stand in it.
struct SizedSystem {
    FlatSystem system;
    SettledPumps pumps;
};

Result<SizedSystem> sizedSystem(const ExpandRequest &request, const Template &form)
{
    KnownParts known;
    known.catalogue = request.catalogue;
    auto system = flatten(*request.book, form, request.answers, known);
    if (!system)
        return tl::unexpected(system.error());
    auto pumps = settledPumps(request, *system);
    if (!pumps)
        return tl::unexpected(pumps.error());
    if (pumps->standing.empty())
        return SizedSystem{std::move(*system), std::move(*pumps)};
    known.pumps = &pumps->standing;
    system = flatten(*request.book, form, request.answers, known);
    if (!system)
        return tl::unexpected(system.error());
    return SizedSystem{std::move(*system), std::move(*pumps)};
}

class Expanding {
public:
    Expanding(const ExpandRequest &request, const SizedSystem &sized, Picks ways = {})
        : m_request(request), m_system(sized.system), m_pumps(sized.pumps), m_ways(std::move(ways)),
          m_allotment(*request.catalogue, request.shelf)
    {
    }

    Result<Expansion> done(Expansion made)
    {
        m_made = std::move(made);
        if (auto read = readLineWishes(); !read)
            return tl::unexpected(read.error());
        if (auto stand = placeStations(); !stand)
            return tl::unexpected(stand.error());
        if (auto joined = join(); !joined)
            return tl::unexpected(joined.error());
        if (auto gathered = gatherBill(m_request, m_system, m_made); !gathered)
            return tl::unexpected(gathered.error());
        return std::move(m_made);
    }

private:
    Result<void> readLineWishes()
    {
        m_wishes.reserve(m_system.runs.size());
        for (const FlatRun &run : m_system.runs) {
            auto wish = lineWishOf(run);
            if (!wish)
                return tl::unexpected(wish.error());
            m_wishes.push_back(std::move(*wish));
        }
        return {};
    }

    Result<void> placeStations()
    {
        std::vector<std::vector<PortWish>> ports(m_system.stations.size());
        for (std::size_t i = 0; i < m_system.runs.size(); ++i) {
            const FlatRun &run = m_system.runs[i];
            const int dash = m_wishes[i] ? m_wishes[i]->dash : 0;
            ports[run.from].push_back({run.run->from.port, dash});
            ports[run.to].push_back({run.run->to.port, dash});
        }
        m_made.stations.reserve(m_system.stations.size());
        for (std::size_t i = 0; i < m_system.stations.size(); ++i) {
            StationWish wish{&m_system.stations[i], std::move(ports[i]), nullptr, nullptr};
            if (const auto pump = m_pumps.programs.find(m_system.stations[i].id);
                pump != m_pumps.programs.end())
                wish.settled = pump->second;
            const auto pick = m_request.picks.find(m_system.stations[i].id);
            if (pick != m_request.picks.end())
                wish.pick = m_request.catalogue->find(trimmed(pick->second));
            auto placed = chooseStation(wish, m_request.preference, m_allotment, m_made.notes);
            if (!placed)
                return tl::unexpected(placed.error());
            placed->answers = m_system.stations[i].scope->answers;
            m_made.stations.push_back(std::move(*placed));
        }
        return {};
    }

    Result<void> join()
    {
        Joining joining({m_request, m_ways}, m_allotment, m_made);
        std::size_t next = 0;
        for (std::size_t i = 0; i < m_made.stations.size(); ++i) {
            const auto fluid = m_system.stations[i].scope->fluid;
            if (auto closed = joining.closePlugged(m_made.stations[i], fluid); !closed)
                return closed;
            for (; next < m_system.runs.size() && m_system.runs[next].from == i; ++next)
                if (auto made = joining.makeRun(m_system.runs[next], m_wishes[next]); !made)
                    return made;
        }
        return {};
    }

    const ExpandRequest &m_request;
    const FlatSystem &m_system;
    const SettledPumps &m_pumps;
    Picks m_ways; ///< Settled for all joints together.
    Allotment m_allotment;
    std::vector<std::optional<LineWish>> m_wishes; ///< As the runs.
    Expansion m_made;
};

Expansion begunExpansion(const Template &form, const FlatSystem &system)
{
    Expansion made;
    made.templateId = form.id;
    made.title = form.title;
    made.system = form.system;
    made.filters = form.filters;
    made.fluid = system.scopes.front()->fluid;
    made.answers = system.scopes.front()->answers;
    made.workedOut = system.workedOut;
    made.notes = system.notes;
    return made;
}

} // namespace

Result<Expansion> expand(const ExpandRequest &request)
{
    assert(request.book && request.catalogue && request.closer);
    const auto found = request.book->find(request.templateId);
    if (found == request.book->end())
        return unknownTemplate(request);
    const Template &form = *found->second;
    if (request.copies < 1 || request.copies > CopiesMax)
        return problem(form.id, std::to_string(request.copies) + " copies cannot be made",
                       "Ask for 1 to " + std::to_string(CopiesMax) + ".");
    auto sized = sizedSystem(request, form);
    if (!sized)
        return tl::unexpected(sized.error());
    const FlatSystem &system = sized->system;
    const auto size = std::max(system.stations.size(), system.runs.size());
    if (size * static_cast<std::size_t>(request.copies) > StationsMax)
        return problem(form.id,
                       std::to_string(request.copies) + " copies have more than " +
                           std::to_string(StationsMax) + " stations or runs",
                       "Ask for fewer copies.");
    for (const auto &[slot, pick] : request.picks)
        if (auto allowed = pickAllowed(request, form, slot, pick); !allowed)
            return tl::unexpected(allowed.error());

    Expansion made = begunExpansion(form, system);
    made.book = request.book;
    if (!request.together)
        return Expanding(request, *sized).done(std::move(made));
    auto single = Expanding(request, *sized, request.waysWished).done(made);
    if (!single)
        return single;
    SharedWays shared = sharedWays(request, *single);
    if (!shared.ways.empty())
        single = Expanding(request, *sized, std::move(shared.ways)).done(std::move(made));
    if (single)
        single->together = shared.together;
    return single;
}

} // namespace flarestock
