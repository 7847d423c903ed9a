// SPDX-License-Identifier: MIT

#include "app/sheet/build/pick_rows.h"

#include "app/garage/cautions.h"
#include "app/stockroom/asked.h"

namespace flarestock {

namespace {

Quantity quantityOf(std::int64_t smallest, const Part &part)
{
    return Quantity::ofSmallest(smallest, part.unit);
}

std::string cutTo(const Pick &pick, const Speech &speech)
{
    std::string said;
    for (const std::int64_t length : pick.lengths)
        said += (said.empty() ? "" : " + ") + speech.amount(quantityOf(length, *pick.part));
    return said;
}

/// What it is, and below it what a hand has to know besides.
std::string whatOf(const Pick &pick, const Speech &speech)
{
    std::string besides;
    if (!pick.lengths.empty())
        besides = speech.say("cut to %1", {cutTo(pick, speech)});
    if (!pick.key.lot.empty())
        besides += (besides.empty() ? "" : "; ") + pick.key.lot;
    return pick.part->description + (besides.empty() ? "" : "\n" + besides);
}

/// So much, and where the shop keeps it in other units below it as the shop says it.
std::string takeOf(std::int64_t smallest, const Part &part, const Speech &speech)
{
    const Quantity quantity = quantityOf(smallest, part);
    const std::string said = speech.amount(quantity);
    const std::string kept = speech.figures(quantity.spoken());
    return said == kept ? said : said + "\n" + kept;
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
                              std::string(text(pick.part->unit)), cutTo(pick, *plainSpeech()),
                              pick.key.lot});
    for (const auto &[part, quantity] : list.lacking)
        sheet.rows.push_back({"not found", part->number, part->description,
                              amountText(quantity, *part), std::string(text(part->unit)), "", ""});
    return sheet;
}

PaperWords pickPaper(const PickList &list, const BuildPlan &plan, const std::string &day,
                     PaperWords paper)
{
    const Speech &speech = *paper.speech;
    paper.title = speech.say("Pick list");
    paper.number = plan.id;
    paper.made = day;
    putPlan(paper, plan, day);
    paper.columns = {{"", 6},
                     {speech.say("Place"), 14},
                     {speech.say("Part"), 18},
                     {speech.say("What"), 44},
                     {speech.say("Take"), 14, true}};
    for (const Pick &pick : list.picks)
        paper.rows.push_back({"[   ]", pick.key.place, pick.part->number, whatOf(pick, speech),
                              takeOf(pick.quantity, *pick.part, speech)});
    for (const auto &[part, quantity] : list.lacking)
        paper.rows.push_back({"", speech.say("not found"), part->number, part->description,
                              takeOf(quantity, *part, speech)});
    if (paper.rows.empty())
        paper.rows.push_back(
            {"", "", "", speech.say("nothing to take: it is promised nothing"), ""});
    paper.sums = {{speech.say("To take"), std::to_string(list.picks.size())}};
    paper.note = speech.say("Before a system is opened:");
    for (const std::string_view caution : OpeningCautions)
        paper.note += "\n" + speech.sentence(caution);
    paper.foot = speech.sentence(AdviceOnly);
    return paper;
}

} // namespace flarestock
