// SPDX-License-Identifier: MIT

#include "app/sheet/due_rows.h"

#include "app/garage/due_words.h"

#include <algorithm>

namespace flarestock {

namespace {

std::string pieceOf(const DueLine &line)
{
    const LotKey &piece = line.work.piece->piece;
    return piece.lot.empty() ? piece.part : piece.part + " " + piece.lot;
}

} // namespace

Workbook dueRows(const std::vector<DueLine> &lines, const std::string &today)
{
    using Kind = WorkbookColumn::Kind;
    Workbook sheet{"due", today, 0, {}, {}, {}};
    sheet.columns = {
        {"when", Kind::Text, 8},      {"car", Kind::Text, 12},   {"do", Kind::Text, 9},
        {"position", Kind::Text, 28}, {"piece", Kind::Text, 18}, {"by", Kind::Text, 11},
        {"before", Kind::Text, 18},   {"why", Kind::Text, 44},   {"takes", Kind::Text, 30}};
    for (const DueLine &line : lines)
        sheet.rows.push_back({std::string(text(line.work.standing)), line.car,
                              std::string(doText(line.work.todo)), line.said, pieceOf(line),
                              line.by, line.work.before, whyText(line.work), partsText(line)});
    return sheet;
}

PaperWords duePaper(const std::vector<DueLine> &lines, const std::string &today, PaperWords paper)
{
    paper.title = "What is due";
    paper.made = today;
    paper.facts = {{"As of", today}};
    paper.foot.clear(); // The letterhead's is for who gets a letter.
    paper.columns = {{"", 6},       {"Car", 12}, {"Do", 10},   {"Position", 30},
                     {"Piece", 22}, {"By", 16},  {"Takes", 24}};
    for (const DueLine &line : lines) {
        std::string by = line.by.empty() ? "-" : line.by;
        if (line.work.standing >= DueStanding::Now)
            by = std::string(text(line.work.standing)) + "\n" + by;
        paper.rows.push_back({"[   ]", line.car, std::string(doText(line.work.todo)),
                              line.said + "\n" + whyText(line.work), pieceOf(line), by,
                              partsText(line)});
    }
    if (lines.empty())
        paper.rows.push_back({"", "", "", "nothing is due", "", "", ""});
    const auto due =
        std::count_if(lines.begin(), lines.end(), [](const DueLine &line) { return line.isDue(); });
    paper.sums = {{"To be done", std::to_string(due)}};
    return paper;
}

} // namespace flarestock
