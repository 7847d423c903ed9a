// SPDX-License-Identifier: MIT

#include "app/desk/buying/slips/slip_book.h"

#include "app/buyer/coming_in_time.h"
#include "app/buyer/ordering.h"
#include "app/desk/buying/buyers_book.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isSame(const Shortage &a, const Shortage &b)
{
    return a.part == b.part && a.day == b.day && a.quantity == b.quantity;
}

} // namespace

std::shared_ptr<const SlipBook> SlipBook::of(const std::shared_ptr<const Workshop> &workshop,
                                             const ShopFile &file, const std::string &today)
{
    const auto rates = ratesOf(file);
    if (!rates)
        return none(workshop, rates.error());
    const auto needed = neededInShop(*workshop, file, today);
    if (!needed)
        return none(workshop, needed.error());
    auto book = std::make_shared<SlipBook>();
    book->workshop = workshop;
    book->today = today;
    book->shortages = shortagesToOrder(needed->needs, workshop->catalogue, today);
    Planned planned = plannedAndCompared(*workshop, *rates, {book->shortages, today});
    book->later = std::move(planned.later);
    planned.others.push_back(std::move(planned.plan));
    for (PurchasePlan &plan : planned.others) {
        const auto at = static_cast<std::size_t>(plan.first);
        book->plans.at(at) = std::move(plan);
    }
    return book;
}

std::shared_ptr<const SlipBook> SlipBook::none(const std::shared_ptr<const Workshop> &workshop,
                                               const Problem &problem)
{
    auto book = std::make_shared<SlipBook>();
    book->workshop = workshop;
    book->problem = problem.sentence();
    return book;
}

std::vector<Order> SlipBook::drafts(PlanAim aim, const ProposedOrder &only) const
{
    PurchasePlan wanted = plan(aim);
    std::erase_if(wanted.orders, [&only](const ProposedOrder &one) {
        return one.supplier != only.supplier || !(one.currency == only.currency);
    });
    return draftsOf(wanted, workshop->catalogue, today);
}

Result<Action> drafted(const Drafting &drafting, const ShopFile &file, const Workshop &now,
                       const By &by)
{
    const SlipBook &book = *drafting.book;
    const auto needed = neededInShop(now, file, book.today);
    if (!needed)
        return tl::unexpected(needed.error());
    const auto shortages = shortagesToOrder(needed->needs, now.catalogue, book.today);
    if (!std::equal(shortages.begin(), shortages.end(), book.shortages.begin(),
                    book.shortages.end(), isSame))
        return problem("what is short", "has changed since these slips were worked out",
                       "Look at the slips as they are now, then draft them.");
    if (drafting.drafts.empty())
        return problem("the plan", "proposes no order there", "Look at the other slips.");
    return openingOf(drafting.drafts, file, by);
}

} // namespace flarestock
