// SPDX-License-Identifier: MIT

#include "model/programme/cbc_search.h"

#include <coin/Cbc_C_Interface.h>
#include <dlfcn.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <memory>
#include <mutex>
#include <string>

namespace flarestock {

namespace {

/// What the library takes for no limit.
constexpr double Unlimited = 1e30;

/// The library's functions, each as its header says.
struct Cbc {
    decltype(&Cbc_newModel) newModel = nullptr;
    decltype(&Cbc_deleteModel) deleteModel = nullptr;
    decltype(&Cbc_loadProblem) loadProblem = nullptr;
    decltype(&Cbc_setInteger) setInteger = nullptr;
    decltype(&Cbc_setObjSense) setObjSense = nullptr;
    decltype(&Cbc_setLogLevel) setLogLevel = nullptr;
    decltype(&Cbc_setParameter) setParameter = nullptr;
    decltype(&Cbc_solve) solve = nullptr;
    decltype(&Cbc_isProvenInfeasible) isProvenInfeasible = nullptr;
    decltype(&Cbc_isProvenOptimal) isProvenOptimal = nullptr;
    decltype(&Cbc_getBestPossibleObjValue) bestPossible = nullptr;
    decltype(&Cbc_bestSolution) bestSolution = nullptr;
    bool isWhole = false; ///< All of them were found.

    Cbc()
    {
        void *library = ::dlopen(FLARESTOCK_CBC, RTLD_NOW | RTLD_LOCAL); // For good.
        if (library == nullptr)
            return;
        isWhole = true;
        find(library, "Cbc_newModel", newModel);
        find(library, "Cbc_deleteModel", deleteModel);
        find(library, "Cbc_loadProblem", loadProblem);
        find(library, "Cbc_setInteger", setInteger);
        find(library, "Cbc_setObjSense", setObjSense);
        find(library, "Cbc_setLogLevel", setLogLevel);
        find(library, "Cbc_setParameter", setParameter);
        find(library, "Cbc_solve", solve);
        find(library, "Cbc_isProvenInfeasible", isProvenInfeasible);
        find(library, "Cbc_isProvenOptimal", isProvenOptimal);
        find(library, "Cbc_getBestPossibleObjValue", bestPossible);
        find(library, "Cbc_bestSolution", bestSolution);
    }

private:
    template <typename Function>
    void find(void *library, const char *name, Function &function)
    {
        function = reinterpret_cast<Function>(::dlsym(library, name));
        isWhole = isWhole && function != nullptr;
    }
};

const Cbc &cbc()
{
    static const Cbc library;
    return library;
}

struct Delete {
    void operator()(Cbc_Model *model) const { cbc().deleteModel(model); }
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
    Model model(cbc().newModel());
    cbc().loadProblem(model.get(), static_cast<int>(search.numbers.size()),
                      static_cast<int>(search.limits.size()), columns.starts.data(),
                      columns.rows.data(), columns.factors.data(), least.data(), most.data(),
                      aim.data(), rowLeast.data(), rowMost.data());
    for (std::size_t i = 0; i < search.numbers.size(); ++i)
        cbc().setInteger(model.get(), static_cast<int>(i));
    cbc().setObjSense(model.get(), 1);
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

Searched searchedByCbc(const Search &search, std::chrono::milliseconds time)
{
    assert(!search.numbers.empty() && time.count() > 0);
    if (!cbc().isWhole)
        return {};
    static std::mutex one; // The library keeps what it reads of its parameters in globals.
    const std::lock_guard lock(one);
    const Model model = modelOf(search);
    const auto set = [&model](const char *name, const std::string &value) {
        cbc().setParameter(model.get(), name, value.c_str());
    };
    cbc().setLogLevel(model.get(), 0);
    set("log", "0");
    set("slogLevel", "0");
    set("timeMode", "elapsed");
    // In whole hundredths, which are written without a point: the locale's is no matter.
    const std::string hundredths = std::to_string(std::max<std::int64_t>(1, time.count() / 10));
    set("seconds", hundredths + "e-2");
    set("ratioGap", "0");
    set("allowableGap", "0");
    cbc().solve(model.get());

    Searched searched;
    if (cbc().isProvenInfeasible(model.get()) != 0) {
        searched.end = Searched::End::Impossible;
        return searched;
    }
    if (cbc().isProvenOptimal(model.get()) != 0)
        searched.end = Searched::End::Lowest;
    searched.bound = wholeBound(cbc().bestPossible(model.get()));
    if (const double *values = cbc().bestSolution(model.get()))
        for (std::size_t i = 0; i < search.numbers.size(); ++i)
            searched.values.push_back(static_cast<std::int64_t>(std::llround(values[i])));
    return searched;
}

} // namespace flarestock
