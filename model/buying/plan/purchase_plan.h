// SPDX-License-Identifier: MIT
//
// Purchase plan: which offers cover what is short, how much of each, from whom. Of all choices the
// cheapest, or the earliest, or the one of fewest parcels; whether that is proven is said, or what
// nothing comes below.
//
//   need 8 of a part at "1: 3.00; 10: 2.16"   →  10 for 21.60, which cost 2.40 less than 8; 2 left
//
// What an order costs is what stands on its paper: each line rounded once, freight by the value of
// its goods, and the tax where the shop does not get it back. Another currency is turned into the
// shop's line by line (goods, freight, tax), each rounded once, half even.
//
// An offer that comes after the day of a need serves it only where none comes by then; then those
// that come first.

#pragma once

#include "model/buying/plan/rates.h"
#include "model/netting/shortage.h"
#include "model/parts/catalogue.h"

#include <chrono>

namespace flarestock {

/// What comes first; the others follow in this order.
enum class PlanAim : std::uint8_t { Cheapest, Earliest, Parcels };
[[nodiscard]] std::string_view text(PlanAim aim) noexcept; ///< "cheapest", "earliest", "parcels"
[[nodiscard]] Result<PlanAim> parsePlanAim(std::string_view text);

/// All that it refers to must outlive the plan.
struct PlanTask {
    const Catalogue &catalogue;
    const Rates &rates;
    std::string today;               ///< "2026-11-28": orders go out on it.
    std::vector<Shortage> shortages; ///< Days as dates, or empty.
    PlanAim first = PlanAim::Cheapest;
    std::chrono::milliseconds within = std::chrono::milliseconds(2000);
};

/// So much of one offer. Money is in the order's currency.
struct PlannedLine {
    const Offer *offer = nullptr;
    Decimal quantity; ///< In the part's unit.
    Decimal priceEach;
    Decimal cost;       ///< To the minor digits, half even.
    std::string hereBy; ///< Ordered today.
    Decimal least;      ///< The least of this offer that would do: less than `quantity` …
    Decimal leastCost;  ///< … where more costs less, or the value of the goods counts.
};

struct ProposedOrder {
    const Supplier *supplier = nullptr;
    Currency currency;
    Decimal rate = 1;
    std::vector<PlannedLine> lines; ///< By part.
    Decimal goods;
    Decimal freight;
    Decimal tax;
    Decimal total;
    Decimal worth;       ///< In the shop's currency; without a tax that the shop gets back.
    std::string orderBy; ///< Past, where something of it comes late; empty where no day was said.
    std::string hereBy;  ///< Ordered today, the last of it.
};

/// A part of which something is bought: bought = shortBy + leftOver.
struct PlannedPart {
    struct Late {
        std::string day; ///< Needed by.
        Decimal quantity;
        std::string hereBy; ///< The last of it.
    };
    std::string part;
    Decimal shortBy;
    Decimal bought;
    Decimal leftOver; ///< Not below zero.
    std::vector<Late> late;
};

struct Unplaced {
    Shortage shortage;
    std::string why; ///< "nobody sells it"
};

/// What a plan comes to, to hold it against others.
struct PlanFigures {
    Decimal worth;      ///< In the shop's currency.
    std::string hereBy; ///< The last of all; empty where nothing is bought.
    std::size_t parcels = 0;
    bool isWhole = true;          ///< Nothing was left unplaced that the others place.
    std::optional<Decimal> least; ///< Its first aim is money and not proven: none comes below.
    bool isProven = false;        ///< Its first aim cannot be better.
};

struct PurchasePlan {
    PlanAim first = PlanAim::Cheapest;
    std::vector<ProposedOrder> orders; ///< By supplier, then currency.
    std::vector<PlannedPart> parts;    ///< By part.
    std::vector<Unplaced> unplaced;
    PlanFigures figures;
};

/// Ends after about the time of the task.
[[nodiscard]] PurchasePlan planPurchases(const PlanTask &task);

/// What all of it would cost less if it were not needed before that day.
struct LaterSaving {
    std::string day;
    Decimal saves; ///< In the shop's currency, more than zero.
};
/// Nothing where waiting saves nothing, or no day was said.
[[nodiscard]] std::optional<LaterSaving> laterSaving(PlanTask task, const PurchasePlan &plan);

} // namespace flarestock
