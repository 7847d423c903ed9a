// SPDX-License-Identifier: MIT

#include "model/systems/expanding/flattening.h"

#include "model/systems/expand.h"
#include "model/systems/expanding/template_size.h"
#include "model/systems/sizing/line_working.h"

#include <algorithm>
#include <cassert>
#include <unordered_map>

namespace flarestock {

namespace {

/// Where a station or module of one template comes in flow order: by the template's own station at
/// or after which it lies, then by the order in which modules are written.
struct FlowKey {
    std::ptrdiff_t station = 0;
    std::size_t module = 0; ///< 0 for the station itself.
    friend auto operator<=>(const FlowKey &, const FlowKey &) = default;
};

using FlowKeys = std::unordered_map<std::string_view, FlowKey>;

std::string_view firstStep(std::string_view station)
{
    return station.substr(0, station.find('/'));
}

FlowKeys ownStations(const Template &form)
{
    FlowKeys keys;
    for (std::size_t i = 0; i < form.stations.size(); ++i)
        keys.emplace(form.stations[i].id, FlowKey{static_cast<std::ptrdiff_t>(i), 0});
    return keys;
}

/// Modules after the last station or earlier module that feeds them, else before the first that
/// they feed, else at the end.
FlowKeys flowOrder(const Template &form)
{
    FlowKeys keys = ownStations(form);
    std::unordered_map<std::string_view, std::vector<const Run *>> runsOf;
    for (const Run &run : form.runs) {
        runsOf[firstStep(run.from.station)].push_back(&run);
        if (firstStep(run.to.station) != firstStep(run.from.station))
            runsOf[firstStep(run.to.station)].push_back(&run);
    }
    const auto last = static_cast<std::ptrdiff_t>(form.stations.size()) - 1;
    for (std::size_t i = 0; i < form.modules.size(); ++i) {
        const std::string_view id = form.modules[i].id;
        std::optional<std::ptrdiff_t> after;
        std::optional<std::ptrdiff_t> before;
        for (const Run *run : runsOf[id]) {
            const auto from = keys.find(firstStep(run->from.station));
            const auto to = keys.find(firstStep(run->to.station));
            if (from != keys.end() && from->first != id)
                after = std::max(after.value_or(-1), from->second.station);
            if (to != keys.end() && to->first != id)
                before = std::min(before.value_or(last), to->second.station - 1);
        }
        keys.emplace(id, FlowKey{after.value_or(before.value_or(last)), i + 1});
    }
    return keys;
}

class Flattening {
public:
    Flattening(const TemplateBook &book, const KnownParts &known) : m_book(book), m_known(known) {}

    Result<FlatSystem> of(const Template &form, CompletedAnswers complete)
    {
        auto scope = std::make_unique<Scope>();
        scope->form = &form;
        scope->fluid = fluidAnswered(form, complete.answers);
        scope->answers = std::move(complete.answers);
        m_system.workedOut = std::move(complete.worked);
        auto stations = within(adopt(std::move(scope)));
        if (!stations)
            return tl::unexpected(stations.error());
        m_system.stations = std::move(*stations);
        connectRuns();
        return std::move(m_system);
    }

private:
    struct Unit {
        FlowKey key;
        std::vector<FlatStation> stations;
    };

    const Scope &adopt(std::unique_ptr<Scope> scope)
    {
        m_system.scopes.push_back(std::move(scope));
        return *m_system.scopes.back();
    }

    /// The stations of one scope, those of its modules in place; runs and extras are put by.
    Result<std::vector<FlatStation>> within(const Scope &scope)
    {
        const Template &form = *scope.form;
        const FlowKeys keys = flowOrder(form);
        std::vector<Unit> units;
        for (const Station &station : form.stations)
            if (station.when.holds(scope.answers))
                units.push_back(
                    {keys.at(station.id), {{scope.prefix + station.id, &station, &scope}}});
        for (const Run &run : form.runs)
            if (run.when.holds(scope.answers))
                m_runs.push_back({scope.prefix + run.id, &run, &scope, 0, 0});
        for (const Extra &extra : form.extras)
            if (extra.when.holds(scope.answers))
                m_system.extras.push_back({&extra, &scope});
        for (const Module &module : form.modules) {
            if (!module.when.holds(scope.answers))
                continue;
            const auto inner = innerScope(module, scope);
            if (!inner)
                return tl::unexpected(inner.error());
            auto stations = within(**inner);
            if (!stations)
                return stations;
            units.push_back({keys.at(module.id), std::move(*stations)});
        }
        return inFlowOrder(std::move(units));
    }

