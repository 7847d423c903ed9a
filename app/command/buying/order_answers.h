// SPDX-License-Identifier: MIT
//
// Order answers: what `flarestock order` does once its words are read: the steps of an order, each
// said with the order as it stands from then on, and its papers.

#pragma once

#include "app/buyer/order_words.h"
#include "app/command/papers/paper_options.h"
#include "app/command/purchase/plan_words.h"
#include "app/command/shop_options.h"

namespace flarestock {

struct OrderAsked : ShopAsked, OrderWords, PaperAsked {
    std::string number;
    std::string supplier;
    bool fromPlan = false; ///< By what `plan` asks, whose own words count then.
    PlanWords plan;
    std::string state; ///< Of a list: how its orders stand; empty: any.
};

void answerNewOrder(const OrderAsked &asked, OpenShop &shop);
void answerOrderList(const OrderAsked &asked, OpenShop &shop);
void answerShowOrder(const OrderAsked &asked, OpenShop &shop);
void answerPlaceOrder(const OrderAsked &asked, OpenShop &shop);
void answerChangeOrder(const OrderAsked &asked, OpenShop &shop);
void answerCloseOrder(const OrderAsked &asked, OpenShop &shop);
void answerCancelOrder(const OrderAsked &asked, OpenShop &shop);

} // namespace flarestock
