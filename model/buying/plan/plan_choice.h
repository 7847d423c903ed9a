// SPDX-License-Identifier: MIT
//
// Plan choice: the wishes as a programme of whole numbers, and what it chose.
//
// Every quantity that comes in question is a number, 0 or 1, with its price on paper as factor, so
// that every rounding is done before the search. What covers a need counts no more than the need,
// without which a search in fractions would buy half a pack.

#pragma once

#include "model/buying/plan/wishes.h"
#include "model/programme/programme.h"

#include <functional>

namespace flarestock {

struct Chosen {
    struct Line {
        std::size_t part = 0;
        std::size_t offer = 0;
        std::size_t choice = 0;
    };
    std::vector<Line> lines;           ///< By part, then offer.
    std::vector<std::size_t> unplaced; ///< Parts.
    bool isFound = false;
    bool isProven = false;             ///< What comes first, and the money, cannot be less.
    std::optional<std::int64_t> least; ///< The money comes to no less; minor units of the shop's.
};

class PlanChoice {
public:
    explicit PlanChoice(const Wishes &wishes);
    /// By what comes first, then the others, then the fewest pieces and lines.
    [[nodiscard]] Chosen chosen(PlanAim first, std::chrono::milliseconds within);

private:
    struct Rounded { ///< A number that is the nearest whole one to numerator/denominator × sum.
        LinearSum sum;
        std::int64_t most = 0; ///< The sum comes to no more.
        std::int64_t numerator = 0;
        std::int64_t denominator = 1;
        Rounding rounding = Rounding::HalfUp;
        std::size_t half = 0; ///< Twice this …
        std::size_t odd = 0;  ///< … and this.
    };
    void addChoices();
    void addParcels();
    void addCover(std::size_t part);
    void addSteps(std::size_t parcel);
    void addTax(std::size_t parcel);
    LinearSum addRounded(Rounded rounded);
    [[nodiscard]] LinearSum goodsOf(std::size_t parcel) const;
    [[nodiscard]] LinearSum
    sumOf(const std::function<std::int64_t(const OfferChoices &, const LineChoice &)> &worth) const;
    [[nodiscard]] std::vector<std::int64_t> plainValues() const;
    [[nodiscard]] Chosen read(const Solution &solution) const;

    const Wishes &m_wishes;
    Programme m_programme;
    std::vector<std::vector<std::size_t>> m_first; ///< Number of an offer's first choice.
    std::vector<std::size_t> m_missing;            ///< By part; only with a minimum order.
    std::vector<std::vector<std::size_t>> m_steps; ///< By parcel and step.
    std::vector<Rounded> m_rounded;
    LinearSum m_money;
    LinearSum m_parcels;
};

} // namespace flarestock
