// SPDX-License-Identifier: MIT

#include "app/buyer/receiving/receiving_words.h"

#include "app/buyer/receiving/marks.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

Result<const BookedOrder *> orderAsked(const std::string &number, const Bought &bought)
{
    const BookedOrder *order = bought.orders.order(number);
    if (!order)
        return problem(number, "is no order of this shop", "Look them up: flarestock order list.");
    if (order->now().state == OrderState::Placed)
        return order;
    return problem("order " + number, "is " + std::string(text(order->now().state)),
                   order->now().state == OrderState::Draft
                       ? "Place it first: flarestock order place " + number + "."
                       : "Nothing is awaited of it; say flarestock receive PART without --order.");
}

/// The part of a line, by its own number or by the supplier's.
Result<const Part *> ofTheOrder(const std::string &typed, const Order &order,
                                const Workshop &workshop)
{
    for (const OrderLine &line : order.lines) {
        if (sameFolded(line.part, typed) ||
            (!line.supplierNumber.empty() && sameFolded(line.supplierNumber, typed)))
            return partAsked(line.part, workshop.catalogue);
    }
    auto part = partAsked(typed, workshop.catalogue);
    if (!part)
        return part;
    return problem((*part)->number, "is not on order " + order.number,
                   "Say what it came instead of: --wrong " + (*part)->number + " 1 PART.");
}

class Listing {
public:
    Listing(const ReceivingWords &asked, const Workshop &workshop, const BookedOrder &order)
        : m_asked(asked), m_workshop(workshop), m_order(order)
    {
    }

    Result<void> wrongOnes()
    {
        for (const auto &[came, quantity, ordered] : m_asked.wrong) {
            const auto part = partAsked(came, m_workshop.catalogue);
            const auto line = ofTheOrder(ordered, m_order.now(), m_workshop);
            if (!part || !line)
                return tl::unexpected(part ? line.error() : part.error());
            const auto count = moreThanNothing(quantity, **part);
            if (!count)
                return tl::unexpected(count.error());
            ComingPiece piece{*part, *count, {}};
            piece.insteadOf = (*line)->number;
            piece.condition =
                PieceCondition::ToBeChecked; // Nobody has bought it: no build gets it.
            pieces.push_back(std::move(piece));
        }
        return {};
    }
    /// A part of the order, named as on a line, and more than nothing of it.
    [[nodiscard]] Result<Lacking> soMuchOfTheOrder(const std::string &typed,
                                                   const std::string &quantity) const
    {
        const auto part = ofTheOrder(typed, m_order.now(), m_workshop);
        if (!part)
            return tl::unexpected(part.error());
        const auto count = moreThanNothing(quantity, **part);
        if (!count)
            return tl::unexpected(count.error());
        return Lacking{*part, *count};
    }
    Result<void> lackingOnes()
    {
        for (const auto &[typed, quantity] : m_asked.lacking) {
            const auto one = soMuchOfTheOrder(typed, quantity);
            if (!one)
                return tl::unexpected(one.error());
            lacking.push_back(*one);
        }
        return {};
    }
    /// The part is the first words that name one, its own number or the supplier's: it may hold
    /// blanks, as a quantity may.
    [[nodiscard]] Result<ReceivingWords::Two> lineTyped(const std::string &typed) const
    {
        const auto first = typed.find(' ');
        if (first == std::string::npos)
            return problem("the line \"" + typed + '"', "has no quantity",
                           "Write --line \"PART QUANTITY\".");
        for (auto blank = first; blank != std::string::npos; blank = typed.find(' ', blank + 1)) {
            if (ofTheOrder(typed.substr(0, blank), m_order.now(), m_workshop))
                return ReceivingWords::Two{typed.substr(0, blank), typed.substr(blank + 1)};
        }
        return ReceivingWords::Two{typed.substr(0, first), typed.substr(first + 1)};
    }
    Result<void> namedOnes()
    {
        for (const std::string &typed : m_asked.lines) {
            const auto words = lineTyped(typed);
            const auto one = words ? soMuchOfTheOrder(words->first, words->second)
                                   : tl::unexpected(words.error());
            if (!one)
                return tl::unexpected(one.error());
            add(*one->part, one->quantity);
        }
        for (const std::string &code : m_asked.scanned) {
            const auto part = ofTheOrder(code, m_order.now(), m_workshop);
            if (!part)
                return tl::unexpected(part.error());
            if (isLength((*part)->unit))
                return problem((*part)->number, "comes by length, so that a scan does not count it",
                               "Say how much: --line \"" + (*part)->number + " 20 ft\".");
            add(**part, 1);
        }
        return {};
    }
    /// All that is awaited, less what did not come or came wrong.
    Result<void> awaitedOnes()
    {
        for (const OrderLine &line : m_order.now().lines) {
            const auto part = partAsked(line.part, m_workshop.catalogue);
            if (!part)
                return tl::unexpected(part.error());
            const auto awaited = Quantity{m_order.awaited(line), (*part)->unit}.smallest();
            if (!awaited)
                return tl::unexpected(awaited.error());
            std::int64_t count = *awaited;
            for (const Lacking &one : lacking)
                count -= one.part == *part ? one.quantity : 0;
            for (const ComingPiece &one : pieces)
                count -= one.insteadOf == line.part ? one.quantity : 0;
            if (count > 0)
                add(**part, count);
        }
        return {};
    }

