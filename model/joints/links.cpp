// SPDX-License-Identifier: MIT

#include "model/joints/links.h"

#include "model/joints/meeting.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isAidKind(Kind kind)
{
    return kind == Kind::Ring || kind == Kind::Washer || kind == Kind::Sealant ||
           kind == Kind::Clamp;
}

} // namespace

bool answersNeed(const Part &part, const NeedKind &kind)
{
    switch (kind.need.aid) {
    case Aid::ORing: {
        const auto *ring = part.as<RingFacts>();
        return ring != nullptr &&
               foldedThread(ring->designation) == foldedThread(kind.need.designation);
    }
    case Aid::Washer:
    case Aid::CrushWasher: {
        const auto *washer = part.as<WasherFacts>();
        return washer != nullptr && washer->crush == (kind.need.aid == Aid::CrushWasher) &&
               foldedThread(washer->thread) == kind.thread;
    }
    case Aid::Sealant:
        return part.kind == Kind::Sealant;
    case Aid::Clamp:
        return part.kind == Kind::Clamp && part.says(kind.thread);
    case Aid::Sleeve:
        break; // the tube nut's own list names it
    }
    return false;
}

LinkBook::LinkBook(const std::vector<Stocked> &stocked)
{
    for (std::size_t index = 0; index < stocked.size(); ++index) {
        if (isAidKind(stocked[index].part->kind))
            m_aids.emplace_back(static_cast<StockedIndex>(index), stocked[index].part);
    }
}

NeedKind LinkBook::kind(const Need &need, const Port &a, const Port &b) const
{
    NeedKind kind{need, {}, {}};
    if (need.aid == Aid::Washer || need.aid == Aid::CrushWasher)
        kind.thread =
            foldedThread(need.designation.empty() ? washerThread(a, b) : need.designation);
    if (need.aid == Aid::Clamp)
        kind.thread = a.family == Family::Barb ? a.text() : b.text();
    for (const auto &[index, part] : m_aids) {
        if (answersNeed(*part, kind))
            kind.answers.push_back(index);
    }
    return kind;
}

std::uint32_t LinkBook::add(Mating mating, const Port &a, const Port &b)
{
    LinkBurden burden;
    burden.caution = mating.verdict == Verdict::FitsWithCaution;
    for (const Need &need : mating.needs) {
        NeedKind fresh = kind(need, a, b);
        const std::string key = need.text() + "|" + fresh.thread;
        const auto [place, isNew] =
            m_needPlaces.try_emplace(key, static_cast<std::uint32_t>(m_needs.size()));
        if (isNew)
            m_needs.push_back(std::move(fresh));
        burden.needs.push_back(place->second);
    }
    const auto [place, isNew] =
        m_burdenPlaces.try_emplace(burden, static_cast<std::uint32_t>(m_burdens.size()));
    if (isNew)
        m_burdens.push_back(std::move(burden));
    m_links.push_back({std::move(mating), place->second});
    return static_cast<std::uint32_t>(m_links.size() - 1);
}

std::optional<std::uint32_t> LinkBook::link(const Port &a, const Port &b, bool madeForClamp)
{
    if (a.gender != Gender::None && a.gender == b.gender)
        return {}; // both male or both female: the first thing that mating() would say
    Mating met = meeting(a, b);
    if (met.verdict != Verdict::Fits && met.verdict != Verdict::FitsWithCaution)
        return {};
    if (madeForClamp)
        met = clamped(a, std::move(met));
    return add(std::move(met), a, b);
}

std::uint32_t LinkBook::hold(const Port &cut)
{
    return add(holding(cut), cut, cut);
}

} // namespace flarestock
