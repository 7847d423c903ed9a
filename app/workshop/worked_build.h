// SPDX-License-Identifier: MIT
//
// WorkedBuild: a build worked out to the end: expanded, checked and priced. The commands and the
// desk call the same function, so that they cannot differ.

#pragma once

#include "app/workshop/workshop.h"
#include "model/checks/check.h"
#include "model/netting/lying.h"
#include "model/systems/expand.h"

namespace flarestock {

/// The bill points into the expansion: moved together, never copied. The catalogue and the shelf of
/// the request must outlive it.
struct WorkedBuild {
    WorkedBuild(Expansion built, const ExpandRequest &request, const Currency &currency);
    WorkedBuild(const WorkedBuild &) = delete;
    WorkedBuild &operator=(const WorkedBuild &) = delete;
    WorkedBuild(WorkedBuild &&) noexcept = default;
    WorkedBuild &operator=(WorkedBuild &&) noexcept = default;
    ~WorkedBuild() = default;

    Expansion expansion;
    PricedBill bill;
    std::vector<Lying> lying;      ///< Of each line of the bill; empty where no shop is behind it.
    std::vector<Finding> findings; ///< As check() orders them, then the expansion's own notes.

    /// Of that line of the bill; all that is free is here where no shop is behind it.
    [[nodiscard]] Lying lyingAt(std::size_t line) const;
    [[nodiscard]] int count(Severity severity) const noexcept; ///< Findings of that severity.
    [[nodiscard]] bool isReady() const noexcept; ///< No stop, and nothing that is short.
};

/// `currency` is the shop's. Problem: what expand() refuses.
[[nodiscard]] Result<WorkedBuild> workBuild(const ExpandRequest &request, const Currency &currency);

/// How the joints of a plan are chosen together.
struct JointSearch {
    std::chrono::milliseconds within = std::chrono::milliseconds(100); ///< For a screen.
    Picks waysWished = {}; ///< As ExpandRequest::waysWished.
};

/// The same for a plan of a shop, which must outlive it, its joints chosen together; without a
/// shelf by Workshop::shelfFor(), within 5 s. Problem: also a wrong preference.
[[nodiscard]] Result<WorkedBuild> workBuild(const Workshop &workshop, const BuildPlan &plan,
                                            const Shelf &shelf, const JointSearch &search = {});
[[nodiscard]] Result<WorkedBuild> workBuild(const Workshop &workshop, const BuildPlan &plan);

} // namespace flarestock
