// SPDX-License-Identifier: MIT

#include "app/sheet/claim_rows.h"

#include "app/stockroom/asked.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

struct PartSaid {
    const Part *part;

    [[nodiscard]] std::string amount(std::int64_t quantity) const
    {
        return part ? amountText(quantity, *part) : std::to_string(quantity);
    }
    [[nodiscard]] std::string words(std::int64_t quantity, const Speech &speech) const
    {
        return part ? speech.amount(Quantity::ofSmallest(quantity, part->unit))
                    : std::to_string(quantity);
    }
    [[nodiscard]] std::string description() const
    {
        return part ? part->description : std::string();
    }
};

/// What the supplier calls it: as it was ordered, else as he offers it; empty where nobody knows.
std::string supplierNumberOf(const SupplierClaim &claim, const Workshop &workshop)
{
    const BookedOrder *order = workshop.bought.orders.order(claim.order);
    if (const OrderLine *line = order ? order->now().line(claim.part) : nullptr)
        return line->supplierNumber;
    const Part *part = workshop.catalogue.find(claim.part);
    if (!part)
        return {};
    for (const Offer &offer : workshop.catalogue.offers(*part)) {
        if (offer.supplier == claim.supplier)
            return offer.supplierNumber;
    }
    return {};
}

/// What is wrong, as a supplier reads it.
std::string faultWords(const SupplierClaim &claim, const Speech &speech)
{
    std::string words = speech.word(text(claim.fault));
    if (!claim.boxOf.empty())
        words += speech.say(", out of the box of %1", {claim.boxOf}) +
                 (claim.boxLot.empty() ? "" : " (" + claim.boxLot + ")");
    return words;
}

std::string standingWords(const SupplierClaim &claim, const Speech &speech)
{
    return claim.state == ClaimState::Promised
               ? speech.say("promised by %1", {speech.day(claim.day)})
               : speech.word(text(claim.state));
}

} // namespace

Workbook claimRows(const ClaimsSaid &claims, const Workshop &workshop, const std::string &today)
{
    using Kind = WorkbookColumn::Kind;
    Workbook sheet{"claims", today, workshop.settings.currency.minorDigits(), {}, {}, {}};
    sheet.columns = {{"claim", Kind::Text, 8},         {"supplier", Kind::Text, 10},
                     {"order", Kind::Text, 11},        {"supplier part", Kind::Text, 16},
                     {"part", Kind::Text, 16},         {"description", Kind::Text, 40},
                     {"quantity", Kind::Quantity, 10}, {"owed", Kind::Quantity, 10},
                     {"unit", Kind::Text, 6},          {"fault", Kind::Text, 16},
                     {"box of", Kind::Text, 12},       {"box lot", Kind::Text, 12},
                     {"state", Kind::Text, 12},        {"promised by", Kind::Text, 12},
                     {"note", Kind::Text, 30}};
    for (const ClaimStanding *claim : claims) {
        const SupplierClaim &now = claim->now;
        const PartSaid part{workshop.part(now.part)};
        sheet.rows.push_back({now.number, now.supplier, now.order, supplierNumberOf(now, workshop),
                              now.part, part.description(), part.amount(now.quantity),
                              part.amount(claim->owed()),
                              part.part ? std::string(text(part.part->unit)) : std::string(),
                              std::string(text(now.fault)), now.boxOf, now.boxLot,
                              std::string(text(now.state)), now.day, now.note});
    }
    return sheet;
}

PaperWords claimLetter(const ClaimsSaid &claims, const Workshop &workshop, const std::string &today,
                       PaperWords paper)
{
    assert(!claims.empty());
    const SupplierClaim &first = claims.front()->now;
    assert(std::all_of(claims.begin(), claims.end(), [&](const ClaimStanding *one) {
        return one->now.supplier == first.supplier;
    }));
    const Speech &speech = *paper.speech;
    paper.title = claims.size() == 1 ? speech.say("Claim") : speech.say("Claims");
    paper.number = claims.size() == 1 ? first.number : std::string();
    paper.made = today;
    paper.to = addressOf(first.supplier, workshop.catalogue);
    paper.facts = {{speech.say("Date"), speech.day(today)}};
    paper.columns = {{speech.say("Claim"), 14},       {speech.say("Our order"), 12},
                     {speech.say("Your number"), 16}, {speech.say("What"), 31},
                     {speech.say("Owed"), 10, true},  {speech.say("What is wrong"), 25}};
    for (const ClaimStanding *claim : claims) {
        const SupplierClaim &now = claim->now;
        const PartSaid part{workshop.part(now.part)};
        paper.rows.push_back({now.number, now.order.empty() ? "-" : now.order,
                              supplierNumberOf(now, workshop),
                              part.description() + "\n" + speech.say("ours: %1", {now.part}),
                              part.words(now.isSettled() ? now.quantity : claim->owed(), speech),
                              faultWords(now, speech) + "\n" + standingWords(now, speech) +
                                  (now.note.empty() ? "" : "; " + now.note)});
    }
    const bool isOpen = std::any_of(claims.begin(), claims.end(),
                                    [](const ClaimStanding *one) { return !one->now.isSettled(); });
    if (isOpen)
        paper.note = speech.say("Please send what is owed, or say by which day it comes, or what "
                                "you credit for it. Please name the number of the claim.");
    return paper;
}

} // namespace flarestock
