// SPDX-License-Identifier: MIT

#include "model/exchange/catalogue/part_rows.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/exchange/catalogue/fact_cells.h"
#include "model/exchange/catalogue/part_columns.h"
#include "model/fluids/compatibility.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

using namespace column;

constexpr double KelvinOfCelsiusZero = 273.15;

/// "2 x BR-10" cut into count and part; the count is 1 where none is written.
struct CountTexts {
    SheetRow::Item count;
    SheetRow::Item part;
};

CountTexts countTexts(const SheetRow::Item &item)
{
    for (const std::string_view times : {"x", "X", "×"}) {
        const std::size_t digits =
            std::min(item.text.find_first_not_of("0123456789."), item.text.size());
        std::string_view rest = trimmed(item.text.substr(digits));
        if (digits == 0 || !rest.starts_with(times))
            continue;
        rest.remove_prefix(times.size());
        // "2 x BR-10" and "2x BR-10" count; "2xl" is a part number.
        if (rest.empty() || rest.front() != ' ')
            continue;
        rest = trimmed(rest);
        const auto at = static_cast<std::size_t>(rest.data() - item.text.data());
        return {{item.text.substr(0, digits), item.within}, {rest, item.within + at}};
    }
    return {{"1", item.within}, item};
}

std::vector<PartCount> readCounts(const SheetRow &row, ColumnId at)
{
    std::vector<PartCount> counts;
    if (!row.has(at))
        return counts;
    for (const SheetRow::Item &item : row.items(at)) {
        const CountTexts texts = countTexts(item);
        const auto count = Decimal::parse(texts.count.text);
        if (count && count->sign() > 0)
            counts.push_back({std::string(texts.part.text), *count});
        else
            row.wrong(at,
                      {'"' + std::string(texts.count.text) + "\" is no count",
                       "Write for example 2 x BR-10."},
                      texts.count.within);
    }
    return counts;
}

std::vector<std::string> readTexts(const SheetRow &row, ColumnId at)
{
    std::vector<std::string> texts;
    if (row.has(at)) {
        for (const SheetRow::Item &item : row.items(at))
            texts.emplace_back(item.text);
    }
    return texts;
}

std::vector<Fluid> readFluids(const SheetRow &row)
{
    std::vector<Fluid> fluids;
    if (!row.has(Suits))
        return fluids;
    for (const SheetRow::Item &item : row.items(Suits)) {
        if (const auto fluid = parseFluid(item.text))
            fluids.push_back(*fluid);
        else
            row.refused(Suits, fluid.error(), item.within);
    }
    return fluids;
}

Unit readUnit(const SheetRow &row, Kind kind)
{
    static constexpr std::array<std::string_view, 3> Words = {"each", "in", "mm"};
    static constexpr std::array Units = {Unit::Each, Unit::Inch, Unit::Millimetre};
    const auto word = row.word(UnitWord, Words);
    const Unit unit = word ? Units[*word] : Unit::Each;
    const bool isCut = kind == Kind::Hose || kind == Kind::Tubing;
    if (isCut && unit == Unit::Each && (word || !row.has(UnitWord)))
        row.wrong(UnitWord,
                  {"a " + std::string(text(kind)) + " is cut, so it is counted in a length",
                   "Write in or mm under unit."});
    return unit;
}

std::string readSeal(const SheetRow &row)
{
    const auto seals = sealMaterials();
    const auto seal = row.word(Seal, seals);
    return seal ? std::string(seals[*seal]) : std::string();
}

Ratings readRatings(const SheetRow &row)
{
    Ratings ratings;
    if (const auto pascal = row.positive(Rated, Dimension::Pressure))
        ratings.pressureKpa = *pascal / 1000;
    const auto celsius = [&row](ColumnId at) -> std::optional<double> {
        const auto kelvin = row.measure(at, Dimension::Temperature);
        return kelvin ? std::optional(*kelvin - KelvinOfCelsiusZero) : std::nullopt;
    };
    ratings.lowC = celsius(Lowest);
    ratings.highC = celsius(Highest);
    if (ratings.lowC && ratings.highC && *ratings.lowC >= *ratings.highC)
        row.wrong(Lowest, {"the lowest temperature is not below the highest", "Exchange them."});
    return ratings;
}

