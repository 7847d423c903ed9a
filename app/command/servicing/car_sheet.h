// SPDX-License-Identifier: MIT
//
// Car sheet: what is in a car, for people and as a document; what was done to a piece.

#pragma once

#include "app/command/shop_options.h"
#include "app/garage/at_work.h"

namespace flarestock {

/// Rings are left out unless `all`, where nobody did something to them and no day counts.
[[nodiscard]] std::string carSheet(const std::string &car, const Garage &garage, bool all);
[[nodiscard]] QJsonObject carDocument(const std::string &car, const Garage &garage);

/// "protected by the pre-filter PF-75-8, in since 2026-11-28"; empty of what can be opened, or
/// where no filter stands before it.
[[nodiscard]] std::string protectedBy(const FittedPiece &piece, const Garage &garage,
                                      const CarLife &life);
[[nodiscard]] QJsonObject useDocument(const Use &use);

/// What was done, in a sentence, with the rings that it took and what is to follow.
[[nodiscard]] std::string saidOf(const WorkDone &done);
[[nodiscard]] QJsonObject documentOf(const WorkDone &done, const Workshop &workshop);

} // namespace flarestock
