// SPDX-License-Identifier: MIT

#include "model/checks/flow/run_line.h"

#include "model/fluids/line/dash_bore.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Drawn tubing, and smooth-bore hose at its best (textbook table; hose from memory).
constexpr double RoughnessM = 1.5e-6;
/// A swing check (two textbook tables: 2 to 2.5); what a maker publishes of his own is not asked.
constexpr double CheckValveK = 2.5;
constexpr double LitreHour = 1 / 3.6e6;
constexpr double Millimetre = 1e-3;

/// Of a tube of that dash size; nothing where none is known.
std::optional<double> tubeBoreM(int dash)
{
    const auto bore = assumedBore(dash, DashNumbering::AsTube);
    return bore ? std::optional(bore->boreM) : std::nullopt;
}

std::optional<double> portBoreM(const Part *part, std::string_view name)
{
    const auto *port = part == nullptr ? nullptr : part->port(name);
    return port == nullptr ? std::nullopt : tubeBoreM(dash(port->port));
}

std::optional<double> narrowest(const std::optional<double> &a, const std::optional<double> &b)
{
    return a && b ? std::optional(std::min(*a, *b)) : a ? a : b;
}

/// "elbow 90°, flare nut -6": what bend the words of an adapter say; 0 for none.
double bendOf(const Part &part)
{
    for (const auto &[words, degrees] : {std::pair("90°", 90.0), std::pair("45°", 45.0)})
        if (part.description.find(words) != std::string::npos)
            return degrees;
    return 0;
}

class Pieces {
public:
    Pieces(const Expansion &expansion, const PlacedRun &run)
        : m_expansion(expansion), m_run(run), m_from(expansion.station(run.from)),
          m_to(expansion.station(run.to))
    {
    }

    RunLine made(const RunMeeting &meeting)
    {
        m_made.unfinished = m_run.line == nullptr && !m_run.wanted.empty();
        leaveStation(meeting);
        if (!m_run.joints.empty())
            joint(m_run.joints.front(), false);
        straight();
        if (m_run.joints.size() > 1)
            joint(m_run.joints.back(), true);
        if (m_to != nullptr && isTank(*m_to))
            open(m_to->part, m_run.run->to.port, Opening::Exit);
        return std::move(m_made);
    }

private:
    static bool isTank(const PlacedStation &station)
    {
        return station.station->demand.kind == Kind::Tank;
    }

    void add(LinePiece piece) { m_made.line.pieces.push_back(std::move(piece)); }

    /// What the liquid passes of the station that the run begins at.
    void leaveStation(const RunMeeting &meeting)
    {
        if (m_from == nullptr || m_from->part == nullptr)
            return;
        const Kind kind = m_from->station->demand.kind;
        if (kind == Kind::Tank)
            open(m_from->part, m_run.run->from.port, Opening::SharpEntrance);
        else if (kind == Kind::Filter)
            filter(*m_from);
        else if (kind == Kind::Cooler)
            lossIsUnknown(*m_from);
        else if (const auto bore = portBoreM(m_from->part, m_run.run->from.port))
            through(kind, *bore, meeting);
    }

    void through(Kind kind, double boreM, const RunMeeting &meeting)
    {
        if (kind == Kind::CheckValve)
            add({Adapter{boreM, CheckValveK}});
        if (kind == Kind::Pump || kind == Kind::Regulator)
            return;
        if (meeting.coming > 1)
            add({Adapter{boreM, teeK(TeeWay::Converging, meeting.coming)}});
        if (meeting.going > 1) // The figure is on what comes; here it is on what goes.
            add({Adapter{boreM,
                         teeK(TeeWay::Diverging, meeting.going) * meeting.going * meeting.going}});
    }

    /// Through the branch, which is the worse of the two legs.
    static double teeK(TeeWay way, int legs)
    {
        return std::max(0.0, teeCoefficient({way, TeeLeg::Branch, 1.0 / legs, 90}).value());
    }

