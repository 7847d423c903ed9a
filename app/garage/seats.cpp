// SPDX-License-Identifier: MIT

#include "app/garage/seats.h"

#include "app/garage/issued_pieces.h"
#include "app/stockroom/renewing.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Whether what stands at a station is a piece that is looked after; adapters and brackets are not.
bool isLookedAfter(Kind kind) noexcept
{
    switch (kind) {
    case Kind::Adapter:
    case Kind::Tee:
    case Kind::Manifold:
    case Kind::Bulkhead:
    case Kind::Cap:
    case Kind::Plug:
    case Kind::Engine:
    case Kind::Bracket:
    case Kind::Clamp:
    case Kind::Wire:
    case Kind::Fuse:
    case Kind::Relay:
        return false;
    default:
        return true;
    }
}

/// Whether something in it is renewed each time that it is opened.
bool hasRings(const PlacedJoint &joint)
{
    return joint.way &&
           std::any_of(joint.way->aids.begin(), joint.way->aids.end(),
                       [](const WayAid &aid) { return aid.part && sealsOnce(*aid.part); });
}

/// A joint that is opened for a piece.
void addJoint(PositionWords &words, const PlacedJoint &joint)
{
    if (!hasRings(joint))
        return;
    words.joints.push_back(joint.id);
    for (const WayAid &aid : joint.way->aids) {
        if (aid.part && sealsOnce(*aid.part))
            words.rings[aid.part->number] += aid.need.count;
    }
}

/// The nearest filter before a station, walking the runs against the flow; empty where none is.
std::string filterBefore(const Expansion &expansion, const std::string &station)
{
    std::string at = station;
    for (std::size_t step = 0; step < expansion.runs.size(); ++step) {
        const auto run = std::find_if(expansion.runs.begin(), expansion.runs.end(),
                                      [&at](const PlacedRun &one) { return one.to == at; });
        if (run == expansion.runs.end())
            return {};
        at = run->from;
        const PlacedStation *before = expansion.station(at);
        if (before && before->station && before->station->demand.kind == Kind::Filter)
            return at;
    }
    return {};
}

class Seating {
public:
    Seating(const WorkedBuild &worked, const BuildPlan &plan, const Workshop &workshop,
            IssuedPieces pieces)
        : m_expansion(worked.expansion), m_plan(plan), m_workshop(workshop),
          m_pieces(std::move(pieces))
    {
    }
    [[nodiscard]] BuiltSeats built()
    {
        for (const PlacedStation &station : m_expansion.stations)
            seatStation(station);
        for (const PlacedRun &run : m_expansion.runs)
            seatRun(run);
        for (const PlacedJoint &joint : m_expansion.joints)
            seatJoint(joint);
        followTheFlow();
        return std::move(m_built);
    }

private:
    [[nodiscard]] std::string position(const std::string &id, const char *end = "") const
    {
        return m_plan.id + "/" + id + end;
    }
    void seat(const std::string &position, const IssuedPiece &piece, bool inside = false);
    void seatStation(const PlacedStation &station);
    void seatRun(const PlacedRun &run);
    void seatJoint(const PlacedJoint &joint);
    void followTheFlow();
    void next(const std::string &position);
    void nextJoint(const std::string &joint);

    const Expansion &m_expansion;
    const BuildPlan &m_plan;
    const Workshop &m_workshop;
    IssuedPieces m_pieces;
    BuiltSeats m_built;
    int m_flow = 0;
};

void Seating::seat(const std::string &position, const IssuedPiece &piece, bool inside)
{
    SeatedPiece seat{m_plan.car,     position,  m_plan.id, piece.name,
                     piece.quantity, piece.day, {},        {}};
    seat.inside = inside;
    if (const auto hose = m_workshop.notes.hoses.find(piece.name.part);
        hose != m_workshop.notes.hoses.end()) {
        seat.made = hose->second.madeOn;
        seat.useBy = hose->second.useBy;
    }
    if (const auto lot = m_workshop.notes.lots.find(piece.name);
        lot != m_workshop.notes.lots.end()) {
        for (const std::string &day : {lot->second.useBy, lot->second.certified}) {
            if (!day.empty() && (seat.useBy.empty() || day < seat.useBy))
                seat.useBy = day;
        }
    }
    m_built.seats.push_back(std::move(seat));
}

