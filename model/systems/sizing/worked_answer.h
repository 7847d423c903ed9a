// SPDX-License-Identifier: MIT
//
// Worked answer: a default that was worked out from other answers, with what stands behind it. The
// builder's own answer counts before it; what that costs in pressure is asked here.
//
//   answer.worked; answer.answer;     // "-8", "-6": the builder overrode it
//   answer.sizes->overWorkedPa();     // 12 kPa more than in -8

#pragma once

#include "model/fluids/line/dash_practice.h"
#include "model/systems/sizing/line_sizes.h"

#include <string>
#include <vector>

namespace flarestock {

struct WorkedAnswer {
    struct Sizes {
        LineAsked line;
        std::vector<SizeTried> tried;         ///< All sizes of the question, rising.
        int worked = 0;                       ///< Dash sizes.
        int taken = 0;                        ///< The builder's, or the worked one.
        std::optional<DashPractice> practice; ///< The rule of thumb, of a line before a regulator.
        std::string_view budgetSource;        ///< Empty where no pressure is kept to.
        std::string_view velocitySource;

        [[nodiscard]] const SizeTried *of(int dash) const noexcept;
        /// The next size below the worked one; nullptr where there is none.
        [[nodiscard]] const SizeTried *nextDown() const noexcept;
        /// What a size takes more than the worked one; negative where less.
        [[nodiscard]] double overWorkedPa(const SizeTried &size) const noexcept;
    };
    std::string question; ///< Its id, with the modules before it.
    std::string title;
    std::string worked; ///< "-8", "228 L/h"; the fixed default where it cannot be worked out.
    std::string answer; ///< What counts: the builder's own or the worked one.
    bool own = false;   ///< The builder has answered himself.
    std::string why;    ///< Why it could not be worked out, or why nothing keeps; else empty.
    std::optional<Sizes> sizes;     ///< Of a line size that could be reckoned.
    std::vector<std::string> pumps; ///< Station ids whose flow it asks for.
};

} // namespace flarestock