    static std::vector<FlatStation> inFlowOrder(std::vector<Unit> units)
    {
        std::stable_sort(units.begin(), units.end(),
                         [](const Unit &a, const Unit &b) { return a.key < b.key; });
        std::vector<FlatStation> stations;
        for (Unit &unit : units)
            std::move(unit.stations.begin(), unit.stations.end(), std::back_inserter(stations));
        return stations;
    }

    Result<const Scope *> innerScope(const Module &module, const Scope &outer)
    {
        const Template &form = *m_book.find(module.templateId)->second; // sizeAllowed() was asked.
        Answers given;
        for (const auto &[question, varying] : module.answers)
            if (auto answer = varying.with(outer.answers))
                given.emplace(question, std::move(*answer));
        if (outer.fluid)
            answerFluid(form, *outer.fluid, given);
        KnownParts known = m_known;
        known.prefix = outer.prefix + module.id + "/";
        auto complete = completedWith(form, given, known);
        if (!complete) {
            Problem wrong = complete.error();
            wrong.thing = "module " + outer.prefix + module.id + ", " + wrong.thing;
            return tl::unexpected(std::move(wrong));
        }
        auto scope = std::make_unique<Scope>();
        scope->form = &form;
        scope->fluid = outer.fluid ? outer.fluid : fluidAnswered(form, complete->answers);
        scope->answers = std::move(complete->answers);
        scope->prefix = std::move(known.prefix);
        for (WorkedAnswer &worked : complete->worked)
            if (!worked.own) // Else the outer template has said it.
                m_system.workedOut.push_back(std::move(worked));
        return &adopt(std::move(scope));
    }

    static void answerFluid(const Template &form, Fluid fluid, Answers &given)
    {
        const Question *question = form.question(form.fluidQuestion);
        if (!question || given.contains(question->id))
            return;
        for (const std::string &choice : question->choices)
            if (const auto parsed = parseFluid(choice); parsed && *parsed == fluid)
                given.emplace(question->id, choice);
    }

    /// Finds the stations of the runs; by the station that they leave, then by the one they reach.
    void connectRuns()
    {
        std::unordered_map<std::string_view, std::size_t> byId;
        for (std::size_t i = 0; i < m_system.stations.size(); ++i)
            byId.emplace(m_system.stations[i].id, i);
        for (FlatRun &run : m_runs) {
            const std::string from = run.scope->prefix + run.run->from.station;
            const std::string to = run.scope->prefix + run.run->to.station;
            const auto start = byId.find(from);
            const auto end = byId.find(to);
            if (start == byId.end() || end == byId.end()) {
                m_system.notes.push_back("Run " + run.id +
                                         " is left out: " + (start == byId.end() ? from : to) +
                                         " is no part of this build.");
                continue;
            }
            run.from = start->second;
            run.to = end->second;
            m_system.runs.push_back(std::move(run));
        }
        std::stable_sort(m_system.runs.begin(), m_system.runs.end(),
                         [](const FlatRun &a, const FlatRun &b) {
                             return std::pair(a.from, a.to) < std::pair(b.from, b.to);
                         });
    }

    const TemplateBook &m_book;
    const KnownParts &m_known;
    FlatSystem m_system;
    std::vector<FlatRun> m_runs;
};

} // namespace

Result<FlatSystem> flatten(const TemplateBook &book, const Template &form, const Answers &given,
                           const KnownParts &known)
{
    auto complete = completedWith(form, given, known);
    if (!complete)
        return tl::unexpected(complete.error());
    if (const auto allowed = sizeAllowed(book, form); !allowed)
        return tl::unexpected(allowed.error());
    return Flattening(book, known).of(form, std::move(*complete));
}

} // namespace flarestock
