// SPDX-License-Identifier: MIT
//
// A shop of a few parts made in code, for the tests of pricing.

#pragma once

#include "model/netting/priced_bill.h"
#include "tests/parts/suppliers.h"

#include <cassert>

namespace flarestock {

struct SmallShop {
    std::vector<Part> parts;
    std::vector<Offer> offers;
    Shelf shelf;

    void part(const std::string &number, Unit unit = Unit::Each, Kind kind = Kind::Adapter)
    {
        Part made;
        made.number = number;
        made.kind = kind;
        made.unit = unit;
        made.consumed = kind != Kind::Tool;
        parts.push_back(std::move(made));
    }

    /// `price` from 1, `above` (where given) from 10.
    void offer(const std::string &number, const std::string &price, const std::string &above = {},
               const std::string &currency = "USD")
    {
        Offer made{number, "s1", "", 1, 1, 1, *Currency::parse(currency), {}, 3};
        made.breaks.push_back({1, *Decimal::parse(price)});
        if (!above.empty())
            made.breaks.push_back({10, *Decimal::parse(above)});
        offers.push_back(std::move(made));
    }

    void stock(const std::string &number, const std::string &onHand, const std::string &free,
               const std::string &value)
    {
        FreeStock &on = shelf[number];
        const Unit unit = unitOf(number);
        on.onHand = {*Decimal::parse(onHand), unit};
        on.free = {*Decimal::parse(free), unit};
        on.value = *Decimal::parse(value);
    }

    void piece(const std::string &number, const std::string &length)
    {
        shelf[number].pieces.push_back({*Decimal::parse(length), unitOf(number)});
    }

    [[nodiscard]] Catalogue catalogue() const
    {
        auto made = Catalogue::of(parts, {tests::supplierOf("s1", "North Supply", 3)}, offers);
        return std::move(*made);
    }

private:
    [[nodiscard]] Unit unitOf(const std::string &number) const
    {
        for (const Part &part : parts)
            if (part.number == number)
                return part.unit;
        assert(false && "a part of the shop");
        return Unit::Each;
    }
};

/// A bill line of so much; for a length, in these cuts.
inline BillLine needOf(const Catalogue &catalogue, const std::string &number,
                       const std::string &amount, const std::vector<std::string> &cuts = {})
{
    BillLine line;
    line.part = catalogue.find(number);
    line.need = {*Decimal::parse(amount), line.part->unit};
    line.consumed = line.part->consumed;
    for (const std::string &cut : cuts)
        line.cuts.push_back({*Decimal::parse(cut), line.part->unit});
    return line;
}

} // namespace flarestock
