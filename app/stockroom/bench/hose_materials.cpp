// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/hose_materials.h"

#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

using Counts = std::map<const Part *, std::int64_t>;

Result<void> addCount(Counts &counts, const std::string &number, const Decimal &count,
                      const Workshop &workshop)
{
    const auto part = partAsked(number, workshop.catalogue);
    if (!part)
        return tl::unexpected(part.error());
    const auto pieces = Quantity{count, (*part)->unit}.smallest();
    if (!pieces)
        return tl::unexpected(pieces.error());
    if (isLength((*part)->unit) || *pieces <= 0)
        return problem(number, "is no piece that goes onto a hose", "Name pieces: SL-8=2.");
    counts[*part] += *pieces;
    return {};
}

/// "SL-8=2"; "SL-8" is one.
Result<void> addAsked(Counts &counts, const std::string &typed, const Workshop &workshop)
{
    const auto equals = typed.find('=');
    if (equals == std::string::npos)
        return addCount(counts, typed, 1, workshop);
    const auto count = Decimal::parse(typed.substr(equals + 1));
    if (!count)
        return tl::unexpected(count.error());
    return addCount(counts, typed.substr(0, equals), *count, workshop);
}

} // namespace

Result<const Part *> hoseEndAsked(const std::string &typed, const Part &hose,
                                  const Workshop &workshop)
{
    auto part = partAsked(typed, workshop.catalogue);
    if (!part)
        return part;
    const auto *end = (*part)->as<HoseEndFacts>();
    const auto *line = hose.as<HoseFacts>();
    if (!end)
        return problem((*part)->number, "is no hose end", "Name one: --start, --end.");
    const bool fitting =
        line && end->hoseDash == line->dash &&
        std::any_of(end->constructions.begin(), end->constructions.end(),
                    [&](const std::string &one) { return sameFolded(one, line->construction); });
    if (!fitting)
        return problem((*part)->number, "does not fit hose " + hose.number,
                       "Take an end of that construction and size.");
    return part;
}

Result<HoseMaterials> hoseMaterials(const MakingWords &asked, const Workshop &workshop)
{
    HoseMaterials made;
    const auto hose = partAsked(asked.hose, workshop.catalogue);
    if (!hose)
        return tl::unexpected(hose.error());
    if (!(*hose)->as<HoseFacts>())
        return problem((*hose)->number, "is no hose", "Name the hose that it is made of.");
    const auto start = hoseEndAsked(asked.startEnd, **hose, workshop);
    if (!start)
        return tl::unexpected(start.error());
    const auto far = hoseEndAsked(asked.farEnd, **hose, workshop);
    if (!far)
        return tl::unexpected(far.error());
    made.hose = *hose;
    made.start = *start;
    made.far = *far;
    for (const Part *end : {*start, *far}) {
        ++made.pieces[end];
        for (const PartCount &need : end->fitting) {
            if (const auto added = addCount(made.pieces, need.part, need.count, workshop); !added)
                return tl::unexpected(added.error());
        }
    }
    for (const std::string &typed : asked.with) {
        if (const auto added = addAsked(made.pieces, typed, workshop); !added)
            return tl::unexpected(added.error());
    }
    return made;
}

} // namespace flarestock
