// SPDX-License-Identifier: MIT
//
// Drafting: what a purchase plan proposes, written down as drafts of orders in one action.

#pragma once

#include "app/command/buying/order_answers.h"

namespace flarestock {

/// `flarestock order new --from-plan`.
void answerFromPlan(const OrderAsked &asked, OpenShop &shop);

} // namespace flarestock
