// SPDX-License-Identifier: MIT

#include "model/ports/size_table.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <map>
#include <mutex>

namespace flarestock {

namespace embedded {
extern const std::string_view threadsCsv;
extern const std::string_view plainEndsCsv;
extern const std::string_view banjosCsv;
extern const std::string_view ringsCsv;
} // namespace embedded

namespace {

using Cells = std::vector<std::string_view>;

/// Our own data: a header, then cells without quotes.
template <class Row>
void eachRow(std::string_view text, Row row)
{
    bool header = true;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        auto line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (!line.empty() && !header) {
            Cells cells;
            for (std::size_t comma = 0; comma != std::string_view::npos;) {
                comma = line.find(',');
                cells.push_back(line.substr(0, comma));
                line.remove_prefix(comma == std::string_view::npos ? line.size() : comma + 1);
            }
            row(cells);
        }
        header = header && line.empty();
    }
}

double numberIn(std::string_view cell)
{
    double value = 0;
    std::from_chars(cell.data(), cell.data() + cell.size(), value, std::chars_format::fixed);
    return value;
}

Family familyIn(std::string_view word)
{
    for (std::size_t i = 0; i < FamilyCount; ++i) {
        if (text(static_cast<Family>(i)) == word)
            return static_cast<Family>(i);
    }
    assert(false && "a family of the data that has no word");
    return Family::An;
}

ThreadForm formIn(std::string_view word)
{
    if (word == "UNJ")
        return ThreadForm::UnifiedJ;
    if (word == "M")
        return ThreadForm::Metric;
    if (word == "BSP")
        return ThreadForm::Whitworth;
    return word == "NPT" || word == "NPTF" ? ThreadForm::NationalPipe : ThreadForm::Unified;
}

enum Column : std::size_t {
    FamilyColumn,
    SizeColumn,
    NameColumn,
    FormColumn,
    MajorColumn,
    PitchColumn,
    TurnsColumn,
    AngleColumn,
    TaperColumn,
    PitchDiameterColumn,
    MinorColumn,
    E0Column,
    E1Column,
    L1Column,
    L2Column,
    TubeColumn,
    SourceColumn,
    ListsColumn,
    ColumnCount,
};

SizeRow threadRow(const Cells &cells)
{
    assert(cells.size() == ColumnCount);
    const auto form = formIn(cells[FormColumn]);
    const double turns = numberIn(cells[TurnsColumn]);
    const double pitch = turns > 0 ? 25.4 / turns : numberIn(cells[PitchColumn]);
    auto thread =
        parallelThread(std::string(cells[NameColumn]), form, numberIn(cells[MajorColumn]), pitch);
    thread.tapered = cells[TaperColumn].starts_with("1:16");
    if (thread.tapered) {
        thread.pitchDiameterMm = numberIn(cells[PitchDiameterColumn]);
        thread.smallEndMm = numberIn(cells[E0Column]);
        thread.handTightMm = numberIn(cells[L1Column]);
        thread.usefulLengthMm = numberIn(cells[L2Column]);
    }
    return {familyIn(cells[FamilyColumn]),
            std::string(cells[SizeColumn]),
            thread,
            numberIn(cells[TubeColumn]),
            {},
            std::string(cells[SourceColumn])};
}

struct Table {
    std::vector<SizeRow> rows;
    std::map<std::pair<Family, std::string>, std::size_t, std::less<>> bySize;
    std::map<std::pair<Family, std::string>, SizeRow, std::less<>>
        special; ///< Made when asked for.
    std::mutex specialLock;

    Table()
    {
        eachRow(embedded::threadsCsv, [this](const Cells &cells) { add(threadRow(cells)); });
        eachRow(embedded::plainEndsCsv, [this](const Cells &cells) {
            add({familyIn(cells[0]),
                 std::string(cells[1]),
                 {},
                 numberIn(cells[2]),
                 {},
                 std::string(cells[3])});
        });
        eachRow(embedded::banjosCsv, [this](const Cells &cells) { addBanjo(cells); });
        eachRow(embedded::ringsCsv, [this](const Cells &cells) {
            const auto at = bySize.find(std::pair(familyIn(cells[0]), std::string(cells[1])));
            if (at != bySize.end())
                rows[at->second].ring = std::string(cells[2]);
        });
        assert(rows.size() > 250);
    }

    void add(SizeRow row)
    {
        bySize.emplace(std::pair(row.family, row.size), rows.size());
        rows.push_back(std::move(row));
    }

    void addBanjo(const Cells &cells)
    {
        auto thread = threadNamed(cells[2]);
        if (!thread) { // "G1/8-28": the thread of the parallel pipe port
            const auto at = bySize.find(std::pair(Family::Bspp, std::string(cells[1].substr(1))));
            assert(at != bySize.end());
            thread = rows[at->second].thread;
        }
        add({Family::Banjo, std::string(cells[1]), thread, 0, {}, std::string(cells[3])});
    }
};

Table &table()
{
    static Table all;
    return all;
}

} // namespace

const std::vector<SizeRow> &sizeRows()
{
    return table().rows;
}

const SizeRow *findSize(Family family, std::string_view size)
{
    const auto found = table().bySize.find(std::pair(family, std::string(size)));
    return found == table().bySize.end() ? nullptr : &table().rows[found->second];
}

const SizeRow *sizeOf(const Port &port)
{
    if (const auto *row = findSize(port.family, port.size))
        return row;
    const auto blank = port.size.rfind(' ');
    if (port.family != Family::InvertedFlare || blank == std::string::npos)
        return nullptr;
    // "3/16 M10x1.0"; of "3/16 1 1/16-12" the tube is what stands before the first blank.
    const auto tube = port.size.substr(0, port.size.find(' '));
    const auto *usual = findSize(Family::InvertedFlare, tube);
    const auto thread = threadNamed(std::string_view(port.size).substr(tube.size() + 1));
    if (usual == nullptr || !thread)
        return nullptr;
    const std::scoped_lock lock(table().specialLock);
    auto &special = table().special;
    const auto [at, isNew] = special.try_emplace(std::pair(port.family, port.size), *usual);
    if (isNew) {
        at->second.size = port.size;
        at->second.thread = thread;
        at->second.source = "SAE J512 inverted flare on another nut thread: common practice of "
                            "master cylinders, no source";
    }
    return &at->second;
}

} // namespace flarestock
