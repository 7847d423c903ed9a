// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/hoses_for_runs.h"

#include "model/exact/case_fold.h"

#include <algorithm>
#include <cstdlib>

namespace flarestock {

namespace {

/// The hose end that closes a joint; nullptr where none does.
const Part *endOf(const Expansion &expansion, const std::string &id)
{
    const PlacedJoint *joint = expansion.joint(id);
    if (!joint || !joint->way || joint->way->pieces.empty())
        return nullptr;
    const Part *last = joint->way->pieces.back().part;
    return last->kind == Kind::HoseEnd ? last : nullptr;
}

bool hasEnds(const MadeHose &hose, const Part &a, const Part &b)
{
    const auto are = [&](const std::string &start, const std::string &far) {
        return sameFolded(start, a.number) && sameFolded(far, b.number);
    };
    return are(hose.startEnd, hose.farEnd) || are(hose.farEnd, hose.startEnd);
}

} // namespace

std::int64_t usualHoseTolerance() noexcept
{
    return 203'200 / 4; // 25.4 mm are 203,200 of 125 nm.
}

std::vector<HoseForRun> hosesForRuns(const Expansion &expansion, const Workshop &workshop,
                                     std::int64_t within, std::string_view day)
{
    std::vector<HoseForRun> found;
    const auto lines = stockLines(workshop, {}, day);
    for (const PlacedRun &run : expansion.runs) {
        if (!run.line || run.joints.size() != 2)
            continue;
        const Part *start = endOf(expansion, run.joints.front());
        const Part *far = endOf(expansion, run.joints.back());
        const auto length = run.length.smallest();
        if (!start || !far || !length)
            continue;
        const auto begin = static_cast<std::ptrdiff_t>(found.size());
        for (const StockLine &line : lines) {
            const auto made = workshop.notes.hoses.find(line.key.part);
            if (made == workshop.notes.hoses.end() || line.free <= 0 ||
                !sameFolded(made->second.hose, run.line->number) ||
                !hasEnds(made->second, *start, *far) ||
                std::abs(made->second.cut - *length) > within)
                continue;
            found.push_back({run.id, made->second.tag, line.key.place, made->second.clocking,
                             made->second.cut - *length, run.line});
        }
        std::stable_sort(found.begin() + begin, found.end(),
                         [](const HoseForRun &a, const HoseForRun &b) {
                             return std::abs(a.longer) < std::abs(b.longer);
                         });
    }
    return found;
}

} // namespace flarestock
