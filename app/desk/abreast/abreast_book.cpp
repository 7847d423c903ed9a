// SPDX-License-Identifier: MIT

#include "app/desk/abreast/abreast_book.h"

#include "app/buyer/on_its_way.h"
#include "app/desk/shop/aside.h"

#include <algorithm>

namespace flarestock {

bool isOfBuild(const NeedLine &line) noexcept
{
    return !line.isPlace && line.work.empty();
}

std::shared_ptr<const AbreastBook> AbreastBook::of(const std::shared_ptr<const Workshop> &workshop,
                                                   const Asked &asked)
{
    auto book = std::make_shared<AbreastBook>();
    book->workshop = workshop;
    book->cars = asked.cars;
    book->today = asked.today;
    book->moved = asked.moved;
    book->builds = buildsByDate(*workshop, asked.moved);
    book->coming = onItsWay(*workshop);
    NeedsAsked wanted{asked.today};
    wanted.moved = asked.moved;
    wanted.due = asked.cars->lines;
    wanted.known = asked.known;
    auto needs = needsOf(*workshop, wanted);
    if (needs)
        book->needs = std::move(*needs);
    else
        book->problem = needs.error().sentence();
    for (const NeedLine &line : book->needs.lines)
        book->byPart[line.part->number].push_back(&line);
    return goesAside<AbreastBook>(std::move(book)); // With all who take what, and their ledger.
}

const BuildPlan *AbreastBook::build(std::string_view id) const noexcept
{
    const auto found = std::find_if(builds.begin(), builds.end(),
                                    [id](const BuildPlan &plan) { return plan.id == id; });
    return found == builds.end() ? nullptr : &*found;
}

const AbreastBook::Wants &AbreastBook::wantsOf(const std::string &part) const
{
    static const Wants none;
    const auto found = byPart.find(part);
    return found == byPart.end() ? none : found->second;
}

const NeedLine *AbreastBook::want(const std::string &build, const std::string &part) const
{
    const Wants &wants = wantsOf(part);
    const auto found = std::find_if(wants.begin(), wants.end(), [&build](const NeedLine *line) {
        return line->whom == build && isOfBuild(*line);
    });
    return found == wants.end() ? nullptr : *found;
}

AbreastBook::Own AbreastBook::own(const NeedLine &line) const
{
    const Claim claim = workshop->ledger.claim({line.part->number, line.whom});
    const auto issued = std::max<std::int64_t>(0, claim.issued);
    Own own{Quantity::ofSmallest(issued, line.part->unit).amount, {}};
    own.inCar = std::min(own.inCar, line.own);
    own.reserved = line.own - own.inCar;
    return own;
}

bool AbreastBook::getsTheLast(const NeedLine &line) const
{
    if (line.free.sign() <= 0)
        return false;
    const Wants &wants = wantsOf(line.part->number);
    const auto at = std::find(wants.begin(), wants.end(), &line);
    const auto isServed = [](const NeedLine *one) { return one->free.sign() > 0; };
    if (at == wants.end() || std::any_of(at + 1, wants.end(), isServed))
        return false;
    return std::any_of(at, wants.end(), [](const NeedLine *one) {
        return one->shortBy.sign() > 0 || !one->coming.empty();
    });
}

} // namespace flarestock
