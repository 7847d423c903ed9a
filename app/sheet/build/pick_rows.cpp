// SPDX-License-Identifier: MIT

#include "app/sheet/build/pick_rows.h"

#include "app/garage/cautions.h"
#include "app/stockroom/asked.h"

namespace flarestock {

namespace {

std::string cutTo(const Pick &pick)
{
    std::string said;
    for (const std::int64_t length : pick.lengths)
        said += (said.empty() ? "" : " + ") + spoken(length, *pick.part);
    return said;
}

/// What it is, and below it what a hand has to know besides.
std::string whatOf(const Pick &pick)
{
    std::string besides;
    if (!pick.lengths.empty())
        besides = "cut to " + cutTo(pick);
    if (!pick.key.lot.empty())
        besides += (besides.empty() ? "" : "; ") + pick.key.lot;
    return pick.part->description + (besides.empty() ? "" : "\n" + besides);
}

} // namespace

Workbook pickRows(const PickList &list, const std::string &day)
{
    using Kind = WorkbookColumn::Kind;
    Workbook sheet{"pick list", day, 0, {}, {}, {}};
    sheet.columns = {{"place", Kind::Text, 12},       {"part", Kind::Text, 16},
                     {"description", Kind::Text, 40}, {"quantity", Kind::Quantity, 9},
                     {"unit", Kind::Text, 6},         {"cut to", Kind::Text, 24},
                     {"lot", Kind::Text, 16}};
    for (const Pick &pick : list.picks)
        sheet.rows.push_back({pick.key.place, pick.part->number, pick.part->description,
                              amountText(pick.quantity, *pick.part),
                              std::string(text(pick.part->unit)), cutTo(pick), pick.key.lot});
    for (const auto &[part, quantity] : list.lacking)
        sheet.rows.push_back({"not found", part->number, part->description,
                              amountText(quantity, *part), std::string(text(part->unit)), "", ""});
    return sheet;
}

PaperWords pickPaper(const PickList &list, const BuildPlan &plan, const std::string &day,
                     PaperWords paper)
{
    paper.title = "Pick list";
    paper.number = plan.id;
    paper.made = day;
    paper.facts = {{"Build", plan.title.empty() ? plan.id : plan.title}, {"As of", day}};
    if (!plan.car.empty())
        paper.facts.emplace_back("For", plan.car);
    if (!plan.by.empty())
        paper.facts.emplace_back("By", plan.by);
    paper.columns = {{"", 6}, {"Place", 14}, {"Part", 18}, {"What", 44}, {"Take", 14, true}};
    for (const Pick &pick : list.picks)
        paper.rows.push_back({"[   ]", pick.key.place, pick.part->number, whatOf(pick),
                              spoken(pick.quantity, *pick.part)});
    for (const auto &[part, quantity] : list.lacking)
        paper.rows.push_back(
            {"", "not found", part->number, part->description, spoken(quantity, *part)});
    if (paper.rows.empty())
        paper.rows.push_back({"", "", "", "nothing to take: it is promised nothing", ""});
    paper.sums = {{"To take", std::to_string(list.picks.size())}};
    paper.note = "Before a system is opened:";
    for (const std::string_view caution : OpeningCautions)
        paper.note += "\n" + std::string(caution);
    paper.foot = AdviceOnly;
    return paper;
}

} // namespace flarestock
