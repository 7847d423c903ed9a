// SPDX-License-Identifier: MIT

#include "model/buying/supplier_claim.h"

#include "model/buying/steps_that_hold.h"
#include "model/exact/case_fold.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <tuple>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 4> FaultTexts = {"missing", "wrong part", "damaged",
                                                        "short delivery"};
constexpr std::array<std::string_view, 5> StateTexts = {"raised", "promised", "piece came",
                                                        "credited", "given up"};

/// The text at `spelt` among `texts`; nothing where it is none of them.
template <std::size_t N>
std::optional<std::size_t> indexOf(const std::array<std::string_view, N> &texts,
                                   std::string_view spelt)
{
    const auto *const at = std::find(texts.begin(), texts.end(), spelt);
    if (at == texts.end())
        return std::nullopt;
    return static_cast<std::size_t>(at - texts.begin());
}

/// The 12 of "C-12"; 0 where it is no such number.
std::int64_t countOf(std::string_view number)
{
    std::int64_t count = 0;
    if (number.substr(0, 2) == "C-")
        std::from_chars(number.data() + 2, number.data() + number.size(), count);
    return count;
}

} // namespace

bool isClaimNumber(std::string_view number) noexcept
{
    return countOf(number) > 0;
}

std::string_view text(ClaimFault fault) noexcept
{
    return FaultTexts[static_cast<std::size_t>(fault)];
}

Result<ClaimFault> parseClaimFault(std::string_view text)
{
    if (const auto at = indexOf(FaultTexts, text))
        return static_cast<ClaimFault>(*at);
    return problem(std::string(text), "is nothing that a claim is raised for",
                   "Say missing, wrong part, damaged or short delivery.");
}

std::string_view text(ClaimState state) noexcept
{
    return StateTexts[static_cast<std::size_t>(state)];
}

Result<ClaimState> parseClaimState(std::string_view text)
{
    if (const auto at = indexOf(StateTexts, text))
        return static_cast<ClaimState>(*at);
    return problem(std::string(text), "is no state of a claim",
                   "Say raised, promised, piece came, credited or given up.");
}

Record SupplierClaim::asRecord() const
{
    return {id,
            RecordKind::SupplierClaim,
            number,
            {{"claim", claim.text()},
             {"order", order},
             {"supplier", supplier},
             {"part", part},
             {"quantity", std::to_string(quantity)},
             {"fault", std::string(text(fault))},
             {"box of", boxOf},
             {"box lot", boxLot},
             {"state", std::string(text(state))},
             {"day", day},
             {"credit", std::to_string(credit)},
             {"note", note},
             {"action", action}},
            who,
            at};
}

Result<SupplierClaim> SupplierClaim::read(const Record &record)
{
    if (record.kind != RecordKind::SupplierClaim || record.subject.empty() ||
        record.field("part").empty())
        return problem("record " + record.id.text(), "is not a supplier claim",
                       "Run flarestock verify on the shop.");
    const auto claim = MovementId::parse(record.field("claim"));
    const auto quantity = record.number("quantity");
    const auto credit = record.number("credit");
    const auto fault = parseClaimFault(record.field("fault"));
    const auto state = parseClaimState(record.field("state"));
    if (!claim || !quantity || !credit || !fault || !state)
        return problem("record " + record.id.text(), "is a supplier claim that does not read",
                       "Run flarestock verify on the shop.");
    SupplierClaim read;
    read.id = record.id;
    read.claim = *claim;
    read.number = record.subject;
    read.order = record.field("order");
    read.supplier = record.field("supplier");
    read.part = record.field("part");
    read.quantity = *quantity;
    read.fault = *fault;
    read.boxOf = record.field("box of");
    read.boxLot = record.field("box lot");
    read.state = *state;
    read.day = record.field("day");
    read.credit = *credit;
    read.note = record.field("note");
    read.action = record.field("action");
    read.who = record.who;
    read.at = record.at;
    return read;
}

bool SupplierClaim::saysAs(const SupplierClaim &other) const
{
    const auto said = [](const SupplierClaim &one) {
        return std::tie(one.claim, one.number, one.order, one.supplier, one.part, one.quantity,
                        one.fault, one.boxOf, one.boxLot, one.state, one.day, one.credit, one.note);
    };
    return said(*this) == said(other);
}

Result<SupplierClaim> stepBack(const ClaimStanding &standing, const MovementId &step)
{
    const bool isNewest = standing.now.id == step;
    const auto holding = stepsThatHold(standing.steps);
    if (!isNewest && holding.back()->id != step)
        return problem("claim " + standing.now.number, "has gone on since",
                       "Take back its newest step.");
    const auto &steps = standing.steps;
    const SupplierClaim *former = nullptr;
    if (isNewest && steps.size() > 1)
        former = &steps[steps.size() - 2];
    else if (!isNewest && holding.size() > 1)
        former = holding[holding.size() - 2];
    SupplierClaim back = former != nullptr ? *former : standing.now;
    if (former == nullptr)
        back.state = ClaimState::GivenUp;
    back.action.clear();
    return back;
}

std::int64_t ClaimStanding::owed() const noexcept
{
    return now.isSettled() ? 0 : std::max<std::int64_t>(now.quantity - came, 0);
}

std::optional<std::string> ClaimStanding::coversFrom() const
{
    if (owed() == 0 || now.state != ClaimState::Promised || now.day.empty())
        return std::nullopt;
    return now.day;
}

ClaimBook ClaimBook::of(const std::vector<SupplierClaim> &steps,
                        const std::vector<Receipt> &receipts)
{
    ClaimBook book;
    for (const SupplierClaim &step : steps) {
        if (step.id == step.claim) {
            book.claims.push_back({step, {step}, 0});
            book.giveNumber(step.number);
            continue;
        }
        const auto at =
            std::find_if(book.claims.begin(), book.claims.end(),
                         [&](const ClaimStanding &one) { return one.now.claim == step.claim; });
        if (at == book.claims.end())
            continue;
        at->now = step;
        at->steps.push_back(step);
    }
    for (ClaimStanding &claim : book.claims) {
        const std::string named = claim.now.claim.text();
        for (const Receipt &receipt : receipts)
            claim.came += receipt.claim == named ? receipt.quantity : 0;
    }
    return book;
}

Result<const ClaimStanding *> ClaimBook::find(std::string_view named) const
{
    const ClaimStanding *found = nullptr;
    for (const ClaimStanding &claim : claims) {
        if (claim.now.claim.text() == named)
            return &claim;
        if (!sameFolded(claim.now.number, named))
            continue;
        if (found)
            return problem(std::string(named), "is the number of two claims",
                           "Name it by its id: " + found->now.claim.text() + " or " +
                               claim.now.claim.text() + ".");
        found = &claim;
    }
    if (!found)
        return problem(std::string(named), "is no claim of this shop",
                       claims.empty() ? "It has none." : "Look them up: flarestock claim list.");
    return found;
}

void ClaimBook::giveNumber(std::string_view number) noexcept
{
    m_greatest = std::max(m_greatest, countOf(number));
}

std::string ClaimBook::nextNumber() const
{
    return "C-" + std::to_string(m_greatest + 1);
}

} // namespace flarestock
