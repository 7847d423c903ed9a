// SPDX-License-Identifier: MIT
//
// The columns of a parts file, and which kinds of parts have them (demo-data/README.md).

#pragma once

#include "model/exchange/sheet.h"
#include "model/parts/kind.h"

namespace flarestock::column {

enum PartColumn : ColumnId {
    Part,
    KindWord,
    Description,
    UnitWord,
    Ports,
    Material,
    Seal,
    Suits,
    Words,
    Rated,
    Lowest,
    Highest,
    Box,
    Fitting,
    Substitutes,
    FirstOfSomeKinds,
    Construction = FirstOfSomeKinds,
    Dash,
    Bore,
    BendRadius,
    Liner,
    Conductive,
    Clamped,
    Fits,
    Angle,
    Allowance,
    Tube,
    Micron,
    Basis,
    Beta,
    Medium,
    Element,
    Serviceable,
    Flow,
    CleanLoss,
    Bypass,
    Washable,
    Curve,
    Amps,
    Electric,
    Position,
    Low,
    High,
    Designation,
    Crush,
    Thread,
    Passage,
    Volume,
    Sock,
    Gauge,
    WideOpen,
    PartColumnCount
};

} // namespace flarestock::column

namespace flarestock {

[[nodiscard]] std::span<const std::string_view> partHeadings() noexcept;
/// Whether parts of this kind have this column.
[[nodiscard]] bool hasColumn(Kind kind, ColumnId column) noexcept;

} // namespace flarestock
