// SPDX-License-Identifier: MIT
//
// Gravity feeds: whether the level in a tank pushes half as much again as the engine burns through
// the line to its carburettor, and leaves there what the carburettor's maker wants.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

std::string source()
{
    return std::string(marginOf(Feed::Gravity).source) +
           ": gravity gives 150 %; friction by Darcy-Weisbach and Colebrook-White, half of the "
           "ends' losses either way";
}

constexpr auto Remedy = "Raise the tank or lower the carburettor, or use a wider line with fewer "
                        "bends and a filter that takes less.";

Finding pushesTooLittle(const BuildUnderCheck &build, const GravityFeed &feed)
{
    const bool stands = feed.headPa > 0;
    const bool sure = feed.line.dropLeastPa > 0;
    return {.severity = sure ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = stands ? "The level of " + nameOf(build, feed.line.from) + " pushes " +
                                  litresPerHour(feed.reachesM3S) + " where " +
                                  litresPerHour(feed.wantedM3S) + " is wanted"
                            : capitalNameOf(build, feed.line.from) + ": does not stand above " +
                                  nameOf(build, feed.user),
            .where = feed.user,
            .text = "The level is worth " + kilopascals(feed.headPa) + "; the line takes " +
                    kilopascals(feed.line.dropPa + feed.headPa) + " at " +
                    litresPerHour(feed.wantedM3S) + ", half as much again as the engine burns.",
            .source = source(),
            .remedy = Remedy,
            .mend = {}};
}

Finding leavesTooLittle(const BuildUnderCheck &build, const GravityFeed &feed, double wantedPa)
{
    return {.severity = Severity::Caution,
            .matter = Matter::Flow,
            .about = capitalNameOf(build, feed.user) + ": its tank's level leaves " +
                     kilopascals(-feed.line.dropPa) + " there",
            .where = feed.user,
            .text = "Its maker wants " + kilopascals(wantedPa) + "; the level is worth " +
                    kilopascals(feed.headPa) + ", of which the line takes " +
                    kilopascals(feed.line.dropPa + feed.headPa) + " at " +
                    litresPerHour(feed.wantedM3S) + ".",
            .source = source() + "; the maker's pressure as entered",
            .remedy = "Use a carburettor for gravity feed, raise the tank, or use a pump.",
            .mend = {}};
}

} // namespace

bool isGravityTold(const GravityFeed &feed) noexcept
{
    return feed.isLevelSaid && feed.line.dropPa > 0;
}

void gravityFeeds(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &feed : build.flow().gravityFeeds) {
        if (!feed.isLevelSaid)
            continue; // flowDoubts says so.
        const auto *user = build.expansion().station(feed.user)->part->as<FuelUserFacts>();
        const double wantedPa = user == nullptr ? 0 : user->pressureLowKpa.value_or(0) * 1e3;
        if (isGravityTold(feed))
            found.push_back(pushesTooLittle(build, feed));
        else if (-feed.line.dropPa < wantedPa)
            found.push_back(leavesTooLittle(build, feed, wantedPa));
    }
}

} // namespace flarestock::rules