    void filter(const PlacedStation &station)
    {
        const auto *facts = station.part->as<FilterFacts>();
        if (facts == nullptr || !facts->flowLh || !facts->cleanLossKpa) {
            lossIsUnknown(station);
            return;
        }
        m_made.passed = &station;
        CleanLoss clean;
        clean.points = {{*facts->flowLh * LitreHour, *facts->cleanLossKpa * 1e3}};
        add({FilterPiece{clean}});
    }

    void lossIsUnknown(const PlacedStation &station)
    {
        m_made.passed = &station;
        m_made.lossUnknown = true;
    }

    void open(const Part *part, std::string_view port, Opening opening)
    {
        auto bore = portBoreM(part, port);
        if (m_run.line != nullptr)
            bore = narrowest(bore, lineBoreM(false));
        if (bore)
            add({EntryOrExit{*bore, opening}});
    }

    void joint(const std::string &id, bool atEnd)
    {
        const auto *joint = m_expansion.joint(id);
        if (joint == nullptr || !joint->way) {
            m_made.unfinished = true;
            return;
        }
        auto pieces = joint->way->pieces; // From the station outwards.
        if (atEnd)
            std::reverse(pieces.begin(), pieces.end());
        for (const auto &piece : pieces)
            fitting(piece);
    }

    void fitting(const Piece &piece)
    {
        const Part &part = *piece.part;
        if (const auto *end = part.as<HoseEndFacts>()) {
            auto bore = end->boreMm ? std::optional(*end->boreMm * Millimetre) : std::nullopt;
            const bool assumed = !bore;
            if (assumed && (bore = tubeBoreM(end->hoseDash)))
                m_made.assumed.push_back(part.number);
            if (bore)
                add({HoseEnd{*bore, EndForm::Swept, static_cast<double>(end->angleDegrees),
                             assumed}});
            return;
        }
        const auto bore = narrowest(portBoreM(&part, piece.in), portBoreM(&part, piece.out));
        if (bore)
            add({Adapter{*bore, endCoefficient(EndForm::Drilled, bendOf(part)).value().k}});
    }

    /// Of the hose or tube, as entered or else assumed; said is whether the latter is to be told.
    std::optional<double> lineBoreM(bool said)
    {
        const auto *hose = m_run.line->as<HoseFacts>();
        const auto *tubing = m_run.line->as<TubingFacts>();
        const auto bore = hose != nullptr     ? hose->boreMm
                          : tubing != nullptr ? tubing->boreMm
                                              : std::nullopt;
        if (bore)
            return *bore * Millimetre;
        const auto usual = tubeBoreM(hose != nullptr ? hose->dash : m_run.dash);
        if (usual && said)
            m_made.assumed.push_back(m_run.line->number);
        return usual;
    }

    void straight()
    {
        if (m_run.line == nullptr) {
            if (!m_made.line.pieces.empty()) // Two bodies that meet: the level counts all the same.
                rise(m_made.line.pieces.back());
            return;
        }
        const std::size_t before = m_made.assumed.size();
        const auto bore = lineBoreM(true);
        const auto length = m_run.length.exactlyIn(Unit::Millimetre);
        if (!bore)
            m_made.boreless = m_run.line;
        if (!bore || !length)
            return;
        m_made.straight = StraightLine{*bore, length->amount.approximate() * Millimetre, RoughnessM,
                                       m_made.assumed.size() > before};
        LinePiece piece{*m_made.straight};
        rise(piece);
        add(std::move(piece));
    }

    void rise(LinePiece &piece) const
    {
        piece.riseM = m_run.riseM;
        piece.forwardM = m_run.forwardM;
    }

    const Expansion &m_expansion;
    const PlacedRun &m_run;
    const PlacedStation *m_from;
    const PlacedStation *m_to;
    RunLine m_made;
};

} // namespace

RunLine runLine(const Expansion &expansion, const PlacedRun &run, const RunMeeting &meeting)
{
    return Pieces(expansion, run).made(meeting);
}

} // namespace flarestock
