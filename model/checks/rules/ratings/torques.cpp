// SPDX-License-Identifier: MIT
//
// Torques: joints for which published torques differ so much that two fitters with two books
// tighten one and the same joint otherwise. The cause is the books', so it is said once for the
// build; the torque card (`flarestock torque`) has every figure.

#include "model/checks/rules/rules.h"
#include "model/checks/torque_card.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace flarestock::rules {

namespace {

std::string tenths(double value)
{
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                   std::chars_format::fixed, 1);
    return {digits.data(), end.ptr};
}

/// "23.7 to 28.2 N·m", and that it is the half of the printed figure where it is.
std::string range(const Torque &torque)
{
    const auto least = tenths(torque.leastNm);
    const auto most = tenths(torque.mostNm);
    return (least == most ? least : least + " to " + most) + " N·m" +
           (torque.halved ? ", half of what it prints because not all is of steel" : "");
}

} // namespace

void torques(const BuildUnderCheck &build, Findings &found)
{
    const auto card = torqueCard(build.expansion());
    std::vector<const TorqueLine *> differing;
    for (const TorqueLine &line : card)
        if (line.disagreement)
            differing.push_back(&line);
    if (differing.empty())
        return;
    const auto *widest = *std::max_element(differing.begin(), differing.end(),
                                           [](const TorqueLine *a, const TorqueLine *b) {
                                               return *a->disagreement < *b->disagreement;
                                           });
    const bool one = differing.size() == 1;
    found.push_back(
        {.severity = Severity::Note,
         .matter = Matter::Assembly,
         .about = "Published torques differ by a factor of up to " + tenths(*widest->disagreement),
         .where = one ? widest->joint : std::string(),
         .text = (one ? std::string() : "At " + std::to_string(differing.size()) + " joints. ") +
                 BuildUnderCheck::capital(widest->at) + ", " + widest->asked.port.text() +
                 ": by one table " + range(widest->torques.front()) + ", by another " +
                 range(widest->torques.back()) + ".",
         .source = std::string(widest->torques.front().source) + "; " +
                   std::string(widest->torques.back().source),
         .remedy = "Keep to the part maker's figure, or to one source for the whole car, and write "
                   "down which.",
         .mend = {}});
}

} // namespace flarestock::rules
