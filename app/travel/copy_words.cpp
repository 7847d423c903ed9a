// SPDX-License-Identifier: MIT

#include "app/travel/copy_words.h"

#include "app/workshop/made_up.h"

#include <algorithm>

namespace flarestock {

namespace {

std::string counted(std::size_t count, const std::string &noun)
{
    return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

std::string joined(const std::set<std::string> &names)
{
    std::string all;
    for (const std::string &name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all.empty() ? "no place of its own" : all;
}

} // namespace

std::string standingOf(const TravellingCopy &copy)
{
    return (copy.taken.with.empty() ? "" : "with " + copy.taken.with + ", ") + "out since " +
           dayOf(copy.taken.at) + ": " + joined(copy.places);
}

std::string stateOf(const TravellingCopy &copy)
{
    const std::string day = copy.brought.empty() ? "" : dayOf(copy.brought.back().at);
    if (copy.ended)
        return "ended " + dayOf(copy.ended->at) + (day.empty() ? "" : ", brought " + day);
    if (copy.isOut)
        return day.empty() ? "away" : "away, brought " + day;
    return "back " + day;
}

std::string cameWith(const BroughtBack &back)
{
    std::vector<std::string> parts;
    if (!back.movements.empty())
        parts.push_back(counted(back.movements.size(), "movement"));
    if (!back.records.empty())
        parts.push_back(counted(back.records.size(), "record"));
    for (const std::string &name : back.documents)
        parts.push_back(name);
    for (const std::string &place : back.places)
        parts.push_back("place " + place);
    if (back.looks > 0)
        parts.push_back(counted(back.looks, "look") + " into boxes");
    std::string all;
    for (const std::string &part : parts)
        all += (all.empty() ? "" : ", ") + part;
    return all.empty() ? "nothing new" : all;
}

std::string missingIn(const BroughtBack &back)
{
    if (back.missing == 0)
        return {};
    return "The shop has " +
           (back.missing == 1 ? "1 entry" : std::to_string(back.missing) + " entries") +
           " that the copy does not know: to go on, take a new one.";
}

std::string openIn(const BroughtBack &back)
{
    const auto open = std::count_if(back.disagreements.begin(), back.disagreements.end(),
                                    [](const Disagreement &one) { return one.decided.empty(); });
    if (open == 0)
        return {};
    const auto first = std::find_if(back.disagreements.begin(), back.disagreements.end(),
                                    [](const Disagreement &one) { return one.decided.empty(); });
    return "Nothing is brought before " + counted(static_cast<std::size_t>(open), "decision") +
           (open == 1 ? " is" : " are") + " said: --decide '" + first->name + "=" +
           first->choices.front().word + "' …";
}

} // namespace flarestock
