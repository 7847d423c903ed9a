// SPDX-License-Identifier: MIT
//
// WorkedOut: one state of a build with everything that follows from it. The lists of the desk are
// pure functions of it. It points into the shop's snapshot and keeps that alive.

#pragma once

#include "model/checks/finding.h"
#include "model/exact/problem.h"
#include "model/exchange/template_toml.h"
#include "model/netting/lying.h"

#include <functional>
#include <memory>
#include <vector>

namespace flarestock {

struct WorkedBuild;
struct Workshop;

struct WorkedOut {
    std::shared_ptr<const void> alive; ///< Owns what the pointers below point to.
    const Template *form = nullptr;
    const Expansion *expansion = nullptr;
    const PricedBill *bill = nullptr;
    const std::vector<Finding> *findings = nullptr;
    const Catalogue *catalogue = nullptr;
    const Shelf *shelf = nullptr;
    const std::vector<Lying> *lying = nullptr; ///< Of each line of the bill; may be none.
    const Workshop *workshop = nullptr; ///< What it was worked out in; nothing where without one …
    const WorkedBuild *built = nullptr; ///< … and then this neither.
};

/// Works a plan out anew. Problem: an answer or pick that the template or catalogue refuses.
using WorkOut = std::function<Result<WorkedOut>(const BuildPlan &plan)>;

} // namespace flarestock
