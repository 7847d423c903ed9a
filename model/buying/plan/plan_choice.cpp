// SPDX-License-Identifier: MIT

#include "model/buying/plan/plan_choice.h"

#include <algorithm>

namespace flarestock {

namespace {

std::int64_t worthOf(const LinearSum &sum, const std::vector<std::int64_t> &values)
{
    std::int64_t worth = 0;
    for (const Term &term : sum)
        worth += term.times * values[term.number];
    return worth;
}

void append(LinearSum &sum, const LinearSum &more, std::int64_t times = 1)
{
    for (const Term &term : more)
        sum.push_back({term.number, term.times * times});
}

} // namespace

PlanChoice::PlanChoice(const Wishes &wishes) : m_wishes(wishes)
{
    addChoices();
    addParcels();
}

void PlanChoice::addChoices()
{
    const bool mayLack = std::any_of(m_wishes.parcels.begin(), m_wishes.parcels.end(),
                                     [](const Parcel &parcel) { return parcel.minimum > 0; });
    for (const PartWish &wish : m_wishes.parts) {
        auto &first = m_first.emplace_back();
        for (const OfferChoices &from : wish.offers) {
            first.push_back(m_programme.size());
            for (const LineChoice &choice : from.choices)
                m_money.push_back({m_programme.number(0, 1), choice.worth});
        }
        if (mayLack)
            m_missing.push_back(m_programme.number(0, 1));
        addCover(m_first.size() - 1);
    }
}

/// What has come by each day covers what is needed by then.
void PlanChoice::addCover(std::size_t part)
{
    const PartWish &wish = m_wishes.parts[part];
    for (const PartWish::Due &due : wish.dues) {
        LinearSum covered;
        for (std::size_t at = 0; at < wish.offers.size(); ++at) {
            if (wish.offers[at].days > due.days)
                continue;
            const auto &choices = wish.offers[at].choices;
            for (std::size_t i = 0; i < choices.size(); ++i)
                covered.push_back({m_first[part][at] + i, std::min(choices[i].units, due.units)});
        }
        if (!m_missing.empty())
            covered.push_back({m_missing[part], due.units});
        m_programme.keep(std::move(covered), due.units, NoLimit::Above);
    }
}

void PlanChoice::addParcels()
{
    for (const Parcel &parcel : m_wishes.parcels) {
        auto &steps = m_steps.emplace_back();
        LinearSum one;
        for (const Parcel::Step &step : parcel.steps) {
            steps.push_back(m_programme.number(0, 1));
            one.push_back({steps.back(), 1});
            m_money.push_back({steps.back(), step.worth});
        }
        append(m_parcels, one);
        m_programme.keep(std::move(one), 0, 1);
    }
    for (std::size_t part = 0; part < m_first.size(); ++part) {
        const PartWish &wish = m_wishes.parts[part];
        for (std::size_t at = 0; at < wish.offers.size(); ++at) {
            LinearSum used;
            for (std::size_t i = 0; i < wish.offers[at].choices.size(); ++i)
                used.push_back({m_first[part][at] + i, 1});
            for (const std::size_t step : m_steps[wish.offers[at].parcel])
                used.push_back({step, -1});
            m_programme.keep(std::move(used), NoLimit::Below, 0);
        }
    }
    for (std::size_t parcel = 0; parcel < m_steps.size(); ++parcel) {
        addSteps(parcel);
        if (m_wishes.parcels[parcel].bearsTaxByDocument())
            addTax(parcel);
    }
}

/// The value of the goods reaches the step that is taken, and stays below the next.
void PlanChoice::addSteps(std::size_t at)
{
    const Parcel &parcel = m_wishes.parcels[at];
    const LinearSum goods = goodsOf(at);
    std::int64_t most = 0;
    for (const Term &term : goods)
        most += term.times;
    if (parcel.steps.size() > 1 || parcel.minimum > 0) {
        LinearSum reached = goods;
        for (std::size_t i = 0; i < parcel.steps.size(); ++i)
            reached.push_back({m_steps[at][i], -std::max(parcel.steps[i].from, parcel.minimum)});
        m_programme.keep(std::move(reached), 0, NoLimit::Above);
    }
    if (!parcel.risesInFreight())
        return;
    LinearSum below = goods;
    for (std::size_t i = 0; i + 1 < parcel.steps.size(); ++i)
        below.push_back(
            {m_steps[at][i], std::max<std::int64_t>(0, most - (parcel.steps[i + 1].from - 1))});
    m_programme.keep(std::move(below), NoLimit::Below, most);
}

/// Tax on goods and freight together, rounded, then in the shop's currency, rounded.
void PlanChoice::addTax(std::size_t at)
{
    const Parcel &parcel = m_wishes.parcels[at];
    LinearSum taxed = goodsOf(at);
    for (std::size_t i = 0; i < parcel.steps.size(); ++i)
        taxed.push_back({m_steps[at][i], parcel.steps[i].cost});
    const auto whole = [](const Rational &number) {
        return std::pair(number.numerator().toInt64().value_or(0),
                         number.denominator().toInt64().value_or(1));
    };
    const auto [percent, hundred] = whole(Rational(parcel.supplier->tax.percent, Decimal(100)));
    std::int64_t most = 0;
    for (const Term &term : taxed)
        most += term.times;
    LinearSum tax =
        addRounded({std::move(taxed), most, percent, hundred, parcel.supplier->tax.rounding});
    const Currency &shops = m_wishes.task().rates.shops();
    if (!(parcel.currency == shops)) {
        Decimal from = Decimal(1);
        Decimal to = parcel.rate;
        for (int i = 0; i < parcel.currency.minorDigits(); ++i)
            from = from * Decimal(10);
        for (int i = 0; i < shops.minorDigits(); ++i)
            to = to * Decimal(10);
        const auto [up, down] = whole(Rational(to, from));
        tax = addRounded({std::move(tax), most, up, down, Rounding::HalfEven});
    }
    append(m_money, tax);
}

/// 2 d × value ≥ 2 n × sum − d, and where that is equal: up (half up), or to the even one. What is
/// more would only cost more.
LinearSum PlanChoice::addRounded(Rounded rounded)
{
    const std::int64_t most = divide(Decimal(rounded.most) * Decimal(rounded.numerator),
                                     Decimal(rounded.denominator), 0, Rounding::Ceiling)
                                  .toInt64()
                                  .value_or(SumMost) +
                              1;
    rounded.half = m_programme.number(0, most / 2 + 1);
    rounded.odd = m_programme.number(0, 1);
    const bool isHalfEven = rounded.rounding == Rounding::HalfEven;
    const std::int64_t d = rounded.denominator;
    LinearSum row{{rounded.half, 4 * d}, {rounded.odd, 2 * d - (isHalfEven ? 1 : 0)}};
    append(row, rounded.sum, -2 * rounded.numerator);
    m_programme.keep(std::move(row), -d + (isHalfEven ? 0 : 1), NoLimit::Above);
    LinearSum value{{rounded.half, 2}, {rounded.odd, 1}};
    m_rounded.push_back(std::move(rounded));
    return value;
}

LinearSum PlanChoice::goodsOf(std::size_t parcel) const
{
    LinearSum goods;
    for (std::size_t part = 0; part < m_first.size(); ++part) {
        const PartWish &wish = m_wishes.parts[part];
        for (std::size_t at = 0; at < wish.offers.size(); ++at)
            if (wish.offers[at].parcel == parcel)
                for (std::size_t i = 0; i < wish.offers[at].choices.size(); ++i)
                    goods.push_back({m_first[part][at] + i, wish.offers[at].choices[i].goods});
    }
    return goods;
}

LinearSum PlanChoice::sumOf(
    const std::function<std::int64_t(const OfferChoices &, const LineChoice &)> &worth) const
{
    LinearSum sum;
    for (std::size_t part = 0; part < m_first.size(); ++part) {
        const PartWish &wish = m_wishes.parts[part];
        for (std::size_t at = 0; at < wish.offers.size(); ++at)
            for (std::size_t i = 0; i < wish.offers[at].choices.size(); ++i)
                sum.push_back(
                    {m_first[part][at] + i, worth(wish.offers[at], wish.offers[at].choices[i])});
    }
    return sum;
}

/// Each part by itself where it is cheapest, without a thought of freight.
std::vector<std::int64_t> PlanChoice::plainValues() const
{
    std::vector<std::int64_t> values(m_programme.size(), 0);
    for (std::size_t part = 0; part < m_first.size(); ++part) {
        const PartWish &wish = m_wishes.parts[part];
        std::optional<std::pair<std::int64_t, std::size_t>> best;
        for (std::size_t at = 0; at < wish.offers.size(); ++at)
            for (std::size_t i = 0; i < wish.offers[at].choices.size(); ++i) {
                const LineChoice &choice = wish.offers[at].choices[i];
                const bool serves =
                    wish.offers[at].days <= wish.dues.front().days && choice.units >= wish.units();
                if (serves && (!best || choice.worth < best->first))
                    best = {choice.worth, m_first[part][at] + i};
            }
        if (best)
            values[best->second] = 1;
    }
    for (std::size_t parcel = 0; parcel < m_steps.size(); ++parcel) {
        const std::int64_t goods = worthOf(goodsOf(parcel), values);
        const Parcel &of = m_wishes.parcels[parcel];
        if (goods > 0)
            values[m_steps[parcel][static_cast<std::size_t>(&of.step(goods) - of.steps.data())]] =
                1;
    }
    for (const Rounded &rounded : m_rounded) {
        const Decimal exact = Decimal(worthOf(rounded.sum, values)) * Decimal(rounded.numerator);
        const auto whole =
            divide(exact, Decimal(rounded.denominator), 0, rounded.rounding).toInt64().value_or(0);
        values[rounded.half] = whole / 2;
        values[rounded.odd] = whole % 2;
    }
    return values;
}

Chosen PlanChoice::chosen(PlanAim first, std::chrono::milliseconds within)
{
    if (m_wishes.parts.empty()) {
        Chosen nothing;
        nothing.isFound = true;
        nothing.isProven = true;
        return nothing;
    }
    Programme programme = m_programme;
    LinearSum missing;
    for (const std::size_t number : m_missing)
        missing.push_back({number, 1});
    if (!missing.empty())
        programme.aim(missing);
    if (first == PlanAim::Parcels)
        programme.aim(m_parcels);
    programme.aim(m_money);
    programme.startWith(plainValues());
    const Solution best = programme.solve(within * 4 / 5);
    Chosen chosen = read(best);
    if (!chosen.isFound)
        return chosen;

    // What is left open by that: of what costs the same, what comes earlier …
    Programme further = m_programme;
    further.keep(missing, 0, worthOf(missing, best.values));
    further.keep(m_money, NoLimit::Below, worthOf(m_money, best.values));
    if (first == PlanAim::Parcels)
        further.keep(m_parcels, NoLimit::Below, worthOf(m_parcels, best.values));
    further.aim(sumOf([](const OfferChoices &from, const LineChoice &) { return from.days; }));
    further.aim(m_parcels);
    further.aim(sumOf([](const OfferChoices &, const LineChoice &one) { return one.units; }));
    further.aim(sumOf([](const OfferChoices &, const LineChoice &) { return 1; }));
    further.startWith(best.values);
    const Solution last = further.solve(within / 5);
    if (last.outcome == Solution::Outcome::Found)
        chosen.lines = read(last).lines;
    return chosen;
}

Chosen PlanChoice::read(const Solution &solution) const
{
    Chosen chosen;
    chosen.isFound = solution.outcome == Solution::Outcome::Found;
    if (!chosen.isFound)
        return chosen;
    chosen.isProven = solution.isProven();
    if (!chosen.isProven && solution.proven + 1 == solution.aims.size())
        chosen.least = solution.bound;
    for (std::size_t part = 0; part < m_first.size(); ++part) {
        const PartWish &wish = m_wishes.parts[part];
        if (!m_missing.empty() && solution.values[m_missing[part]] != 0) {
            chosen.unplaced.push_back(part);
            continue;
        }
        for (std::size_t at = 0; at < wish.offers.size(); ++at)
            for (std::size_t i = 0; i < wish.offers[at].choices.size(); ++i)
                if (solution.values[m_first[part][at] + i] != 0)
                    chosen.lines.push_back({part, at, i});
    }
    return chosen;
}

} // namespace flarestock
