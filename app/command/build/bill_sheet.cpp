// SPDX-License-Identifier: MIT

#include "app/command/build/bill_sheet.h"

#include "app/command/build/size_words.h"
#include "app/command/command.h"
#include "app/command/findings/finding_sheet.h"
#include "app/command/text_table.h"
#include "app/workshop/suppliers.h"

namespace flarestock {

namespace {

std::string amountText(const Decimal &amount, Unit unit)
{
    return amount.isZero() ? "-" : Quantity{amount.stripped(), unit}.spoken();
}

/// Nothing where there is none.
std::string someText(const Decimal &amount, Unit unit)
{
    return amount.isZero() ? std::string() : amountText(amount, unit);
}

std::string linesOf(const WorkedBuild &build)
{
    const PricedBill &bill = build.bill;
    TextTable table({{"part", TextTable::Side::Left},
                     {"description", TextTable::Side::Left},
                     {"need", TextTable::Side::Right},
                     {"free here", TextTable::Side::Right},
                     {"in the trailer", TextTable::Side::Right, TextTable::Shown::WhereFilled},
                     {"in the car", TextTable::Side::Right, TextTable::Shown::WhereFilled},
                     {"short", TextTable::Side::Right},
                     {"on the way", TextTable::Side::Right, TextTable::Shown::WhereFilled},
                     {"unit cost", TextTable::Side::Right},
                     {"cost", TextTable::Side::Right},
                     {"why", TextTable::Side::Left}});
    for (std::size_t at = 0; at < bill.lines.size(); ++at) {
        const PricedLine &priced = bill.lines[at];
        const BillLine &line = *priced.line;
        const Unit unit = line.need.unit;
        const Lying lying = build.lyingAt(at);
        table.add({line.part->number, line.part->description, amountText(line.need.amount, unit),
                   amountText(lying.here, unit), someText(lying.inTrailer, unit),
                   someText(lying.got, unit), amountText(priced.shortBy, unit),
                   someText(lying.onTheWay, unit), priced.unitCostText(),
                   priced.cost ? priced.cost->amount.text() : "no price",
                   line.why.empty() ? "" : line.why.front()});
        for (std::size_t i = 1; i < line.why.size(); ++i)
            table.add({"", "", "", "", "", "", "", "", "", "", line.why[i]});
    }
    std::string text = "\nBILL\n" + table.text() + "Total " + bill.total.text() + "\n";
    for (const std::string &part : bill.unpriced)
        text += "  without a price, and not in the total: " + part + "\n";
    return text;
}

std::string costText(std::int64_t micro)
{
    return Decimal::scaled(micro, 6).rescaled(2, Rounding::HalfEven).text();
}

std::string portWords(const Port &port)
{
    return port.size.empty() ? "none" : port.text();
}

/// What the joints come to, and whether that is the best.
std::string togetherOf(const Expansion &build)
{
    if (!build.together)
        return {};
    const auto &[rank, bound, isSearched] = *build.together;
    std::string said = "All joints: " + std::to_string(rank.toBuy) + " to buy, " +
                       counted(static_cast<std::size_t>(rank.pieces), "piece") + ", cost " +
                       costText(rank.costMicro);
    if (!bound)
        return said + "; no choice of ways is better.\n";
    const bool isMoney = bound->of == Criterion::CostMicro;
    return said + "; not proven to be the best: " + std::string(text(bound->of)) + " at least " +
           (isMoney ? costText(bound->atLeast) : std::to_string(bound->atLeast)) + ", is " +
           (isMoney ? costText(rank.costMicro) : std::to_string(valueOf(rank, bound->of))) + ".\n";
}

std::string jointsOf(const Expansion &build)
{
    TextTable table({{"at", TextTable::Side::Left},
                     {"from", TextTable::Side::Left},
                     {"through", TextTable::Side::Left},
                     {"to", TextTable::Side::Left},
                     {"verdict", TextTable::Side::Left}});
    for (const PlacedJoint &joint : build.joints)
        table.add({joint.at, portWords(joint.from), joint.way ? joint.way->key() : "-",
                   portWords(joint.to),
                   joint.way ? std::string(text(joint.way->verdict())) : "open"});
    return "\nJOINTS\n" + table.text() + togetherOf(build);
}

std::string supplierOf(const PricedLine &line, const Catalogue &catalogue)
{
    if (!line.offer)
        return line.otherCurrency ? "only offered in another currency" : "nobody offers it";
    return supplierName(line.offer->supplier, catalogue) + ", " +
           line.offer->priceEach(line.shortBy).text() + " " +
           std::string(line.offer->currency.code()) + " each, " +
           counted(static_cast<std::size_t>(line.offer->leadDays), "day");
}

std::string shortagesOf(const PricedBill &bill, const Catalogue &catalogue)
{
    if (bill.complete)
        return "\nSHORT\n  nothing\n";
    TextTable table({{"part", TextTable::Side::Left},
                     {"short", TextTable::Side::Right},
                     {"best offer", TextTable::Side::Left}});
    for (const PricedLine &line : bill.lines)
        if (line.shortBy.sign() > 0)
            table.add({line.line->part->number, amountText(line.shortBy, line.line->need.unit),
                       supplierOf(line, catalogue)});
    return "\nSHORT\n" + table.text();
}

std::string findingsOf(const WorkedBuild &build)
{
    std::string said = "\nFINDINGS\n";
    if (build.findings.empty())
        said += "  no finding\n";
    for (const Finding &finding : build.findings) {
        said += "  " + std::string(text(finding.severity)) + ": " + finding.about + "\n";
        for (const std::string &more : reasonsOf(finding))
            said += "      " + more + "\n";
    }
    return said;
}

} // namespace

std::string billSheet(const WorkedBuild &build, const Catalogue &catalogue)
{
    return planHead(build.expansion) + sizesSheet(build.expansion) + linesOf(build) +
           jointsOf(build.expansion) + shortagesOf(build.bill, catalogue) + findingsOf(build) +
           "\n" + wordsOfCaution();
}

} // namespace flarestock
