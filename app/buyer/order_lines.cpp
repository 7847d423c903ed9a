// SPDX-License-Identifier: MIT

#include "app/buyer/order_lines.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr const char *HowALine = "Write PART QUANTITY, or PART QUANTITY at PRICE.";

struct LineWords {
    const Part *part = nullptr;
    std::string quantity;
    std::string price; ///< Empty: the supplier's.
};

/// The part is the first words that name one: its number may hold blanks.
Result<LineWords> lineWords(const std::string &typed, const Catalogue &catalogue)
{
    LineWords words;
    std::string rest = typed;
    if (const auto at = rest.rfind(" at "); at != std::string::npos) {
        words.price = rest.substr(at + 4);
        rest.erase(at);
        if (words.price.empty())
            return problem("the line \"" + typed + '"', "has no price behind \"at\"", HowALine);
    }
    for (auto blank = rest.find(' '); blank != std::string::npos;
         blank = rest.find(' ', blank + 1)) {
        words.part = catalogue.find(std::string_view(rest).substr(0, blank));
        words.quantity = rest.substr(blank + 1);
        if (words.part)
            return words;
    }
    if (rest.find(' ') == std::string::npos)
        return problem("the line \"" + typed + '"', "has no quantity", HowALine);
    const auto part = partAsked(rest.substr(0, rest.find(' ')), catalogue);
    return tl::unexpected(part ? wrongIn("--line", {typed, "is no line", HowALine}) : part.error());
}

bool isWhole(const Decimal &quantity, const Decimal &lot)
{
    return lot.sign() <= 0 || remainder(quantity, lot).isZero();
}

/// Whether the supplier sends so much.
Result<void> isSent(const Decimal &quantity, const Offer &offer)
{
    const Decimal step = offer.pack * offer.multiple;
    if (quantity >= offer.minimum && isWhole(quantity, step))
        return {};
    const bool tooLittle = quantity < offer.minimum;
    const auto says = tooLittle ? "not less than " + offer.minimum.stripped().text()
                                : "only in lots of " + step.stripped().text();
    return problem(quantity.stripped().text() + " of " + offer.part,
                   "cannot be had of " + offer.supplier + ": he sends " + says,
                   "Order as he sends it, or say the price that he has agreed to.");
}

Result<Decimal> priceAsked(const std::string &typed)
{
    auto price = Decimal::parse(typed);
    if (!price)
        return tl::unexpected(wrongIn("the price", price.error()));
    if (price->sign() < 0)
        return problem("the price " + typed, "is below zero", "Say what one of it costs.");
    return price;
}

} // namespace

const Offer *offerOf(const Supplier &supplier, const Part &part, const Catalogue &catalogue)
{
    const auto offers = catalogue.offers(part);
    const auto found = std::find_if(offers.begin(), offers.end(), [&](const Offer &offer) {
        return offer.supplier == supplier.id;
    });
    return found == offers.end() ? nullptr : &*found;
}

std::optional<Decimal> moreForNoMore(const Offer &offer, const Decimal &quantity)
{
    const auto paper = [&offer](const Decimal &much) {
        return (offer.priceEach(much) * much)
            .rescaled(offer.currency.minorDigits(), Rounding::HalfEven);
    };
    std::optional<Decimal> more;
    for (const Offer::Break &one : offer.breaks)
        if (one.from > quantity && paper(one.from) <= paper(quantity) &&
            isSent(one.from, offer).has_value())
            more = one.from;
    return more;
}

Result<OrderLineAsked> lineAsked(const std::string &typed, const Supplier &supplier,
                                 const Catalogue &catalogue)
{
    const auto words = lineWords(typed, catalogue);
    if (!words)
        return tl::unexpected(words.error());
    const Part &part = *words->part;
    const auto quantity = quantityAsked(words->quantity, part, "--line");
    if (!quantity)
        return tl::unexpected(quantity.error());
    if (*quantity <= 0)
        return problem("the line \"" + typed + '"', "orders nothing", "Say more than zero.");
    OrderLineAsked asked;
    asked.line.part = part.number;
    asked.line.description = part.description;
    asked.line.unit = part.unit;
    asked.line.quantity = Quantity::ofSmallest(*quantity, part.unit).amount;
    const Offer *offer = offerOf(supplier, part, catalogue);
    if (offer) {
        asked.line.supplierNumber = offer->supplierNumber;
        asked.line.pack = offer->pack;
        asked.line.priceEach = offer->priceEach(asked.line.quantity);
    }
    if (!words->price.empty()) {
        const auto price = priceAsked(words->price);
        if (!price)
            return tl::unexpected(price.error());
        asked.line.priceEach = *price;
        return asked;
    }
    if (!offer)
        return problem(part.number, "is not offered by " + supplier.id,
                       "Say what one of it costs there.");
    asked.currency = offer->currency;
    if (const auto sent = isSent(asked.line.quantity, *offer); !sent)
        return tl::unexpected(sent.error());
    return asked;
}

} // namespace flarestock
