// SPDX-License-Identifier: MIT

#include "model/checks/flow/line_network.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

/// The same loss beyond its last point, and hardly more, because a curve rises.
CleanLoss heldBeyond(CleanLoss clean)
{
    auto last = clean.points.back();
    last.flowM3S *= 1e6;
    last.lossPa *= 1 + 1e-9;
    clean.points.push_back(last);
    return clean;
}

/// A station at which lines divide and join, and not one that passes them through itself.
bool isMeeting(const PlacedStation &station)
{
    const Kind kind = station.station->demand.kind;
    return kind != Kind::Tank && kind != Kind::Pump && kind != Kind::Regulator;
}

} // namespace

LineNetwork::LineNetwork(const Expansion &expansion, const Filled &filled,
                         const std::vector<const FlowPath *> &paths)
    : m_expansion(expansion), m_filled(filled)
{
    for (const auto *path : paths)
        for (const auto *run : path->runs)
            m_lines.try_emplace(run);
    std::map<std::string_view, RunMeeting> meetings;
    for (const auto &[run, unused] : m_lines) {
        ++meetings.try_emplace(run->to, RunMeeting{0, 0}).first->second.coming;
        ++meetings.try_emplace(run->from, RunMeeting{0, 0}).first->second.going;
    }
    for (auto &[run, line] : m_lines) {
        const auto *from = m_expansion.station(run->from);
        const bool meets = from != nullptr && isMeeting(*from);
        line = runLine(m_expansion, *run, meets ? meetings.at(run->from) : RunMeeting());
    }
}

const RunLine &LineNetwork::line(const PlacedRun &run) const
{
    const auto found = m_lines.find(&run);
    assert(found != m_lines.end());
    return found->second;
}

WholeLine LineNetwork::flowing(const PlacedRun &run, double flowM3S) const
{
    WholeLine whole = line(run).line;
    whole.flowM3S = flowM3S;
    whole.densityKgM3 = m_filled.liquid.densityKgM3;
    whole.viscosityPaS = m_filled.liquid.viscosityPaS;
    whole.accelerationMS2 = m_filled.accelerationMS2;
    for (auto &piece : whole.pieces)
        if (auto *filter = std::get_if<FilterPiece>(&piece.piece))
            filter->clean = heldBeyond(filter->clean);
    return whole;
}

WholeLineLoss LineNetwork::loss(const PlacedRun &run, double flowM3S) const
{
    const WholeLine whole = flowing(run, flowM3S);
    if (whole.pieces.empty())
        return {};
    // Only figures out of the catalogue go in, which its reader has bounded.
    return wholeLineLoss(whole).value_or(WholeLineLoss());
}

LineNetwork::Shares LineNetwork::sharesOf(const std::vector<FlowPath> &paths)
{
    Shares shares;
    for (const auto &path : paths)
        for (const auto *run : path.runs)
            shares[run] += path.share;
    return shares;
}

LineNetwork::Worst LineNetwork::worst(const Asked &asked, double flowM3S) const
{
    Worst worst;
    for (const auto &path : asked.paths) {
        double dropPa = 0;
        for (const auto *run : path.runs) {
            const bool isCommon = asked.usedBy != nullptr && asked.usedBy->at(run) > 1;
            if (asked.usedBy == nullptr || isCommon == asked.common)
                dropPa += loss(*run, asked.shares.at(run) * flowM3S).dropPa;
        }
        if (worst.path == nullptr || dropPa > worst.dropPa)
            worst = {&path, dropPa};
    }
    return worst;
}

} // namespace flarestock
