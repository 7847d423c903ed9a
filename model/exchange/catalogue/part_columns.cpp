// SPDX-License-Identifier: MIT

#include "model/exchange/catalogue/part_columns.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

using namespace column;

constexpr std::array<std::string_view, PartColumnCount> PartHeadings = {
    "part",        "kind",        "description", "unit",         "ports",  "material",
    "seal",        "suits",       "words",       "rated",        "lowest", "highest",
    "box",         "fitting",     "substitutes", "construction", "dash",   "bore",
    "bend radius", "liner",       "conductive",  "clamped",      "fits",   "angle",
    "allowance",   "tube",        "micron",      "basis",        "beta",   "medium",
    "element",     "serviceable", "flow",        "clean loss",   "bypass", "washable",
    "curve",       "amps",        "electric",    "position",     "low",    "high",
    "designation", "crush",       "thread",      "passage",      "volume", "sock",
    "gauge",       "wide open"};

struct OfKind {
    Kind kind;
    std::array<PartColumn, 9> columns; ///< What is left over is `part`, which all kinds have.
};

constexpr std::array OfSomeKinds = {
    OfKind{Kind::Hose, {Construction, Dash, Bore, BendRadius, Liner, Conductive, Clamped}},
    OfKind{Kind::HoseEnd, {Fits, Dash, Angle, Bore, Allowance}},
    OfKind{Kind::Tubing, {Tube, Bore}},
    OfKind{Kind::Filter,
           {Micron, Basis, Beta, Medium, Element, Serviceable, Flow, CleanLoss, Bypass}},
    OfKind{Kind::Element, {Micron, Basis, Beta, Medium, Washable}},
    OfKind{Kind::Pump, {Curve, Amps, Electric, Serviceable, Position}},
    OfKind{Kind::Regulator, {Low, High, Flow, Bypass, WideOpen}},
    OfKind{Kind::Ring, {Designation}},
    OfKind{Kind::Washer, {Crush, Thread}},
    OfKind{Kind::Carburettor, {Low, High, Passage}},
    OfKind{Kind::Rail, {Low, High, Passage}},
    OfKind{Kind::Injector, {Low, High, Passage}},
    OfKind{Kind::Tank, {Volume, Sock, Micron, Basis}},
    OfKind{Kind::Wire, {Gauge}},
    OfKind{Kind::Fuse, {Amps}},
    OfKind{Kind::Relay, {Amps}},
};

using ColumnsOfKinds = std::array<std::array<bool, PartColumnCount>, KindCount>;

constexpr ColumnsOfKinds columnsOfKinds()
{
    ColumnsOfKinds has{};
    for (auto &columns : has)
        std::fill_n(columns.begin(), static_cast<std::size_t>(FirstOfSomeKinds), true);
    for (const OfKind &some : OfSomeKinds) {
        for (const PartColumn of : some.columns)
            has[static_cast<std::size_t>(some.kind)][of] = true;
    }
    return has;
}

} // namespace

std::span<const std::string_view> partHeadings() noexcept
{
    return PartHeadings;
}

bool hasColumn(Kind kind, ColumnId column) noexcept
{
    static constexpr ColumnsOfKinds Has = columnsOfKinds();
    return Has[static_cast<std::size_t>(kind)][column];
}

} // namespace flarestock
