// SPDX-License-Identifier: MIT

#include "model/fluids/liquids/volatility_class.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <algorithm>
#include <cassert>
#include <string>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view volatilityCsv; // model/fluids/data/volatility.csv
}

namespace {

double pascalOf(std::string_view psi)
{
    return Measure::parse(std::string(psi) + " psi", Dimension::Pressure).value().si;
}

std::vector<VolatilityClass> readClasses()
{
    const auto rows = rowsOfTable(embedded::volatilityCsv);
    std::vector<VolatilityClass> classes;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        assert(row->size() == 6 && !row->at(4).empty() && !row->at(5).empty());
        VolatilityClass &each = classes.emplace_back();
        each.fuel = parseFluid(row->at(0)).value();
        each.name = row->at(1);
        if (!row->at(2).empty())
            each.lowPa = pascalOf(row->at(2));
        each.highPa = pascalOf(row->at(3));
        each.status = row->at(4);
        each.source = row->at(5);
    }
    return classes;
}

bool isSameWord(std::string_view left, std::string_view right)
{
    const auto lower = [](char each) {
        return each >= 'A' && each <= 'Z' ? static_cast<char>(each - 'A' + 'a') : each;
    };
    return std::equal(left.begin(), left.end(), right.begin(), right.end(),
                      [lower](char a, char b) { return lower(a) == lower(b); });
}

} // namespace

std::span<const VolatilityClass> volatilityClasses()
{
    static const auto Classes = readClasses();
    return Classes;
}

std::optional<VolatilityClass> volatilityClass(Fluid fuel, std::string_view name)
{
    for (const VolatilityClass &each : volatilityClasses()) {
        if (each.fuel == fuel && isSameWord(each.name, name))
            return each;
    }
    return std::nullopt;
}

} // namespace flarestock
