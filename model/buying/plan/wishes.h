// SPDX-License-Identifier: MIT
//
// Wishes: what is short and what could be bought for it, in whole numbers, before anything is
// chosen. Of each offer the quantities that may be worth buying, each with what it costs on paper.
//
// Of an offer no more comes in question than covers the need, or reaches a price break, and beyond
// that only what freight or a minimum order could make up for.

#pragma once

#include "model/buying/plan/purchase_plan.h"

namespace flarestock {

/// So much of an offer, as one line of an order.
struct LineChoice {
    Decimal quantity;
    std::int64_t units = 0; ///< The same, in the wish's smallest steps.
    std::int64_t goods = 0; ///< In minor units of the order's currency.
    std::int64_t worth = 0; ///< In minor units of the shop's, with a tax that it bears by line.
};

/// What goes with one supplier in one currency.
struct Parcel {
    struct Step {
        std::int64_t from = 0;
        std::int64_t cost = 0;  ///< Minor units of the order's currency, as is `from`.
        std::int64_t worth = 0; ///< Of the shop's, with the tax that it bears.
    };
    const Supplier *supplier = nullptr;
    Currency currency;
    Decimal rate = 1;
    std::vector<Step> steps; ///< At least one; rising, the first from 0.
    std::int64_t minimum = 0;

    [[nodiscard]] bool bearsTaxByDocument() const;
    [[nodiscard]] bool risesInFreight() const; ///< More goods may cost more freight.
    /// The most that more goods can make up for; zero where nothing.
    [[nodiscard]] std::int64_t reach() const;
    [[nodiscard]] const Step &step(std::int64_t goods) const;
};

struct OfferChoices {
    const Offer *offer = nullptr;
    std::size_t parcel = 0;
    int days = 0;                    ///< Until it is here.
    std::vector<LineChoice> choices; ///< Rising; never empty.
};

/// What is short of one part, for one day after the other.
struct PartWish {
    struct Due {
        int days = 0;           ///< What comes by then serves it …
        std::int64_t units = 0; ///< … and so much must have come in all.
    };
    std::string part;
    std::vector<const Shortage *> shortages; ///< By day; those without one last.
    std::int32_t scale = 0;                  ///< Units are of 10^-scale.
    std::vector<Due> dues;                   ///< Rising in both.
    std::vector<OfferChoices> offers;

    [[nodiscard]] std::int64_t units() const { return dues.back().units; }
};

class Wishes {
public:
    explicit Wishes(const PlanTask &task);
    /// Leaves of each part only the offers that come first.
    void keepEarliest();

    std::vector<PartWish> parts;
    std::vector<Parcel> parcels;
    std::vector<Unplaced> unplaced; ///< For which there is nothing to choose from.
    bool hasAll = true;             ///< No quantity was left out for their number alone.

    [[nodiscard]] std::int64_t inShops(const Decimal &amount, const Parcel &parcel) const;
    [[nodiscard]] const PlanTask &task() const noexcept { return m_task; }

private:
    void addPart(const std::vector<const Shortage *> &shortages);
    [[nodiscard]] std::string addOffers(PartWish &wish, const Part &part);
    void setDues(PartWish &wish) const;
    void choose(PartWish &wish, OfferChoices &from);
    [[nodiscard]] LineChoice choice(const PartWish &wish, const OfferChoices &from,
                                    const Decimal &quantity) const;
    /// Nothing where the rate of one of its currencies is not known.
    std::optional<std::size_t> parcelOf(const Offer &offer);

    const PlanTask &m_task;
};

/// An amount in whole minor units.
[[nodiscard]] std::int64_t minorUnits(const Decimal &amount, const Currency &currency);

} // namespace flarestock
