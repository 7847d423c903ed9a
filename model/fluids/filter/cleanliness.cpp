// SPDX-License-Identifier: MIT

#include "model/fluids/filter/cleanliness.h"

#include "model/fluids/bounds.h"
#include "model/fluids/table_cells.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <utility>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view cleanlinessCsv; // model/fluids/data/cleanliness.csv
}

namespace {

constexpr std::string_view AtLeast = "≥";

/// The upper ends of the scale numbers from 0.
std::vector<double> readEnds()
{
    const auto rows = rowsOfTable(embedded::cleanlinessCsv);
    std::vector<double> ends;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row)
        ends.push_back(numberIn(row->at(2)));
    assert(ends.size() == ScaleNumberMost + 1 && std::is_sorted(ends.begin(), ends.end()));
    return ends;
}

/// The part of `rest` up to the next stroke, which it loses.
std::string_view takePart(std::string_view &rest)
{
    const auto end = std::min(rest.find('/'), rest.size());
    const auto part = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    return part;
}

} // namespace

Result<int> scaleNumber(double particlesPerMl)
{
    static const auto Ends = readEnds();
    if (auto wrong = firstImpossible({{"count", particlesPerMl, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto end = std::lower_bound(Ends.begin(), Ends.end(), particlesPerMl);
    if (end == Ends.end())
        return problem("count", "is above the end of the scale",
                       "Thin the sample and count again.");
    return static_cast<int>(end - Ends.begin());
}

std::string CleanlinessCode::text() const
{
    std::string said;
    for (std::size_t at = 0; at < scale.size(); ++at) {
        said += at > 0 ? "/" : "";
        said += atLeast[at] ? AtLeast : "";
        said += std::to_string(scale[at]);
    }
    return said;
}

bool CleanlinessCode::isAsCleanAs(const CleanlinessCode &other) const noexcept
{
    for (std::size_t at = 0; at < scale.size(); ++at) {
        if (scale[at] > other.scale[at])
            return false;
    }
    return true;
}

Result<CleanlinessCode> CleanlinessCode::parse(std::string_view text)
{
    const auto refused = problem("", quotedStart(text) + " is no ISO 4406 code",
                                 "Write three numbers that do not rise: 17/14/10.");
    CleanlinessCode code;
    std::string_view rest = text;
    for (std::size_t at = 0; at < code.scale.size(); ++at) {
        std::string_view part = takePart(rest);
        code.atLeast[at] = part.starts_with(AtLeast) || part.starts_with(">=");
        if (code.atLeast[at])
            part.remove_prefix(part.starts_with(AtLeast) ? AtLeast.size() : 2);
        const auto end = part.data() + part.size();
        const auto read = std::from_chars(part.data(), end, code.scale[at]);
        if (read.ec != std::errc() || read.ptr != end || code.scale[at] < 0 ||
            code.scale[at] > ScaleNumberMost || (at > 0 && code.scale[at] > code.scale[at - 1]))
            return refused;
    }
    if (!rest.empty() || text.ends_with('/'))
        return refused;
    return code;
}

Result<CleanlinessCode> cleanlinessCode(const ParticleCounts &counts)
{
    if (auto wrong = firstImpossible({{"volume", counts.countedMl}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (counts.at6PerMl > counts.at4PerMl || counts.at14PerMl > counts.at6PerMl)
        return problem("count", "has more large particles than small ones",
                       "Each size counts all that are larger too.");
    const std::array perMl{counts.at4PerMl, counts.at6PerMl, counts.at14PerMl};
    CleanlinessCode code;
    for (std::size_t at = 0; at < perMl.size(); ++at) {
        const auto scale = scaleNumber(perMl[at]);
        if (!scale)
            return tl::unexpected<Problem>(scale.error());
        code.scale[at] = *scale;
        code.atLeast[at] = perMl[at] * counts.countedMl < 20;
    }
    return code;
}

} // namespace flarestock
