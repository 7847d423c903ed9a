// SPDX-License-Identifier: MIT

#include "model/parts/cutting_plan/cut_plan.h"

#include "model/parts/cutting_plan/cut_choice.h"

#include <array>
#include <cassert>
#include <set>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 2> AimWords{"remnants", "waste"};
constexpr std::array<std::string_view, 6> MeasureWords{
    "short", "new coils", "length off whole coils", "waste", "pieces begun", "longer pieces"};

/// Of one piece that something is cut off.
std::int64_t measured(const CutTask &task, const CutPlan::FromPiece &from, CutMeasure measure)
{
    std::int64_t length = 0;
    for (const std::size_t cut : from.lengths)
        length += task.lengths[cut];
    switch (measure) {
    case CutMeasure::Coils:
        return from.piece ? 0 : 1;
    case CutMeasure::FromCoils:
        return from.had >= task.wholeCoil() ? length : 0;
    case CutMeasure::Waste:
        return from.waste;
    case CutMeasure::Started:
        return 1;
    case CutMeasure::Longer: {
        const std::set<std::int64_t> lengths(task.pieces.begin(), task.pieces.end());
        const auto shorter = from.piece ? std::distance(lengths.begin(), lengths.find(from.had))
                                        : static_cast<std::ptrdiff_t>(lengths.size());
        return shorter * static_cast<std::int64_t>(from.lengths.size());
    }
    case CutMeasure::Short:
        break;
    }
    return 0;
}

} // namespace

std::string_view text(CutAim aim) noexcept
{
    return AimWords[static_cast<std::size_t>(aim)];
}

Result<CutAim> parseCutAim(std::string_view text)
{
    for (std::size_t i = 0; i < AimWords.size(); ++i)
        if (AimWords[i] == text)
            return static_cast<CutAim>(i);
    return problem("the aim of the cuts", "\"" + std::string(text) + "\" is none",
                   "Write remnants or waste.");
}

std::string_view text(CutMeasure measure) noexcept
{
    return MeasureWords[static_cast<std::size_t>(measure)];
}

bool isLength(CutMeasure measure) noexcept
{
    return measure == CutMeasure::Short || measure == CutMeasure::FromCoils ||
           measure == CutMeasure::Waste;
}

std::vector<CutMeasure> measuresOf(CutAim aim)
{
    using enum CutMeasure;
    if (aim == CutAim::RemnantsFirst)
        return {Short, Coils, FromCoils, Waste, Longer};
    return {Short, Coils, Waste, Started, Longer};
}

std::int64_t CutPlan::coils() const noexcept
{
    return std::count_if(from.begin(), from.end(),
                         [](const FromPiece &one) { return !one.piece.has_value(); });
}

std::int64_t CutPlan::waste() const noexcept
{
    std::int64_t sum = 0;
    for (const FromPiece &one : from)
        sum += one.waste;
    return sum;
}

std::int64_t CutPlan::lengthToBuy(const CutTask &task) const
{
    if (lacking.empty())
        return 0;
    std::int64_t sum = -task.kerf;
    for (const std::size_t length : lacking)
        sum += task.lengths[length] + task.kerf;
    return sum;
}

std::vector<std::int64_t> CutPlan::measured(const CutTask &task, CutAim aim) const
{
    std::vector<std::int64_t> all;
    for (const CutMeasure measure : measuresOf(aim)) {
        std::int64_t sum = 0;
        for (const FromPiece &one : from)
            sum += flarestock::measured(task, one, measure);
        if (measure == CutMeasure::Short)
            for (const std::size_t length : lacking)
                sum += task.lengths[length];
        all.push_back(sum);
    }
    return all;
}

CutPlan planCuts(const CutTask &task, CutAim aim, std::chrono::milliseconds within)
{
    const auto isLength = [](std::int64_t length) { return length > 0 && length <= CutLengthMost; };
    assert(std::all_of(task.pieces.begin(), task.pieces.end(), isLength));
    assert(std::all_of(task.lengths.begin(), task.lengths.end(), isLength));
    assert(task.kerf >= 0 && task.leastUseful >= 0 && (!task.coil || isLength(*task.coil)));
    return CutChoice(task, aim).best(within);
}

} // namespace flarestock
