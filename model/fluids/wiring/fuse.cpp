// SPDX-License-Identifier: MIT

#include "model/fluids/wiring/fuse.h"

#include "model/fluids/bounds.h"
#include "model/fluids/table_cells.h"

#include <array>
#include <map>
#include <utility>

namespace flarestock {

namespace embedded {
extern const std::string_view wiresCsv; // model/fluids/data/wires.csv
}

namespace {

constexpr double FootM = 0.3048;

std::optional<double> numberOf(std::string_view cell)
{
    return cell.empty() ? std::nullopt : std::optional(numberIn(cell));
}

std::map<int, WireLimit> readWires()
{
    const auto rows = rowsOfTable(embedded::wiresCsv);
    std::map<int, WireLimit> wires;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        WireLimit limit;
        if (const auto ohmPerFoot = numberOf(row->at(1)))
            limit.ohmPerM = *ohmPerFoot / FootM;
        limit.breakerA = numberOf(row->at(2));
        limit.fuseA = numberOf(row->at(3)).value();
        limit.source = "FAA AC 43.13-1B, table 11-3, copper";
        wires.emplace(static_cast<int>(numberOf(row->at(0)).value()), limit);
    }
    return wires;
}

} // namespace

Result<WireLimit> wireLimit(int gauge)
{
    static const auto Wires = readWires();
    const auto found = Wires.find(gauge);
    if (found == Wires.end())
        return problem("wire", "has no limit in the table for that gauge",
                       "Choose an even gauge from 22 to 2, or 1 or 1/0.");
    return found->second;
}

std::span<const double> bladeFuses() noexcept
{
    static constexpr std::array Amperes{3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0};
    return Amperes;
}

Result<FuseWindow> fuseWindow(int gauge, double amperes)
{
    if (auto wrong = firstImpossible({{"current", amperes}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto limit = wireLimit(gauge);
    if (!limit)
        return tl::unexpected<Problem>(limit.error());
    FuseWindow window{1.25 * amperes, limit->fuseA, std::nullopt};
    for (const double fuse : bladeFuses()) {
        if (fuse >= window.fromA && fuse <= window.toA) {
            window.fuseA = fuse;
            break;
        }
    }
    return window;
}

} // namespace flarestock
