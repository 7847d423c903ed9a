// SPDX-License-Identifier: MIT
//
// Finding sheet: what the checks say about a build, as a person reads it in a terminal and as the
// JSON that `flarestock bill` and `flarestock check` print. The JSON's shape is a contract.

#pragma once

#include "app/workshop/worked_build.h"

#include <QJsonArray>
#include <QJsonObject>

namespace flarestock {

[[nodiscard]] QJsonObject answersDocument(const Answers &answers);
[[nodiscard]] QJsonArray findingsDocument(const std::vector<Finding> &findings);
/// Template, answers, findings, and how many of each severity there are.
[[nodiscard]] QJsonObject findingsDocument(const WorkedBuild &build);

/// Title and answers; lines ended by '\n'.
[[nodiscard]] std::string planHead(const Expansion &build);
/// What stands below the finding's own sentence: the numbers, what to do, the source.
[[nodiscard]] std::vector<std::string> reasonsOf(const Finding &finding);
/// Stops, then cautions, then notes, each in the order of the checks, with the place of each; how
/// many there are; and the words of caution.
[[nodiscard]] std::string findingSheet(const WorkedBuild &build);
/// What stands under everything that is worked out of a build.
inline constexpr std::string_view Advice =
    "Advice from the data entered, not a safety certificate: the series' rulebook, the part\n"
    "maker's data and local codes come first; have fuel and brake work checked by someone\n"
    "qualified.\n";
/// What a bill and its findings never go without.
[[nodiscard]] std::string wordsOfCaution();

} // namespace flarestock
