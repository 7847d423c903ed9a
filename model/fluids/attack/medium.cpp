// SPDX-License-Identifier: MIT

#include "model/fluids/attack/medium.h"

#include "model/exact/case_fold.h"
#include "model/fluids/table_cells.h"

#include <cassert>
#include <map>

namespace flarestock {

namespace embedded {
extern const std::string_view mediaCsv; // model/fluids/data/media.csv
}

namespace {

struct Medium {
    std::map<Fluid, Bears> stands;
    MediumCare care;
};

Bears bearsOf(std::string_view word)
{
    assert(word == "good" || word == "fair" || word == "never");
    if (word == "good")
        return Bears::Good;
    return word == "fair" ? Bears::Fair : Bears::Never;
}

std::map<std::string, Medium, std::less<>> readMedia()
{
    constexpr std::size_t AfterFluids = 3; // care, what is said of it, source
    const auto rows = rowsOfTable(embedded::mediaCsv);
    std::map<std::string, Medium, std::less<>> media;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        Medium medium;
        const std::size_t fluids = row->size() - AfterFluids;
        for (std::size_t at = 1; at < fluids; ++at) {
            const auto fluid = parseFluid(rows.front().at(at));
            assert(fluid.has_value());
            medium.stands.emplace(*fluid, bearsOf(row->at(at)));
        }
        medium.care = {row->at(fluids) == "washed", row->at(fluids + 1), row->at(fluids + 2)};
        media.emplace(row->front(), std::move(medium));
    }
    return media;
}

const Medium *find(std::string_view word)
{
    static const auto Media = readMedia();
    const auto found = Media.find(folded(word));
    return found == Media.end() ? nullptr : &found->second;
}

} // namespace

Compatibility mediumIn(Fluid fluid, std::string_view word)
{
    const auto *medium = find(word);
    if (medium == nullptr)
        return {};
    const auto stands = medium->stands.find(fluid);
    if (stands == medium->stands.end())
        return {};
    return {stands->second, medium->care.source};
}

MediumCare careOf(std::string_view word)
{
    const auto *medium = find(word);
    return medium == nullptr ? MediumCare{} : medium->care;
}

} // namespace flarestock
