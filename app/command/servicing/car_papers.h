// SPDX-License-Identifier: MIT
//
// Car papers: the service card and the inspection sheet of a car, as PDF.

#pragma once

#include "app/command/shop_options.h"
#include "app/sheet/car_paper.h"

namespace flarestock {

/// Writes the paper, or tells what would stand on it; what is wrong is refused.
void answerCarPaper(CarPaperKind kind, const CarPaperAsked &asked, OpenShop &shop);

} // namespace flarestock
