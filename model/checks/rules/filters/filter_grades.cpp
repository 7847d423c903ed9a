// SPDX-License-Identifier: MIT
//
// Grades: whether the last filter before a carburettor, rail or injector is fine enough for it. By
// common practice where the maker says nothing, by his figure where he does. Two ratings of
// different basis do not compare (ISO 16889), so within a factor of two that is said as a caution.

#include "model/checks/rules/filters/swapped_filters.h"
#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

struct Practice {
    Decimal usual;    ///< µm
    Decimal hopeless; ///< µm and above: no protection.
    const char *words;
};

std::optional<Practice> practiceFor(Kind kind)
{
    if (kind == Kind::Rail || kind == Kind::Injector)
        return Practice{10, 100, "10 µm before injection, with a coarse filter before the pump"};
    if (kind == Kind::Carburettor)
        return Practice{40, 150, "40 µm before a carburettor, 10 µm with enough area"};
    return {};
}

Finding tooCoarse(const std::string &user, const DirtStop &filter, Severity severity)
{
    return {.severity = severity,
            .matter = Matter::DirectionAndFilters,
            .about = BuildUnderCheck::capital(BuildUnderCheck::named(*filter.station)) + ": " +
                     filter.rating->text() + " is too coarse for the " + user,
            .where = filter.station->id,
            .text = {},
            .source = {},
            .remedy = "Use a finer element there.",
            .mend = {}};
}

void byPractice(const PlacedStation &user, const DirtStop &filter, Findings &found)
{
    const auto practice = practiceFor(user.part->kind);
    if (!practice || filter.rating->micron <= practice->usual)
        return;
    const bool hopeless = filter.rating->micron >= practice->hopeless;
    auto finding =
        tooCoarse(user.station->title, filter, hopeless ? Severity::Stop : Severity::Caution);
    finding.text = std::string("It is the last filter before the ") + user.station->title +
                   "; usual is " + practice->words + ".";
    finding.source = "common practice, no source";
    found.push_back(std::move(finding));
}

/// Who passes no larger dirt than that, by his maker's word.
struct Passage {
    std::string user; ///< "rail", "injectors IJ-550"
    double micron = 0;
};

void byMaker(const Passage &narrowest, const DirtStop &filter, Findings &found)
{
    const auto &[user, passage] = narrowest;
    const double micron = filter.rating->micron.approximate();
    const bool absolute = filter.rating->basis == RatingBasis::Absolute;
    if (micron <= passage && (absolute || micron <= passage / 2))
        return;
    auto finding =
        tooCoarse(user, filter, micron > 2 * passage ? Severity::Stop : Severity::Caution);
    const auto limit = std::to_string(static_cast<long>(passage));
    finding.text = micron > passage
                       ? "Its maker gives " + limit + " µm as the largest dirt that it passes."
                       : "Its maker gives " + limit + " µm; a rating that is not absolute lets " +
                             "larger dirt through, so the figures are too near to decide.";
    if (micron <= passage)
        finding.about = BuildUnderCheck::capital(BuildUnderCheck::named(*filter.station)) + ": " +
                        filter.rating->text() + " may be too coarse for the " + user;
    finding.source = "the makers' figures, as entered; ISO 16889 for what a rating means";
    found.push_back(std::move(finding));
}

/// Of what stands there; behind a rail also of the injectors that the bill takes for it.
std::optional<Passage> narrowestAt(const PlacedStation &user, const BuildUnderCheck &build)
{
    std::optional<Passage> narrowest;
    if (const auto own = user.part->as<FuelUserFacts>()->passageMicron)
        narrowest = {user.station->title, *own};
    if (user.part->kind != Kind::Rail)
        return narrowest;
    for (const auto *injector : injectorsOf(build.expansion())) {
        const auto *facts = injector->as<FuelUserFacts>();
        if (facts != nullptr && facts->passageMicron &&
            (!narrowest || *facts->passageMicron < narrowest->micron))
            narrowest = {"injectors " + injector->number, *facts->passageMicron};
    }
    return narrowest;
}

} // namespace

void filterGrades(const BuildUnderCheck &build, Findings &found)
{
    if (build.expansion().filters == FilterRule::None)
        return;
    const auto isStop = [](const PlacedStation &station) { return dirtStop(station).has_value(); };
    for (const auto &user : build.expansion().stations) {
        if (user.part == nullptr || user.part->as<FuelUserFacts>() == nullptr)
            continue;
        const auto upstream = build.before(user, isStop);
        const auto last = std::find_if(upstream.begin(), upstream.end(),
                                       [&](const auto *station) { return isStop(*station); });
        if (last == upstream.end())
            continue; // Said by unprotected().
        const auto filter = dirtStop(**last);
        if (!filter->rating || isSwapped(build, **last) || isToldOfItsPump(build, user))
            continue; // Said by unprotected(), or by pumpFilters().
        if (const auto narrowest = narrowestAt(user, build))
            byMaker(*narrowest, *filter, found);
        else
            byPractice(user, *filter, found);
    }
}

} // namespace flarestock::rules
