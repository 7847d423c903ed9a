// SPDX-License-Identifier: MIT
//
// Rules: each looks at one thing in an expanded build and adds what it finds. A rule stands in the
// file of its name; check() runs all of them, sorts what they say and drops what is said twice.

#pragma once

#include "model/checks/finding.h"
#include "model/checks/rules/build_under_check.h"

#include <vector>

namespace flarestock::rules {

using Findings = std::vector<Finding>;

/// Seals, liners, elements and makers' lists of fluids against the fluid of the build; metals that
/// it attacks; aluminium under steel nuts and in brakes; lines that do not conduct.
void fluidAndMaterial(const BuildUnderCheck &build, Findings &found);
void metals(const BuildUnderCheck &build, Findings &found);
void steelOnAluminium(const BuildUnderCheck &build, Findings &found);
void aluminiumInBrakes(const BuildUnderCheck &build, Findings &found);
void bonding(const BuildUnderCheck &build, Findings &found);
/// Stations and runs for which the catalogue has nothing; joints that nothing closes, that leak,
/// jam, strip or want knowing.
void emptyPlaces(const BuildUnderCheck &build, Findings &found);
void jointVerdicts(const BuildUnderCheck &build, Findings &found);
/// Whether it can be screwed together at all.
void assembly(const BuildUnderCheck &build, Findings &found);
/// Lines that are bent too tight, and ends of another angle.
void bends(const BuildUnderCheck &build, Findings &found);
/// Torques that the published tables do not agree on.
void torques(const BuildUnderCheck &build, Findings &found);
/// Wire, fuse and relay of electric pumps.
void pumpWiring(const BuildUnderCheck &build, Findings &found);
/// Regulators that cannot hold the pressure, users that want another.
void pressures(const BuildUnderCheck &build, Findings &found);
/// Pieces rated for less pressure or heat than the system has, and those that nobody rates.
void workingPressures(const BuildUnderCheck &build, Findings &found);
void workingTemperatures(const BuildUnderCheck &build, Findings &found);
/// Ports by their maker's mark against the flow.
void direction(const BuildUnderCheck &build, Findings &found);
/// A filter before and one after an electric pump, coarse before fine, grades for what follows.
void pumpFilters(const BuildUnderCheck &build, Findings &found);
void filterGrades(const BuildUnderCheck &build, Findings &found);
/// What a clean filter takes of the pressure; bypass and beta of oil filters; elements and their
/// life.
void filterLosses(const BuildUnderCheck &build, Findings &found);
void oilFilters(const BuildUnderCheck &build, Findings &found);
void elements(const BuildUnderCheck &build, Findings &found);
/// What each filter protects, and what none does.
void unprotected(const BuildUnderCheck &build, Findings &found);
/// Filters and regulators that pass less than is wanted, and pumps that never could.
void flows(const BuildUnderCheck &build, Findings &found);
/// Pumps that give too little against their lines, or work outside their curves; fuel near boiling
/// at their inlets; surge tanks that run empty.
void pumpFlows(const BuildUnderCheck &build, Findings &found);
void pumpInlets(const BuildUnderCheck &build, Findings &found);
void surgeTanks(const BuildUnderCheck &build, Findings &found);
/// Tanks whose level alone does not push what the engine wants.
void gravityFeeds(const BuildUnderCheck &build, Findings &found);
/// Regulators that their return holds up, lines that take too much, lines in which it flows too
/// fast.
void returnLines(const BuildUnderCheck &build, Findings &found);
void lineLosses(const BuildUnderCheck &build, Findings &found);
void velocities(const BuildUnderCheck &build, Findings &found);
/// What of it is assumed, uncertain or not known, once each.
void flowDoubts(const BuildUnderCheck &build, Findings &found);
/// Boxes found incomplete, picks that something else would now better, lines that are short, and
/// those that nobody counts and of which little was left.
void boxContents(const BuildUnderCheck &build, Findings &found);
void outdonePicks(const BuildUnderCheck &build, Findings &found);
void shortLines(const BuildUnderCheck &build, Findings &found);
void lowLevels(const BuildUnderCheck &build, Findings &found);

} // namespace flarestock::rules
