// SPDX-License-Identifier: MIT

#include "app/command/trailer/carry_wanted.h"

#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

Problem noEvent(const std::string &typed, const Season &season, const std::string &today)
{
    std::string known;
    for (const Event *event : season.from(today))
        known += (known.empty() ? "" : ", ") + event->id;
    return {typed, "is no event that comes",
            known.empty() ? "Write the shop's events into its season.csv."
                          : "To come are: " + known + "."};
}

/// Those that were asked for; none where nobody has said.
Result<std::vector<const Event *>> eventsAsked(const CarryShopAsked &asked,
                                               const CarryNumbers &numbers, const Season &season,
                                               const std::string &today)
{
    const auto coming = season.from(today);
    std::vector<const Event *> events;
    if (!asked.event.empty()) {
        const auto found = std::find_if(coming.begin(), coming.end(), [&](const Event *event) {
            return sameFolded(event->id, asked.event);
        });
        if (found == coming.end())
            return tl::unexpected(noEvent("--event " + asked.event, season, today));
        return std::vector<const Event *>{*found};
    }
    if (!asked.until.empty()) {
        if (const auto day = dayAsked(asked.until, 0); !day)
            return tl::unexpected(wrongIn("--until", day.error()));
        for (const Event *event : coming)
            if (event->firstDay <= asked.until)
                events.push_back(event);
        if (events.empty())
            return tl::unexpected(noEvent("--until " + asked.until, season, today));
    } else if (!numbers.events.empty()) {
        const auto count = countAsked(numbers.events, "--events", 1);
        if (!count)
            return tl::unexpected(count.error());
        if (coming.size() < static_cast<std::size_t>(*count))
            return problem("--events " + numbers.events,
                           "are more than the " + std::to_string(coming.size()) +
                               " that the season has to come",
                           "Write further ones into season.csv.");
        events.assign(coming.begin(), coming.begin() + *count);
    }
    return events;
}

} // namespace

Result<CarryWanted> wantedOf(const CarryShopAsked &asked, const CarryNumbers &numbers,
                             const OpenShop &shop)
{
    CarryWanted wanted;
    const auto today = dayAsked(asked.on, shop.by.at);
    if (!today)
        return tl::unexpected(today.error());
    wanted.today = *today;
    auto events = eventsAsked(asked, numbers, shop.workshop->season, *today);
    if (!events)
        return tl::unexpected(events.error());
    wanted.events = std::move(*events);
    const auto certainty = certaintyAsked(numbers.confidence, "--confidence");
    if (!certainty)
        return tl::unexpected(certainty.error());
    wanted.certainty = *certainty;
    if (!numbers.per.empty()) {
        const auto per = runningAsked(numbers);
        if (!per)
            return tl::unexpected(per.error());
        wanted.per = *per;
    }
    if (!numbers.each.empty()) {
        const auto each = countAsked(numbers.each, "--each", 1);
        if (!each)
            return tl::unexpected(each.error());
        wanted.each = *each;
    }
    if (!numbers.delivery.empty()) {
        const auto days = countAsked(numbers.delivery, "--delivery", 0);
        if (!days)
            return tl::unexpected(days.error());
        wanted.deliveryDays = static_cast<int>(std::min<std::int64_t>(*days, 10'000));
    }
    const auto form = formAsked(numbers.model);
    if (!form)
        return tl::unexpected(form.error());
    wanted.form = *form;
    return wanted;
}

Result<std::vector<const Part *>> partsAsked(const CarryShopAsked &asked, const OpenShop &shop,
                                             const SpareBook &book)
{
    std::vector<std::string> typed = asked.parts;
    if (typed.empty())
        for (const PartSpending &spending : book.spendings)
            typed.push_back(spending.part);
    if (typed.empty())
        return problem("flarestock carry", "is asked for no part, and the shop has no spares.csv",
                       "Name a part, or write spares.csv.");
    std::vector<const Part *> parts;
    for (const std::string &one : typed) {
        const auto part = partAsked(one, *shop.workshop);
        if (!part)
            return tl::unexpected(part.error());
        if (isLength((*part)->unit))
            return problem((*part)->number, "is cut from the length, and not carried by the piece",
                           "Name a part that is counted.");
        if (std::find(parts.begin(), parts.end(), *part) == parts.end())
            parts.push_back(*part);
    }
    return parts;
}

} // namespace flarestock