    std::vector<ComingPiece> pieces;
    std::vector<Lacking> lacking;

private:
    static Result<std::int64_t> moreThanNothing(const std::string &quantity, const Part &part)
    {
        auto count = quantityAsked(quantity, part, part.number);
        if (count && *count <= 0)
            return problem(part.number + " " + quantity, "is nothing that comes",
                           "Write how many or how much.");
        return count;
    }
    void add(const Part &part, std::int64_t quantity)
    {
        const auto same = std::find_if(pieces.begin(), pieces.end(), [&](const ComingPiece &one) {
            return one.part == &part && one.insteadOf.empty();
        });
        if (same == pieces.end())
            pieces.push_back({&part, quantity, {}});
        else
            same->quantity += quantity;
    }

    const ReceivingWords &m_asked;
    const Workshop &m_workshop;
    const BookedOrder &m_order;
};

Result<void> putAway(std::vector<ComingPiece> &pieces, const ReceivingWords &asked,
                     const Workshop &workshop)
{
    for (const std::string &typed : asked.to) {
        const auto equals = typed.find('=');
        const auto place = placeAsked(
            equals == std::string::npos ? typed : typed.substr(equals + 1), workshop.ledger);
        if (!place)
            return tl::unexpected(place.error());
        if (bringsValue((*place)->kind))
            return problem((*place)->id, "is not where pieces are put", "Name a place of yours.");
        for (ComingPiece &piece : pieces) {
            if (equals == std::string::npos
                    ? piece.to.empty()
                    : sameFolded(typed.substr(0, equals), piece.part->number))
                piece.to = (*place)->id;
        }
    }
    for (ComingPiece &piece : pieces) {
        if (piece.to.empty())
            piece.to = whereItLies(*piece.part, workshop.ledger);
        if (piece.to.empty())
            return problem(piece.part->number, "lies nowhere yet, and no place is named for it",
                           "Say where it goes: --to " + piece.part->number + "=C4.");
    }
    return {};
}

} // namespace

std::string whereItLies(const Part &part, const Ledger &ledger)
{
    std::string where;
    std::int64_t most = 0;
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        const Place *place = ledger.place(key.place);
        if (place && isStock(place->kind) && held.quantity > most) {
            most = held.quantity;
            where = key.place;
        }
    }
    return where;
}

Result<Coming> comingAsked(const ReceivingWords &asked, const Bought &bought,
                           const Workshop &workshop)
{
    const auto order = orderAsked(asked.order, bought);
    if (!order)
        return tl::unexpected(order.error());
    Listing listing(asked, workshop, **order);
    auto listed = listing.wrongOnes();
    if (listed)
        listed = listing.lackingOnes();
    if (listed)
        listed = listing.namedOnes();
    if (listed && asked.all)
        listed = listing.awaitedOnes();
    if (!listed)
        return tl::unexpected(listed.error());
    if (listing.pieces.empty() && listing.lacking.empty())
        return problem("order " + asked.order, "gets nothing by this",
                       "Say what came: --line PART QUANTITY, --scan CODE, or --all.");
    if (const auto marked = mark(listing.pieces, asked, workshop); !marked)
        return tl::unexpected(marked.error());
    if (const auto put = putAway(listing.pieces, asked, workshop); !put)
        return tl::unexpected(put.error());
    return Coming{*order, std::move(listing.pieces), std::move(listing.lacking), asked.document,
                  asked.over};
}

} // namespace flarestock
