// SPDX-License-Identifier: MIT

#include "app/command/purchase/drafting.h"

#include "app/buyer/ordering.h"
#include "app/command/buying/order_document.h"

#include <QJsonArray>

namespace flarestock {

namespace {

/// What a plan says itself, or what belongs to one order.
Result<void> isThePlans(const OrderAsked &asked)
{
    const std::pair<bool, const char *> typed[] = {
        {!asked.lines.empty(), "--line"},        {!asked.freight.empty(), "--freight"},
        {!asked.discount.empty(), "--discount"}, {!asked.rate.empty(), "--rate"},
        {!asked.due.empty(), "--due"},           {!asked.day.empty(), "--day"},
        {!asked.pdf.empty(), "--pdf"},           {!asked.csv.empty(), "--csv"},
        {!asked.xlsx.empty(), "--xlsx"},         {asked.note.has_value(), "--note"}};
    for (const auto &[isTyped, option] : typed) {
        if (isTyped)
            return problem(option, "is of one order, and a plan may make several",
                           "Leave it out; then change or show each order.");
    }
    return {};
}

Result<std::vector<Order>> draftsAsked(const OrderAsked &asked, const OpenShop &shop)
{
    const Workshop &workshop = *shop.workshop;
    std::string only;
    if (!asked.supplier.empty()) {
        const auto supplier = supplierAsked(asked.supplier, workshop.catalogue);
        if (!supplier)
            return tl::unexpected(supplier.error());
        only = (*supplier)->id;
    }
    const auto rates = ratesOf(shop.file);
    if (!rates)
        return tl::unexpected(rates.error());
    const auto wanted = planWanted(asked.plan, workshop, shop.file);
    if (!wanted)
        return tl::unexpected(wanted.error());
    const PurchasePlan plan = plannedFor(workshop, *rates, *wanted);
    auto drafts = draftsOf(plan, workshop.catalogue, wanted->today);
    std::erase_if(drafts,
                  [&only](const Order &draft) { return !only.empty() && draft.supplier != only; });
    if (drafts.empty())
        return problem("the plan", "proposes no order" + (only.empty() ? "" : " to " + only),
                       "Look what it says: flarestock plan.");
    return drafts;
}

void sayDrafted(const std::vector<WrittenOrder> &written, const OpenShop &shop)
{
    const WrittenOrder &first = written.front();
    std::vector<const BookedOrder *> orders;
    QJsonArray documents;
    for (const WrittenOrder &one : written) {
        orders.push_back(&one.order);
        documents.append(orderDocument(one.order, shop.workshop->catalogue));
    }
    if (shop.asked.json)
        return shop.outcome.print(
            QJsonObject{{QStringLiteral("record"), jsonText(first.record.text())},
                        {QStringLiteral("already"), first.already},
                        {QStringLiteral("orders"), documents}});
    shop.outcome.print((first.already ? "was done already: " : "") + std::string("drafted: ") +
                       counted(written.size(), "order") + ", record " + first.record.text());
    shop.outcome.print(orderList(orders, shop.workshop->catalogue));
}

} // namespace

void answerFromPlan(const OrderAsked &asked, OpenShop &shop)
{
    if (const auto plans = isThePlans(asked); !plans)
        return shop.outcome.refuse(plans.error());
    const auto before = openedBefore(*shop.by.action, shop.file);
    if (!before)
        return shop.outcome.refuse(before.error());
    if (!before->empty())
        return sayDrafted(*before, shop);
    const auto drafts = draftsAsked(asked, shop);
    if (!drafts)
        return shop.outcome.refuse(drafts.error());
    const auto written = openOrders(*drafts, shop.file, shop.by);
    if (!written)
        return shop.outcome.refuse(written.error());
    sayDrafted(*written, shop);
}

} // namespace flarestock
