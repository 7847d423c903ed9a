// SPDX-License-Identifier: MIT

#include "model/fluids/filter/sieve.h"

#include "model/fluids/table_cells.h"

#include <cassert>
#include <string_view>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view sievesCsv; // model/fluids/data/sieves.csv
}

namespace {

std::vector<Sieve> readSieves()
{
    const auto rows = rowsOfTable(embedded::sievesCsv);
    std::vector<Sieve> sieves;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        const auto number = [&row](std::size_t cell) { return numberIn(row->at(cell)); };
        sieves.push_back({static_cast<int>(number(0)), number(1)});
        assert(sieves.size() < 2 || sieves.back().openingUm < sieves[sieves.size() - 2].openingUm);
    }
    return sieves;
}

} // namespace

std::span<const Sieve> sieves()
{
    static const auto Sieves = readSieves();
    return Sieves;
}

std::optional<double> sieveOpeningUm(int mesh)
{
    for (const Sieve &each : sieves()) {
        if (each.mesh == mesh)
            return each.openingUm;
    }
    return std::nullopt;
}

std::optional<Sieve> sieveHolding(double micron)
{
    for (const Sieve &each : sieves()) {
        if (each.openingUm <= micron)
            return each;
    }
    return std::nullopt;
}

} // namespace flarestock
