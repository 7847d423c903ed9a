// SPDX-License-Identifier: MIT

#include "model/servicing/interval.h"

#include "model/exact/case_fold.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

bool isEndOf(std::string_view position, std::string_view end)
{
    if (sameFolded(position, end))
        return true;
    if (position.size() <= end.size())
        return false;
    const std::size_t at = position.size() - end.size();
    return (position[at - 1] == '/' || position[at - 1] == '.') &&
           sameFolded(position.substr(at), end);
}

} // namespace

bool Interval::fits(const FittedPiece &piece, const PieceKind &kindOf, std::string_view ofCar) const
{
    return (!kind || kind == kindOf.kind) &&
           (medium.empty() || sameFolded(medium, kindOf.medium)) &&
           (part.empty() || sameFolded(part, piece.piece.part)) &&
           (position.empty() || isEndOf(piece.position, position)) &&
           (car.empty() || sameFolded(car, ofCar));
}

int Interval::rank() const noexcept
{
    return (position.empty() ? 0 : 16) + (part.empty() ? 0 : 8) + (car.empty() ? 0 : 4) +
           (medium.empty() ? 0 : 2) + (kind ? 1 : 0);
}

std::vector<const Interval *> intervalsFor(const Intervals &all, const FittedPiece &piece,
                                           const PieceKind &kindOf, std::string_view car)
{
    std::vector<const Interval *> best;
    for (const Interval &one : all) {
        if (!one.fits(piece, kindOf, car))
            continue;
        const auto same = std::find_if(best.begin(), best.end(), [&one](const Interval *other) {
            return other->todo == one.todo;
        });
        if (same == best.end())
            best.push_back(&one);
        else if (one.rank() > (*same)->rank())
            *same = &one;
    }
    return best;
}

bool isNeverWashed(std::string_view medium) noexcept
{
    constexpr std::array<std::string_view, 6> Never = {"paper",       "cellulose",  "glass",
                                                       "glass fibre", "microglass", "glass fiber"};
    return std::any_of(Never.begin(), Never.end(),
                       [medium](std::string_view one) { return sameFolded(one, medium); });
}

std::string notWashedBecause(const PieceKind &kindOf)
{
    if (kindOf.isSealed)
        return "cannot be opened";
    if (isNeverWashed(kindOf.medium))
        return "is " + kindOf.medium +
               ", which is never washed: it tears and lets go of what it holds";
    if (!kindOf.washable)
        return "may not be washed, says the catalogue";
    return {};
}

std::string spentBecause(const FittedPiece &piece, const std::vector<const Interval *> &intervals)
{
    if (piece.damaged)
        return "damaged";
    for (const Interval *one : intervals) {
        if (one->washes && piece.washed >= *one->washes)
            return "washed " + std::to_string(piece.washed) + " of " +
                   std::to_string(*one->washes) + " times";
    }
    return {};
}

} // namespace flarestock
