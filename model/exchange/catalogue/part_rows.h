// SPDX-License-Identifier: MIT
//
// A row of a parts file as a part, and the numbers of other parts that it names.

#pragma once

#include "model/exchange/catalogue/port_cells.h"

#include <functional>

namespace flarestock {

/// Where a part stands, to say so when its number comes again and when a reference is wrong.
struct PartOrigin {
    const Sheet *sheet = nullptr;
    std::size_t row = 0;
    Kind kind = Kind::Adapter;
};

/// Folded part number to where it stands.
using PartOrigins = std::unordered_map<std::string, PartOrigin>;

/// The parts of a sheet. A row with a problem is left out, but its number is known afterwards, so
/// that a row that names it is not blamed.
class PartRows {
public:
    PartRows(Problems &problems, PartOrigins &origins) : m_problems(problems), m_origins(origins) {}

    /// `sheet` must outlive the origins.
    void read(const Sheet &sheet, std::vector<Part> &parts);

private:
    [[nodiscard]] std::optional<Kind> readKind(const SheetRow &row) const;
    [[nodiscard]] Part readPart(const SheetRow &row, Kind kind);
    void remember(const SheetRow &row, const PartOrigin &origin);

    Problems &m_problems;
    PartOrigins &m_origins;
    PortMemory m_ports;
};

/// The kind of a part by its number, case folded; nothing where there is none.
using KindOfPart = std::function<std::optional<Kind>(std::string_view number)>;

/// Adds a problem for each box, fitting, substitute or element that names no part, the part itself,
/// or an element that is none.
void checkReferences(const Sheet &sheet, const KindOfPart &kindOf, Problems &problems);

} // namespace flarestock
