// SPDX-License-Identifier: MIT

#include "app/sheet/load_rows.h"

#include "app/stockroom/asked.h"

namespace flarestock {

namespace {

constexpr const char *TickBox = "[   ]";

/// One thing that a hand carries, or that nobody has.
struct Carried {
    const LoadLine *line = nullptr;
    std::int64_t quantity = 0;
    std::string from; ///< Empty: it is to be bought.
    std::string lot;
};

std::vector<Carried> carriedOf(const std::vector<LoadLine> &lines)
{
    std::vector<Carried> all;
    for (const LoadLine &line : lines) {
        for (const LoadTake &take : line.bring)
            all.push_back({&line, take.quantity, take.from.place, take.from.lot});
        if (line.toBuy > 0)
            all.push_back({&line, line.toBuy, {}, {}});
    }
    return all;
}

std::string withLot(const std::string &what, const std::string &lot)
{
    return lot.empty() ? what : what + "\n" + lot;
}

PaperWords begun(const char *title, const std::string &day, PaperWords paper)
{
    paper.title = title;
    paper.made = day;
    paper.facts = {{"As of", day}};
    paper.foot.clear(); // The letterhead's is for who gets a letter.
    return paper;
}

} // namespace

Workbook loadRows(const std::vector<LoadLine> &lines, const std::string &day)
{
    using Kind = WorkbookColumn::Kind;
    Workbook sheet{"load", day, 0, {}, {}, {}};
    sheet.columns = {{"drawer", Kind::Text, 12},      {"part", Kind::Text, 16},
                     {"description", Kind::Text, 40}, {"quantity", Kind::Quantity, 9},
                     {"unit", Kind::Text, 6},         {"from", Kind::Text, 12},
                     {"lot", Kind::Text, 16}};
    for (const Carried &one : carriedOf(lines)) {
        const Part &part = *one.line->part;
        sheet.rows.push_back({one.line->keeping.place, part.number, part.description,
                              amountText(one.quantity, part), std::string(text(part.unit)),
                              one.from.empty() ? "to buy" : one.from, one.lot});
    }
    return sheet;
}

Workbook unloadRows(const std::vector<UnloadLine> &lines, const std::string &day)
{
    using Kind = WorkbookColumn::Kind;
    Workbook sheet{"unload", day, 0, {}, {}, {}};
    sheet.columns = {{"drawer", Kind::Text, 12},      {"part", Kind::Text, 16},
                     {"description", Kind::Text, 40}, {"quantity", Kind::Quantity, 9},
                     {"unit", Kind::Text, 6},         {"why", Kind::Text, 24},
                     {"to", Kind::Text, 12},          {"lot", Kind::Text, 16}};
    for (const UnloadLine &line : lines)
        sheet.rows.push_back({line.take.from.place, line.part->number, line.part->description,
                              amountText(line.take.quantity, *line.part),
                              std::string(text(line.part->unit)), std::string(text(line.why)),
                              line.home, line.take.from.lot});
    return sheet;
}

PaperWords loadPaper(const std::vector<LoadLine> &lines, const std::string &day, PaperWords paper)
{
    paper = begun("Load list of the trailer", day, std::move(paper));
    paper.columns = {{"", 6},      {"Drawer", 14},      {"Part", 18},
                     {"What", 34}, {"Bring", 12, true}, {"From", 14}};
    std::size_t toBuy = 0;
    for (const Carried &one : carriedOf(lines)) {
        const Part &part = *one.line->part;
        toBuy += one.from.empty() ? 1 : 0;
        paper.rows.push_back({one.from.empty() ? "" : TickBox, one.line->keeping.place, part.number,
                              withLot(part.description, one.lot), spoken(one.quantity, part),
                              one.from.empty() ? "to buy" : one.from});
    }
    if (paper.rows.empty())
        paper.rows.push_back({"", "", "", "every drawer holds what it is to hold", "", ""});
    paper.sums = {{"To buy", std::to_string(toBuy)}};
    return paper;
}

PaperWords unloadPaper(const std::vector<UnloadLine> &lines, const std::string &day,
                       PaperWords paper)
{
    paper = begun("To take out of the trailer", day, std::move(paper));
    paper.columns = {{"", 6},    {"Drawer", 14}, {"Part", 18}, {"What", 32}, {"Take", 12, true},
                     {"To", 12}, {"Why", 24}};
    for (const UnloadLine &line : lines)
        paper.rows.push_back({TickBox, line.take.from.place, line.part->number,
                              withLot(line.part->description, line.take.from.lot),
                              spoken(line.take.quantity, *line.part),
                              line.home.empty() ? "-" : line.home, std::string(text(line.why))});
    if (lines.empty())
        paper.rows.push_back({"", "", "", "nothing lies where it does not belong", "", "", ""});
    paper.sums = {{"To take out", std::to_string(lines.size())}};
    return paper;
}

} // namespace flarestock