void Seating::seatStation(const PlacedStation &station)
{
    if (!station.part || !station.station || !isLookedAfter(station.part->kind))
        return;
    const std::string at = position(station.id);
    PositionWords &words = m_built.words[at];
    words.said = station.station->title;
    for (const PlacedJoint &joint : m_expansion.joints) {
        if (joint.station == station.id)
            addJoint(words, joint);
    }
    if (station.part->kind == Kind::Pump) {
        if (const std::string filter = filterBefore(m_expansion, station.id); !filter.empty())
            words.filter = position(filter);
    }
    const auto piece = m_pieces.take(*station.part, 1);
    if (piece)
        seat(at, *piece);
    const Part *stands = piece ? m_workshop.part(piece->name.part) : nullptr;
    const auto *filter = stands ? stands->as<FilterFacts>() : nullptr;
    if (!filter || filter->element.empty())
        return;
    m_built.words[at + ".element"].said = station.station->title + ", element";
    // It came inside its filter, and so is of no lot that the shop knows.
    seat(at + ".element", {{filter->element, {}}, 1, piece->day}, true);
}

void Seating::seatRun(const PlacedRun &run)
{
    if (!run.line || run.line->kind != Kind::Hose)
        return;
    const std::string at = position(run.id, ".hose");
    PositionWords &words = m_built.words[at];
    const auto titleOf = [this](const std::string &id) {
        const PlacedStation *station = m_expansion.station(id);
        return station && station->station ? station->station->title : id;
    };
    words.said = "hose from " + titleOf(run.from) + " to " + titleOf(run.to);
    for (const std::string &joint : run.joints) {
        if (const PlacedJoint *placed = m_expansion.joint(joint))
            addJoint(words, *placed);
    }
    const auto length = run.length.smallest();
    if (const auto piece = m_pieces.takeLine(*run.line, length.value_or(0)))
        seat(at, *piece);
}

void Seating::seatJoint(const PlacedJoint &joint)
{
    for (const WayAid &aid : joint.way ? joint.way->aids : std::vector<WayAid>()) {
        if (!aid.part || !sealsOnce(*aid.part))
            continue;
        const auto piece = m_pieces.take(*aid.part, aid.need.count);
        if (!piece)
            continue;
        const char *end = aid.part->kind == Kind::Ring ? ".ring" : ".washer";
        m_built.words[position(joint.id, end)].said = joint.at + ", " + std::string(end + 1);
        seat(position(joint.id, end), *piece);
    }
}

/// Says of a position, where it is one, that it comes next.
void Seating::next(const std::string &position)
{
    const auto words = m_built.words.find(position);
    if (words != m_built.words.end() && words->second.flow == 0)
        words->second.flow = ++m_flow;
}

void Seating::nextJoint(const std::string &joint)
{
    next(position(joint, ".ring"));
    next(position(joint, ".washer"));
}

/// Each station, then what leaves it: the first joint of a run, its hose, its other joints.
void Seating::followTheFlow()
{
    for (const PlacedStation &station : m_expansion.stations) {
        next(position(station.id));
        next(position(station.id, ".element"));
        for (const PlacedRun &run : m_expansion.runs) {
            if (run.from != station.id)
                continue;
            if (!run.joints.empty())
                nextJoint(run.joints.front());
            next(position(run.id, ".hose"));
            for (const std::string &joint : run.joints)
                nextJoint(joint);
        }
    }
    for (const PlacedJoint &joint : m_expansion.joints)
        nextJoint(joint.id);
}

} // namespace

BuiltSeats seatsOf(const WorkedBuild &worked, const BuildPlan &plan, const Workshop &workshop,
                   const std::vector<Movement> &moved)
{
    return Seating(worked, plan, workshop, IssuedPieces(plan, workshop, moved)).built();
}

} // namespace flarestock
