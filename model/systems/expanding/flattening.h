// SPDX-License-Identifier: MIT
//
// Flattening: a template with its modules becomes one list of stations, runs and extras, each with
// the answers that hold where it stands. Ids carry the modules before them: "filters/prefilter".
// Stations stand in flow order: a module's after the station that a run brings into it.

#pragma once

#include "model/systems/sizing/completing.h"

#include <memory>

namespace flarestock {

/// Where a station stands: its template, the answers to that template's questions and the fluid.
struct Scope {
    const Template *form = nullptr;
    Answers answers; ///< Complete.
    std::optional<Fluid> fluid;
    std::string prefix; ///< "filters/", empty for the outermost template.
};

struct FlatStation {
    std::string id;
    const Station *station = nullptr;
    const Scope *scope = nullptr;
};

struct FlatRun {
    std::string id;
    const Run *run = nullptr;
    const Scope *scope = nullptr;
    std::size_t from = 0; ///< Index of its station.
    std::size_t to = 0;
};

struct FlatExtra {
    const Extra *extra = nullptr;
    const Scope *scope = nullptr;
};

struct FlatSystem {
    std::vector<std::unique_ptr<const Scope>> scopes; ///< Outermost first.
    std::vector<FlatStation> stations;                ///< In flow order; only those that apply.
    std::vector<FlatRun> runs;                        ///< By the station that they leave.
    std::vector<FlatExtra> extras;
    std::vector<WorkedAnswer> workedOut; ///< The outermost template's first.
    std::vector<std::string> notes;
};

/// `given` are the builder's answers to the outermost template. Where a module says nothing about
/// its template's fluid question, the fluid of the outer one is the answer, if it is one of its
/// choices. `known` is what answers are worked out with. Problem: as completed() (expand.h) and
/// then sizeAllowed() (template_size.h) say; an answer of a module that its template does not take.
[[nodiscard]] Result<FlatSystem> flatten(const TemplateBook &book, const Template &form,
                                         const Answers &given, const KnownParts &known);

} // namespace flarestock
