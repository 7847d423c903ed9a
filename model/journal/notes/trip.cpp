// SPDX-License-Identifier: MIT

#include "model/journal/notes/trip.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <sstream>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 5> StateTexts = {"taken", "along", "brought", "released",
                                                        "ended"};

/// One a line: none of them holds a line end.
std::string oneALine(const std::vector<std::string> &lines)
{
    std::string all;
    for (const std::string &line : lines)
        all += (all.empty() ? "" : "\n") + line;
    return all;
}

std::vector<std::string> everyLine(const std::string &all)
{
    std::vector<std::string> lines;
    std::istringstream stream(all);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

/// "3f…a1 1-25 413-430 433-439": the chain, its entries, the counts that they bear.
std::string lineOf(const ChainTaken &chain)
{
    std::string line =
        chain.replica + ' ' + std::to_string(chain.first) + '-' + std::to_string(chain.last);
    for (const auto &[from, to] : chain.counts)
        line += ' ' + std::to_string(from) + '-' + std::to_string(to);
    return line;
}

std::optional<std::pair<std::int64_t, std::int64_t>> rangeOf(const std::string &word)
{
    std::pair<std::int64_t, std::int64_t> range;
    const char *end = word.data() + word.size();
    const auto from = std::from_chars(word.data(), end, range.first);
    if (from.ec != std::errc{} || from.ptr == end || *from.ptr != '-')
        return std::nullopt;
    const auto to = std::from_chars(from.ptr + 1, end, range.second);
    if (to.ec != std::errc{} || to.ptr != end || range.first < 1 || range.second < range.first)
        return std::nullopt;
    return range;
}

std::optional<ChainTaken> chainOf(const std::string &line)
{
    std::istringstream words(line);
    ChainTaken chain;
    std::string word;
    if (!(words >> chain.replica >> word))
        return std::nullopt;
    const auto entries = rangeOf(word);
    if (!entries)
        return std::nullopt;
    std::tie(chain.first, chain.last) = *entries;
    std::int64_t counted = 0;
    while (words >> word) {
        const auto range = rangeOf(word);
        if (!range)
            return std::nullopt;
        chain.counts.push_back(*range);
        counted += range->second - range->first + 1;
    }
    return counted == chain.last - chain.first + 1 ? std::optional(chain) : std::nullopt;
}

} // namespace

std::string_view text(TripState state) noexcept
{
    return StateTexts[static_cast<std::size_t>(state)];
}

Record Trip::asRecord() const
{
    std::map<std::string, std::string> fields{
        {"state", std::string(text(state))}, {"trip", trip}, {"name", name}, {"with", with},
        {"places", oneALine(places)},        {"why", why}};
    if (state == TripState::Brought) {
        std::vector<std::string> lines;
        for (const ChainTaken &chain : chains)
            lines.push_back(lineOf(chain));
        fields["chains"] = oneALine(lines);
        fields["documents"] = std::to_string(documents);
        fields["goes on"] = goesOn ? "yes" : "no";
    }
    return {id, RecordKind::Trip, std::string(TripSubject), std::move(fields), who, at};
}

Result<Trip> Trip::read(const Record &record)
{
    const auto notOne = [&record] {
        return problem("record " + record.id.text(), "does not say which copy went or came",
                       "Run flarestock verify on the shop.");
    };
    const auto *const state =
        std::find(StateTexts.begin(), StateTexts.end(), record.field("state"));
    if (record.kind != RecordKind::Trip || state == StateTexts.end() ||
        record.field("trip").empty())
        return notOne();
    Trip trip;
    trip.id = record.id;
    trip.state = static_cast<TripState>(state - StateTexts.begin());
    trip.trip = record.field("trip");
    trip.name = record.field("name");
    trip.with = record.field("with");
    trip.places = everyLine(record.field("places"));
    trip.who = record.who;
    trip.why = record.field("why");
    trip.at = record.at;
    if (trip.state != TripState::Brought)
        return trip;
    const auto documents = record.number("documents");
    if (!documents)
        return notOne();
    trip.documents = *documents;
    trip.goesOn = record.field("goes on") == "yes";
    for (const std::string &line : everyLine(record.field("chains"))) {
        auto chain = chainOf(line);
        if (!chain)
            return notOne();
        trip.chains.push_back(std::move(*chain));
    }
    return trip;
}

Result<Trips> Trips::of(const std::vector<Record> &records)
{
    Trips all;
    for (const Record &record : records) {
        if (record.kind != RecordKind::Trip)
            continue;
        auto trip = Trip::read(record);
        if (!trip)
            return tl::unexpected(trip.error());
        if (trip->state == TripState::Taken) {
            const std::set<std::string> places(trip->places.begin(), trip->places.end());
            all.copies.push_back({std::move(*trip), places, {}, {}, true});
            continue;
        }
        const auto copy =
            std::find_if(all.copies.begin(), all.copies.end(),
                         [&trip](const auto &one) { return one.taken.trip == trip->trip; });
        if (copy == all.copies.end())
            continue;
        switch (trip->state) {
        case TripState::Brought:
            copy->isOut = copy->isOut && trip->goesOn;
            copy->brought.push_back(std::move(*trip));
            break;
        case TripState::Released:
            for (const std::string &place : trip->places)
                copy->places.erase(place);
            break;
        case TripState::Ended:
            copy->isOut = false;
            copy->ended = std::move(*trip);
            break;
        case TripState::Taken:
        case TripState::Along: // Of the file itself; nothing of it is asked here.
            break;
        }
    }
    return all;
}

const TravellingCopy *Trips::named(std::string_view nameOrId) const noexcept
{
    const TravellingCopy *found = nullptr;
    for (const TravellingCopy &copy : copies) {
        if (copy.taken.trip == nameOrId)
            return &copy;
        if (copy.taken.name == nameOrId && (!found || copy.isOut || !found->isOut))
            found = &copy;
    }
    return found;
}

const TravellingCopy *Trips::away(std::string_view place) const noexcept
{
    for (const TravellingCopy &copy : copies) {
        if (copy.isOut && copy.places.contains(std::string(place)))
            return &copy;
    }
    return nullptr;
}

} // namespace flarestock
