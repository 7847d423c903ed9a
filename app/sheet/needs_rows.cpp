// SPDX-License-Identifier: MIT

#include "app/sheet/needs_rows.h"

namespace flarestock {

namespace {

std::string said(const Decimal &number)
{
    return number.stripped().text();
}

std::string spoken(const Decimal &amount, const NeedLine &line)
{
    return Quantity{amount, line.part->unit}.spoken();
}

} // namespace

std::string commas(const std::vector<std::string> &words)
{
    std::string all;
    for (const std::string &word : words)
        all += (all.empty() ? "" : ", ") + word;
    return all;
}

std::string comingText(const std::vector<NeedLine::Coming> &coming)
{
    std::vector<std::string> all;
    all.reserve(coming.size());
    for (const NeedLine::Coming &one : coming)
        all.push_back(said(one.quantity) +
                      (isClaimNumber(one.order) ? " of claim " : " of order ") + one.order +
                      " on " + one.day);
    return commas(all);
}

std::string orderByText(const NeedLine &line)
{
    if (line.shortBy.sign() <= 0)
        return {};
    if (line.orderBy.empty())
        return line.day.empty() ? "as soon as may be" : "nobody sells it";
    if (!line.quicker.empty())
        return line.orderBy + ", past due; of " + line.quicker + " by " + line.quickerBy;
    return line.orderBy + (line.isPastDue ? ", past due" : "");
}

std::string wantedBy(const NeedLine &line)
{
    return line.work.empty() ? line.whom : line.whom + ": " + line.work;
}

std::vector<const NeedLine *> lacking(const ShopNeeds &needs)
{
    std::vector<const NeedLine *> all;
    for (const NeedLine &line : needs.lines)
        if (line.shortBy.sign() > 0)
            all.push_back(&line);
    return all;
}

Workbook needsRows(const ShopNeeds &needs, const std::string &today)
{
    using Kind = WorkbookColumn::Kind;
    Workbook sheet{"short", today, 0, {}, {}, {}};
    sheet.columns = {{"part", Kind::Text, 16},    {"description", Kind::Text, 40},
                     {"unit", Kind::Text, 6},     {"short", Kind::Quantity, 9},
                     {"need", Kind::Quantity, 9}, {"for", Kind::Text, 18},
                     {"day", Kind::Text, 11},     {"order-by", Kind::Text, 11},
                     {"past-due", Kind::Text, 9}, {"coming-late", Kind::Text, 30},
                     {"instead", Kind::Text, 24}};
    for (const NeedLine *line : lacking(needs))
        sheet.rows.push_back(
            {line->part->number, line->part->description, std::string(text(line->part->unit)),
             said(line->shortBy), said(line->need), wantedBy(*line), line->day, line->orderBy,
             line->isPastDue ? "yes" : "no", comingText(line->late), commas(line->instead)});
    return sheet;
}

PaperWords needsPaper(const ShopNeeds &needs, const std::string &today, PaperWords paper)
{
    paper.title = "What is short";
    paper.made = today;
    paper.facts = {{"As of", today}};
    paper.columns = {{"Part", 16}, {"What", 34},      {"Short", 12, true}, {"Of", 12, true},
                     {"For", 18},  {"Needed by", 13}, {"Order by", 20}};
    const auto lines = lacking(needs);
    for (const NeedLine *line : lines) {
        std::string besides = line->part->description + "\n";
        if (!line->late.empty())
            besides += "comes too late: " + comingText(line->late);
        if (!line->instead.empty())
            besides += (line->late.empty() ? "" : "; ") + std::string("free instead: ") +
                       commas(line->instead);
        paper.rows.push_back({line->part->number, besides, spoken(line->shortBy, *line),
                              spoken(line->need, *line), wantedBy(*line),
                              line->day.empty() ? "-" : line->day, orderByText(*line)});
    }
    if (lines.empty())
        paper.rows.push_back({"", "nothing is short", "", "", "", "", ""});
    paper.sums = {{"Lines short", std::to_string(lines.size())}};
    for (const std::string &note : needs.notes)
        paper.note += (paper.note.empty() ? "" : "\n") + note;
    return paper;
}

} // namespace flarestock
