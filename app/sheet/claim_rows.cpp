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
    [[nodiscard]] std::string words(std::int64_t quantity) const
    {
        return part ? spoken(quantity, *part) : std::to_string(quantity);
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
std::string faultWords(const SupplierClaim &claim)
{
    std::string words = std::string(text(claim.fault));
    if (!claim.boxOf.empty())
        words += ", out of the box of " + claim.boxOf +
                 (claim.boxLot.empty() ? "" : " (" + claim.boxLot + ")");
    return words;
}

std::string standingWords(const SupplierClaim &claim)
{
    std::string words(text(claim.state));
    return claim.state == ClaimState::Promised ? words + " by " + claim.day : words;
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
    paper.title = claims.size() == 1 ? "Claim" : "Claims";
    paper.number = claims.size() == 1 ? first.number : std::string();
    paper.made = today;
    paper.to = addressOf(first.supplier, workshop.catalogue);
    paper.facts = {{"Date", today}};
    paper.columns = {{"Claim", 9}, {"Our order", 13},  {"Your number", 17},
                     {"What", 34}, {"Owed", 11, true}, {"What is wrong", 25}};
    for (const ClaimStanding *claim : claims) {
        const SupplierClaim &now = claim->now;
        const PartSaid part{workshop.part(now.part)};
        paper.rows.push_back({now.number, now.order.empty() ? "-" : now.order,
                              supplierNumberOf(now, workshop),
                              part.description() + "\nours: " + now.part,
                              part.words(now.isSettled() ? now.quantity : claim->owed()),
                              faultWords(now) + "\n" + standingWords(now) +
                                  (now.note.empty() ? "" : "; " + now.note)});
    }
    const bool isOpen = std::any_of(claims.begin(), claims.end(),
                                    [](const ClaimStanding *one) { return !one->now.isSettled(); });
    if (isOpen)
        paper.note = "Please send what is owed, or say by which day it comes, or what you credit "
                     "for it. Please name the number of the claim.";
    return paper;
}

} // namespace flarestock
