// SPDX-License-Identifier: MIT

#include "model/spares/carry/spare_demand.h"

#include <boost/math/distributions/negative_binomial.hpp>
#include <boost/math/distributions/poisson.hpp>

#include <cassert>

namespace flarestock {

namespace {

/// What binary fractions cannot tell from the certainty that is asked for.
constexpr double Untold = 1e-12;

double poissonAtMost(double mean, double most)
{
    if (most < 0)
        return 0;
    return mean <= 0 ? 1 : boost::math::cdf(boost::math::poisson_distribution<>(mean), most);
}

double binomialAtMost(double shape, double success, double most)
{
    if (most < 0)
        return 0;
    if (success >= 1)
        return 1;
    return boost::math::cdf(boost::math::negative_binomial_distribution<>(shape, success), most);
}

} // namespace

SpareDemand SpareDemand::poisson(double mean)
{
    assert(mean >= 0 && mean <= MeanMost);
    return {Form::Poisson, mean};
}

SpareDemand SpareDemand::predictive(const UsesSeen &history)
{
    assert(history.uses >= 0 && history.seen > 0 && history.coming >= 0);
    SpareDemand demand(Form::Predictive, (history.uses + 1) * history.coming / history.seen);
    demand.m_shape = history.uses + 1;
    demand.m_success = history.seen / (history.seen + history.coming);
    return demand;
}

SpareDemand SpareDemand::of(const UsesSeen &history)
{
    return isThin(history) ? predictive(history)
                           : poisson(history.uses * history.coming / history.seen);
}

double SpareDemand::covered(std::int64_t carried) const
{
    const auto most = static_cast<double>(carried);
    return m_form == Form::Poisson ? poissonAtMost(m_mean, most)
                                   : binomialAtMost(m_shape, m_success, most);
}

std::int64_t SpareDemand::fewest(double certainty) const
{
    assert(certainty > 0 && certainty < 1);
    const auto covers = [&](std::int64_t carried) {
        return covered(carried) >= certainty - Untold;
    };
    if (covers(0))
        return 0;
    std::int64_t tooFew = 0;
    std::int64_t enough = 1;
    while (!covers(enough)) {
        tooFew = enough;
        enough *= 2;
    }
    while (enough - tooFew > 1) {
        const std::int64_t middle = tooFew + (enough - tooFew) / 2;
        (covers(middle) ? enough : tooFew) = middle;
    }
    return enough;
}

double SpareDemand::met(std::int64_t carried) const
{
    if (m_mean <= 0)
        return 1;
    const auto most = static_cast<double>(carried);
    // Σ j p(j) up to what is carried is the mean times the law weighted by size, one lower.
    const double used = m_form == Form::Poisson ? poissonAtMost(m_mean, most - 1)
                                                : binomialAtMost(m_shape + 1, m_success, most - 1);
    return used + most * (1 - covered(carried)) / m_mean;
}

std::string_view text(SpareDemand::Form form) noexcept
{
    return form == SpareDemand::Form::Poisson ? "Poisson" : "predictive";
}

} // namespace flarestock
