// SPDX-License-Identifier: MIT

#include "model/joints/graph.h"

#include "model/joints/meeting.h"
#include "model/parts/fluid_allowed.h"
#include "model/ports/size_table.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace flarestock {

namespace {

bool isPieceOrAid(Kind kind)
{
    switch (kind) {
    case Kind::Adapter:
    case Kind::Bulkhead:
    case Kind::HoseEnd:
    case Kind::TubeNut:
    case Kind::Ring:
    case Kind::Washer:
    case Kind::Sealant:
    case Kind::Clamp:
        return true;
    default:
        return false;
    }
}

std::string upperCase(std::string_view text)
{
    std::string upper(text);
    std::transform(upper.begin(), upper.end(), upper.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::toupper(letter)); });
    return upper;
}

/// What the hoses' makers say of them, by cut end.
using HosesByEnd = std::map<Port, HoseFacts>;

HosesByEnd hosesOf(const Catalogue &catalogue)
{
    HosesByEnd hoses;
    for (const Part *hose : catalogue.ofKind(Kind::Hose)) {
        const auto *facts = hose->as<HoseFacts>();
        if (facts != nullptr && !hose->ports.empty())
            hoses.emplace(hose->ports.front().port, *facts);
    }
    return hoses;
}

/// A barb is named by the bore of the hose that goes over it, and a hose's number is not always its
/// bore: one that is numbered by tube is tighter, and its braid does not stretch. Six percent is
/// what push-on hose gives: common practice, no source.
bool goesOver(const HoseFacts &hose, const SizeRow &barb)
{
    constexpr double Stretch = 0.06;
    return hose.clamped.value_or(true) &&
           (!hose.boreMm || std::abs(*hose.boreMm - barb.tubeMm) <= Stretch * barb.tubeMm);
}

/// What the makers say of a cut end on a barb; nothing where the one is no hose of the catalogue or
/// the other no barb.
enum class OnBarb : std::uint8_t { NotAsked, No, Yes, MadeForIt };

OnBarb onBarb(const HosesByEnd &hoses, const Port &cut, const Port &barb)
{
    const auto hose = hoses.find(cut);
    if (hose == hoses.end() || barb.family != Family::Barb)
        return OnBarb::NotAsked;
    if (!goesOver(hose->second, *sizeOf(barb)))
        return OnBarb::No;
    return hose->second.clamped ? OnBarb::MadeForIt : OnBarb::Yes;
}

} // namespace

bool isJoiningPiece(const Part &part) noexcept
{
    return part.kind == Kind::Adapter || part.kind == Kind::Bulkhead ||
           part.kind == Kind::HoseEnd || part.kind == Kind::TubeNut;
}

std::uint16_t fluidsThatRuin(const Part &part)
{
    std::uint16_t ruin = 0;
    for (const Fluid fluid : allFluids()) {
        if (!allowsFluid(part, fluid))
            ruin = static_cast<std::uint16_t>(ruin | (1u << static_cast<unsigned>(fluid)));
    }
    return ruin;
}

std::vector<Port> portsOf(const Part &part, std::size_t place)
{
    const Port &port = part.ports[place].port;
    const auto *facts = part.as<HoseEndFacts>();
    if (port.family != Family::Hose || facts == nullptr)
        return {port};
    std::vector<Port> ports;
    for (const std::string &construction : facts->constructions) {
        ports.push_back(port);
        ports.back().construction = upperCase(construction);
    }
    return ports;
}

JointGraph::JointGraph(const Catalogue &catalogue) : m_catalogue(&catalogue)
{
    internStocked();
    internTypes();
    layArcs();
    m_links.emplace(m_stocked.parts);
    layHops();
    markEnds();
}

std::optional<TypeIndex> JointGraph::find(const Port &port) const
{
    const auto found = m_typeOf.find(port);
    return found == m_typeOf.end() ? std::nullopt : std::optional(found->second);
}

TypeIndex JointGraph::intern(const Port &port)
{
    const auto [found, isNew] = m_typeOf.try_emplace(port, static_cast<TypeIndex>(m_types.size()));
    if (isNew) {
        m_types.push_back(port);
        m_dashes.push_back(dash(port));
    }
    return found->second;
}