void checkNumber(const SheetRow &row, std::string_view number)
{
    // Lists of part numbers are written with these between them.
    for (const std::string_view mark : {";", " + ", "\n", "\""}) {
        if (const auto at = number.find(mark); at != std::string_view::npos)
            row.wrong(column::Part,
                      {"a part number must not hold a semicolon, a quote, a line end or \" + \"",
                       "Choose another number."},
                      row.cell(column::Part).within + at);
    }
}

} // namespace

std::optional<Kind> PartRows::readKind(const SheetRow &row) const
{
    if (!row.has(KindWord)) {
        (void)row.required(KindWord);
        return std::nullopt;
    }
    const auto kind = parseKind(row.text(KindWord));
    if (kind)
        return *kind;
    row.wrong(KindWord, {kind.error().wrong, kind.error().remedy});
    return std::nullopt;
}

flarestock::Part PartRows::readPart(const SheetRow &row, Kind kind)
{
    flarestock::Part part;
    part.number = row.required(column::Part);
    checkNumber(row, part.number);
    part.description = row.required(Description);
    part.kind = kind;
    part.unit = readUnit(row, kind);
    part.ports = readPorts(row, m_ports);
    part.facts = readFacts(row, kind);
    checkPorts(row, part);
    part.ratings = readRatings(row);
    part.material = row.text(Material);
    part.seal = readSeal(row);
    part.suits = readFluids(row);
    part.words = readTexts(row, Words);
    part.box = readCounts(row, Box);
    part.fitting = readCounts(row, Fitting);
    part.substitutes = readTexts(row, Substitutes);
    part.consumed = kind != Kind::Tool;
    return part;
}

void PartRows::remember(const SheetRow &row, const PartOrigin &origin)
{
    const auto [known, isNew] = m_origins.emplace(folded(row.text(column::Part)), origin);
    if (isNew || known->first.empty())
        return;
    const CsvTable &table = known->second.sheet->table();
    const Problem before = table.at(table.record(known->second.row).front(), {});
    row.wrong(column::Part,
              {"the part number \"" + std::string(row.text(column::Part)) +
                   "\" stands already in " + table.file() + ", line " + std::to_string(before.line),
               "Give one of them another number."});
}

void PartRows::read(const Sheet &sheet, std::vector<flarestock::Part> &parts)
{
    parts.reserve(parts.size() + sheet.rowCount());
    m_origins.reserve(m_origins.size() + sheet.rowCount());
    for (std::size_t i = 0; i < sheet.rowCount() && !m_problems.isFull(); ++i) {
        const SheetRow row(sheet, i, m_problems);
        const std::size_t before = m_problems.count();
        const auto kind = readKind(row);
        remember(row, {&sheet, i, kind.value_or(Kind::Adapter)});
        if (!kind)
            continue;
        auto part = readPart(row, *kind);
        if (m_problems.count() == before)
            parts.push_back(std::move(part));
    }
}

namespace {

void checkReference(const SheetRow &row, ColumnId at, const SheetRow::Item &named,
                    const KindOfPart &kindOf)
{
    const auto kind = kindOf(named.text);
    if (!kind)
        row.wrong(at,
                  {'"' + std::string(named.text) + "\" is no part of the catalogue",
                   "Enter that part, or correct its number."},
                  named.within);
    else if (sameFolded(named.text, row.text(column::Part)))
        row.wrong(at,
                  {"the part names itself under \"" + std::string(partHeadings()[at]) + '"',
                   "Name another part, or none."},
                  named.within);
    else if (at == column::Element && *kind != Kind::Element)
        row.wrong(at,
                  {'"' + std::string(named.text) + "\" is a " + std::string(text(*kind)) +
                       ", not an element",
                   "Name a part of the kind element."},
                  named.within);
}

} // namespace

void checkReferences(const Sheet &sheet, const KindOfPart &kindOf, Problems &problems)
{
    for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
        const SheetRow row(sheet, i, problems);
        for (const ColumnId at : {Box, Fitting}) {
            if (!row.has(at))
                continue;
            for (const SheetRow::Item &item : row.items(at))
                checkReference(row, at, countTexts(item).part, kindOf);
        }
        if (row.has(Substitutes)) {
            for (const SheetRow::Item &item : row.items(Substitutes))
                checkReference(row, Substitutes, item, kindOf);
        }
        if (row.has(column::Element))
            checkReference(row, column::Element, row.cell(column::Element), kindOf);
    }
}

} // namespace flarestock
