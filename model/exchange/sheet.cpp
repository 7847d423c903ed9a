// SPDX-License-Identifier: MIT

#include "model/exchange/sheet.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

std::string quoted(std::string_view text)
{
    return '"' + std::string(text) + '"';
}

} // namespace

Sheet::Sheet(const CsvTable &table, std::span<const std::string_view> headings, Problems &problems)
    : m_table(&table), m_headings(headings), m_places(headings.size())
{
    const auto fields = table.header();
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const std::string_view typed = trimmed(fields[i].text);
        const auto found =
            std::find_if(headings.begin(), headings.end(),
                         [typed](std::string_view heading) { return sameFolded(heading, typed); });
        if (found != headings.end()) {
            m_places[static_cast<std::size_t>(found - headings.begin())] = i;
        } else if (typed.empty()) {
            problems.add(table.at(fields[i], {"column " + std::to_string(i + 1) + " has no heading",
                                              "Name it, or remove the column."}));
        } else {
            problems.add(table.at(fields[i], {"there is no column " + quoted(typed) + " here",
                                              wordRemedy(typed, headings)}));
        }
    }
}

bool Sheet::require(std::initializer_list<ColumnId> columns, Problems &problems) const
{
    bool areAllThere = true;
    for (const ColumnId column : columns) {
        if (m_places[column])
            continue;
        areAllThere = false;
        problems.add(m_table->at(m_table->header().front(),
                                 {"the column " + quoted(m_headings[column]) + " is missing",
                                  "Add it to the first line."}));
    }
    return areAllThere;
}

SheetRow::Item SheetRow::cell(ColumnId column) const noexcept
{
    const auto place = m_sheet->place(column);
    if (!place)
        return {};
    const std::string_view whole = m_fields[*place].text;
    const std::string_view text = trimmed(whole);
    return {text, text.empty() ? 0 : static_cast<std::size_t>(text.data() - whole.data())};
}

std::vector<SheetRow::Item> SheetRow::items(ColumnId column) const
{
    std::vector<Item> all;
    const Item whole = cell(column);
    std::string_view rest = whole.text;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(';'), rest.size());
        const std::string_view item = trimmed(rest.substr(0, end));
        const auto within =
            whole.within + static_cast<std::size_t>(rest.data() - whole.text.data());
        if (item.empty())
            wrong(column, {"nothing stands before this semicolon", "Remove the semicolon."},
                  within + end);
        else
            all.push_back({item, within + static_cast<std::size_t>(item.data() - rest.data())});
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return all;
}

void SheetRow::wrong(ColumnId column, TextFault fault, std::size_t within) const
{
    const auto place = m_sheet->place(column);
    m_problems->add(
        m_sheet->table().at(m_fields[place.value_or(0)], std::move(fault), place ? within : 0));
}

void SheetRow::wrong(ColumnId column, TextFault fault) const
{
    wrong(column, std::move(fault), cell(column).within);
}

void SheetRow::refused(ColumnId column, const Problem &said, std::size_t within) const
{
    const std::string about =
        said.thing.empty() ? std::string(m_sheet->heading(column)) : said.thing;
    wrong(column, {about + ": " + said.wrong, said.remedy}, within);
}

std::string SheetRow::required(ColumnId column) const
{
    if (!has(column))
        wrong(column,
              {"the cell " + quoted(m_sheet->heading(column)) + " is empty", "Fill it in."});
    return std::string(text(column));
}

std::optional<Decimal> SheetRow::number(ColumnId column) const
{
    if (!has(column))
        return std::nullopt;
    auto read = Decimal::parse(text(column));
    if (read)
        return std::move(*read);
    wrong(column, {quoted(text(column)) + " is no number in " + quoted(m_sheet->heading(column)),
                   "Write digits with a decimal point, no grouping and no unit."});
    return std::nullopt;
}

std::optional<Decimal> SheetRow::numberAbove(ColumnId column, const Decimal &limit) const
{
    auto read = number(column);
    if (!read || *read > limit)
        return read;
    wrong(column, {quoted(m_sheet->heading(column)) + " is " + std::string(text(column)) +
                       ", not more than " + limit.text(),
                   "Correct the number."});
    return std::nullopt;
}

std::optional<int> SheetRow::whole(ColumnId column, int least, int most) const
{
    const auto read = number(column);
    if (!read)
        return std::nullopt;
    const auto value = read->toInt64();
    if (value && *value >= least && *value <= most)
        return static_cast<int>(*value);
    wrong(column,
          {quoted(m_sheet->heading(column)) + " is " + std::string(text(column)) +
               ", not a whole number from " + std::to_string(least) + " to " + std::to_string(most),
           "Correct the number."});
    return std::nullopt;
}

std::optional<bool> SheetRow::yesNo(ColumnId column) const
{
    static constexpr std::array<std::string_view, 2> Words = {"no", "yes"};
    const auto found = word(column, Words);
    return found ? std::optional(*found == 1) : std::nullopt;
}

std::optional<double> SheetRow::measure(ColumnId column, Dimension dimension) const
{
    if (!has(column))
        return std::nullopt;
    const auto read = Measure::parse(text(column), dimension);
    if (read)
        return read->si;
    refused(column, read.error(), cell(column).within);
    return std::nullopt;
}

std::optional<double> SheetRow::positive(ColumnId column, Dimension dimension) const
{
    const auto si = measure(column, dimension);
    if (!si || *si > 0)
        return si;
    wrong(column, {quoted(m_sheet->heading(column)) + " is " + std::string(text(column)) +
                       ", not more than zero",
                   "Correct the number."});
    return std::nullopt;
}

std::optional<std::size_t> SheetRow::word(ColumnId column,
                                          std::span<const std::string_view> words) const
{
    const std::string_view typed = text(column);
    if (typed.empty())
        return std::nullopt;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (sameFolded(words[i], typed))
            return i;
    }
    wrong(column, {quoted(typed) + " is not a word for " + quoted(m_sheet->heading(column)),
                   wordRemedy(typed, words)});
    return std::nullopt;
}

} // namespace flarestock
