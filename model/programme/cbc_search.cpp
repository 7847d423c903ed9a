// SPDX-License-Identifier: MIT

#include "model/programme/cbc_search.h"

#include <coin/Cbc_C_Interface.h>

#include <cassert>
#include <cmath>
#include <memory>
#include <mutex>
#include <string>

namespace flarestock {

namespace {

/// What the library takes for no limit.
constexpr double Unlimited = 1e30;

struct Delete {
    void operator()(Cbc_Model *model) const { Cbc_deleteModel(model); }
};
using Model = std::unique_ptr<Cbc_Model, Delete>;

/// The limits column by column, as the library takes them.
struct Columns {
    std::vector<CoinBigIndex> starts;
    std::vector<int> rows;
    std::vector<double> factors;
};

Columns columnsOf(const Search &search)
{
    Columns columns;
    columns.starts.assign(search.numbers.size() + 1, 0);
    for (const auto &limit : search.limits)
        for (const Term &term : limit.sum)
            ++columns.starts[term.number + 1];
    for (std::size_t i = 1; i < columns.starts.size(); ++i)
        columns.starts[i] += columns.starts[i - 1];
    const auto size = static_cast<std::size_t>(columns.starts.back());
    columns.rows.resize(size);
    columns.factors.resize(size);
    auto next = columns.starts;
    for (std::size_t row = 0; row < search.limits.size(); ++row)
        for (const Term &term : search.limits[row].sum) {
            const auto at = static_cast<std::size_t>(next[term.number]++);
            columns.rows[at] = static_cast<int>(row);
            columns.factors[at] = static_cast<double>(term.times);
        }
    return columns;
}

double lower(std::int64_t least)
{
    return least <= NoLimit::Below ? -Unlimited : static_cast<double>(least);
}

double upper(std::int64_t most)
{
    return most >= NoLimit::Above ? Unlimited : static_cast<double>(most);
}

Model modelOf(const Search &search)
{
    const Columns columns = columnsOf(search);
    std::vector<double> least;
    std::vector<double> most;
    std::vector<double> rowLeast;
    std::vector<double> rowMost;
    for (const auto &range : search.numbers) {
        least.push_back(static_cast<double>(range.least));
        most.push_back(static_cast<double>(range.most));
    }
    for (const auto &limit : search.limits) {
        rowLeast.push_back(lower(limit.range.least));
        rowMost.push_back(upper(limit.range.most));
    }
    std::vector<double> aim(search.numbers.size(), 0.0);
    for (const Term &term : search.aim)
        aim[term.number] = static_cast<double>(term.times);
    Model model(Cbc_newModel());
    Cbc_loadProblem(model.get(), static_cast<int>(search.numbers.size()),
                    static_cast<int>(search.limits.size()), columns.starts.data(),
                    columns.rows.data(), columns.factors.data(), least.data(), most.data(),
                    aim.data(), rowLeast.data(), rowMost.data());
    for (std::size_t i = 0; i < search.numbers.size(); ++i)
        Cbc_setInteger(model.get(), static_cast<int>(i));
    Cbc_setObjSense(model.get(), 1);
    return model;
}

/// A lower bound as whole number: what the sum of whole numbers cannot come below, with a little
/// taken off for the library's rounding.
std::optional<std::int64_t> wholeBound(double bound)
{
    if (!std::isfinite(bound) || std::abs(bound) >= static_cast<double>(SumMost))
        return std::nullopt;
    const double slack = 1e-6 * std::max(1.0, std::abs(bound));
    return static_cast<std::int64_t>(std::ceil(bound - slack));
}

} // namespace

Searched searchedByCbc(const Search &search, std::chrono::seconds time)
{
    assert(!search.numbers.empty() && time.count() >= 1);
    static std::mutex one; // The library keeps what it reads of its parameters in globals.
    const std::lock_guard lock(one);
    const Model model = modelOf(search);
    Cbc_setLogLevel(model.get(), 0);
    Cbc_setParameter(model.get(), "log", "0");
    Cbc_setParameter(model.get(), "slogLevel", "0");
    Cbc_setParameter(model.get(), "timeMode", "elapsed");
    Cbc_setParameter(model.get(), "seconds", std::to_string(time.count()).c_str());
    Cbc_setParameter(model.get(), "ratioGap", "0");
    Cbc_setParameter(model.get(), "allowableGap", "0");
    Cbc_solve(model.get());

    Searched searched;
    if (Cbc_isProvenInfeasible(model.get()) != 0) {
        searched.end = Searched::End::Impossible;
        return searched;
    }
    if (Cbc_isProvenOptimal(model.get()) != 0)
        searched.end = Searched::End::Lowest;
    searched.bound = wholeBound(Cbc_getBestPossibleObjValue(model.get()));
    if (const double *values = Cbc_bestSolution(model.get()))
        for (std::size_t i = 0; i < search.numbers.size(); ++i)
            searched.values.push_back(static_cast<std::int64_t>(std::llround(values[i])));
    return searched;
}

} // namespace flarestock