void JointGraph::internStocked()
{
    m_stocked.catalogue = m_catalogue;
    for (const Part &part : m_catalogue->parts()) {
        const bool joins = isPieceOrAid(part.kind);
        m_stocked.places.push_back(joins ? static_cast<StockedIndex>(m_stocked.parts.size())
                                         : StockedParts::None);
        if (!joins)
            continue;
        m_stocked.parts.push_back({&part, BuyingPrice(*m_catalogue, part)});
        m_ruinedBy.push_back(fluidsThatRuin(part));
    }
}

void JointGraph::internTypes()
{
    for (const Part &part : m_catalogue->parts()) {
        for (std::size_t place = 0; place < part.ports.size(); ++place) {
            for (const Port &port : portsOf(part, place))
                intern(port);
        }
    }
}

void JointGraph::addArcs(StockedIndex index, std::vector<std::vector<Arc>> &byIn)
{
    const Part &part = *m_stocked.parts[index].part;
    const auto *hoseEnd = part.as<HoseEndFacts>();
    const auto angle = static_cast<std::int16_t>(hoseEnd == nullptr ? -1 : hoseEnd->angleDegrees);
    for (const Port &first : portsOf(part, 0)) {
        for (const Port &second : portsOf(part, 1)) {
            const TypeIndex in = intern(first);
            const TypeIndex out = intern(second);
            byIn[in].push_back({index, in, out, m_ruinedBy[index], angle, 0, 1});
            if (in != out) // Alike both ends: turned round it is the same way.
                byIn[out].push_back({index, out, in, m_ruinedBy[index], angle, 1, 0});
        }
    }
}

void JointGraph::layArcs()
{
    std::vector<std::vector<Arc>> byIn(m_types.size());
    for (std::size_t index = 0; index < m_stocked.parts.size(); ++index) {
        const Part &part = *m_stocked.parts[index].part;
        if (isJoiningPiece(part) && part.ports.size() == 2)
            addArcs(static_cast<StockedIndex>(index), byIn);
    }
    for (std::vector<Arc> &row : byIn) {
        std::stable_sort(row.begin(), row.end(),
                         [](const Arc &a, const Arc &b) { return a.out < b.out; });
        m_arcs.all.insert(m_arcs.all.end(), row.begin(), row.end());
        m_arcs.close();
        for (std::uint32_t at = 0; at < row.size(); ++at) {
            if (at == 0 || row[at - 1].out != row[at].out)
                m_bundles.all.push_back({row[at].out, at, at});
            ++m_bundles.all.back().end;
        }
        m_bundles.close();
    }
}

void JointGraph::addHop(std::vector<Hop> &row, TypeIndex to, std::uint32_t link) const
{
    row.push_back({to, link, (*m_links)[link].burden});
}

void JointGraph::layHops()
{
    std::vector<std::vector<Hop>> rows(m_types.size());
    const HosesByEnd hoses = hosesOf(*m_catalogue);
    for (TypeIndex a = 0; a < m_types.size(); ++a) {
        const bool cut = isCutEnd(m_types[a]);
        if (cut)
            addHop(rows[a], a, m_links->hold(m_types[a]));
        for (TypeIndex b = cut ? 0 : a; b < m_types.size(); ++b) {
            const auto over = onBarb(hoses, m_types[a], m_types[b]);
            if (isCutEnd(m_types[b]) || over == OnBarb::No)
                continue;
            const auto link = m_links->link(m_types[a], m_types[b], over == OnBarb::MadeForIt);
            if (!link)
                continue;
            addHop(rows[a], b, *link);
            if (!cut && a != b)
                addHop(rows[b], a, *link);
        }
    }
    for (const std::vector<Hop> &row : rows) {
        m_hops.all.insert(m_hops.all.end(), row.begin(), row.end());
        m_hops.close();
    }
}

void JointGraph::markEnds()
{
    for (const Port &type : m_types)
        m_ends.push_back(isCutEnd(type) || type.family == Family::Weld);
}

} // namespace flarestock
