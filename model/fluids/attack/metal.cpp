// SPDX-License-Identifier: MIT

#include "model/fluids/attack/metal.h"

#include "model/exact/case_fold.h"
#include "model/fluids/table_cells.h"

#include <cassert>
#include <map>
#include <string>
#include <utility>

namespace flarestock {

namespace embedded {
extern const std::string_view metalsCsv; // model/fluids/data/metals.csv
}

namespace {

using Pair = std::pair<std::string, Fluid>;

std::map<Pair, MetalWear> readMetals()
{
    const auto rows = rowsOfTable(embedded::metalsCsv);
    std::map<Pair, MetalWear> metals;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        const auto fluid = parseFluid(row->at(1));
        assert(fluid.has_value() && (row->at(2) == "slowly" || row->at(2) == "badly"));
        metals.emplace(Pair{std::string(row->at(0)), *fluid},
                       MetalWear{row->at(2) == "slowly" ? Wears::Slowly : Wears::Badly, row->at(3),
                                 row->at(4)});
    }
    return metals;
}

} // namespace

MetalWear metalIn(Fluid fluid, std::string_view metal)
{
    static const auto Metals = readMetals();
    const auto found = Metals.find(Pair{folded(metal), fluid});
    return found == Metals.end() ? MetalWear{} : found->second;
}

} // namespace flarestock
