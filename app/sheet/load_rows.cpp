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

std::string daysSaid(const Event &event, const Speech &speech)
{
    return event.firstDay == event.lastDay
               ? speech.day(event.firstDay)
               : speech.say("%1 to %2", {speech.day(event.firstDay), speech.day(event.lastDay)});
}

/// For which event it is, or as of which day.
void beginLoad(PaperWords &paper, const LoadFor &what)
{
    const Speech &speech = *paper.speech;
    paper.made = what.day;
    if (what.event != nullptr)
        paper.facts = {{speech.say("For"), what.event->title},
                       {speech.say("When"), daysSaid(*what.event, speech)}};
    else
        paper.facts = {{speech.say("As of"), speech.day(what.day)}};
    paper.foot.clear(); // The letterhead's is for who gets a letter.
}

std::string amountOf(std::int64_t smallest, const Part &part, const Speech &speech)
{
    return speech.amount(Quantity::ofSmallest(smallest, part.unit));
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

PaperWords loadPaper(const std::vector<LoadLine> &lines, const LoadFor &what, PaperWords paper)
{
    beginLoad(paper, what);
    const Speech &speech = *paper.speech;
    paper.title = speech.say("Load list of the trailer");
    paper.columns = {{"", 6},
                     {speech.say("Drawer"), 14},
                     {speech.say("Part"), 18},
                     {speech.say("What"), 34},
                     {speech.say("Bring"), 14, true},
                     {speech.say("From"), 14}};
    std::size_t toBuy = 0;
    for (const Carried &one : carriedOf(lines)) {
        const Part &part = *one.line->part;
        toBuy += one.from.empty() ? 1 : 0;
        paper.rows.push_back({one.from.empty() ? "" : TickBox, one.line->keeping.place, part.number,
                              withLot(part.description, one.lot),
                              amountOf(one.quantity, part, speech),
                              one.from.empty() ? speech.say("to buy") : one.from});
    }
    if (paper.rows.empty())
        paper.rows.push_back(
            {"", "", "", speech.say("every drawer holds what it is to hold"), "", ""});
    paper.sums = {{speech.say("To buy"), std::to_string(toBuy)}};
    return paper;
}

PaperWords unloadPaper(const std::vector<UnloadLine> &lines, const LoadFor &what, PaperWords paper)
{
    beginLoad(paper, what);
    const Speech &speech = *paper.speech;
    paper.title = speech.say("To take out of the trailer");
    paper.columns = {{"", 6},
                     {speech.say("Drawer"), 14},
                     {speech.say("Part"), 18},
                     {speech.say("What"), 32},
                     {speech.say("Take"), 14, true},
                     {speech.say("Into"), 12},
                     {speech.say("Why"), 24}};
    for (const UnloadLine &line : lines)
        paper.rows.push_back({TickBox, line.take.from.place, line.part->number,
                              withLot(line.part->description, line.take.from.lot),
                              amountOf(line.take.quantity, *line.part, speech),
                              line.home.empty() ? "-" : line.home, speech.word(text(line.why))});
    if (lines.empty())
        paper.rows.push_back(
            {"", "", "", speech.say("nothing lies where it does not belong"), "", "", ""});
    paper.sums = {{speech.say("To take out"), std::to_string(lines.size())}};
    return paper;
}

} // namespace flarestock
