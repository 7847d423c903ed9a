// SPDX-License-Identifier: MIT
//
// Line budget: what the lines of a fuel system may take of the pressure, and how near to boiling
// the fuel may come at a pump's inlet. Findings judge by these bounds, and templates choose sizes
// by them: a line within its caution bound is quiet.
//
//   lineBudget(FuelSystem::Injection, BudgetedLine::BeforeRegulator, 300e3).cautionPa; // 30 kPa

#pragma once

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class FuelSystem : std::uint8_t { Carburettor, Injection };

/// From the pump to a regulator or rail, with the pump's flow where there is a return, else the
/// engine's; from a regulator to carburettor or rail, with the engine's; from a bypass regulator
/// back to the tank, with all that the pump gives.
enum class BudgetedLine : std::uint8_t { BeforeRegulator, BehindRegulator, Return };

struct LineBudget {
    double cautionPa = 0;    ///< More than this is told.
    double stopPa = 0;       ///< Where even the lower estimate is more than this, it is a stop.
    std::string_view status; ///< "judgement"
    std::string_view source; ///< Never empty.
};

/// model/fluids/data/line_budgets.csv. setPa: over the air, what regulator or rail is set to; 0 or
/// more (asserted).
[[nodiscard]] LineBudget lineBudget(FuelSystem system, BudgetedLine line, double setPa);

/// Of the margin of a pump's inlet over the vapour pressure; less than these is told.
struct InletBounds {
    double cautionPa = 0;
    double stopPa = 0;
    std::string_view status; ///< "judgement"
    std::string_view source; ///< Never empty.
    double aircraftPa = 0;   ///< What aircraft pumps are held to: told beside, and no bound here.
    std::string_view aircraftSource; ///< Never empty.
};

/// model/fluids/data/line_budgets.csv.
[[nodiscard]] const InletBounds &inletBounds();

} // namespace flarestock
