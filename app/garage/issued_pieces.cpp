// SPDX-License-Identifier: MIT

#include "app/garage/issued_pieces.h"

#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

IssuedPieces::IssuedPieces(const BuildPlan &plan, const Workshop &workshop,
                           const std::vector<Movement> &moved)
    : m_plan(plan), m_workshop(workshop)
{
    for (const Movement &movement : moved) {
        if (movement.from == plan.car)
            went(movement);
        if (movement.to == plan.car)
            came(movement);
    }
}

void IssuedPieces::came(const Movement &movement)
{
    const LotKey name{movement.part, movement.newLot.value_or(movement.lot)};
    const Part *part = m_workshop.part(movement.part);
    const std::string day = dayOf(movement.at);
    if (part && isLength(part->unit)) {
        m_pieces.push_back({name, movement.quantity, day});
        return;
    }
    for (std::int64_t i = 0; i < movement.quantity; ++i)
        m_pieces.push_back({name, 1, day});
}

void IssuedPieces::went(const Movement &movement)
{
    std::int64_t left = movement.quantity;
    while (left > 0) {
        const auto at = std::find_if(m_pieces.rbegin(), m_pieces.rend(), [&](const auto &piece) {
            return piece.name.part == movement.part && piece.name.lot == movement.lot;
        });
        if (at == m_pieces.rend())
            return;
        const std::int64_t some = std::min(left, at->quantity);
        left -= some;
        at->quantity -= some;
        if (at->quantity == 0)
            m_pieces.erase(std::next(at).base());
    }
}

std::optional<IssuedPiece> IssuedPieces::takeOf(std::string_view part, std::int64_t count)
{
    std::optional<IssuedPiece> taken;
    for (std::int64_t i = 0; i < count; ++i) {
        const auto at = std::find_if(m_pieces.begin(), m_pieces.end(), [part](const auto &piece) {
            return sameFolded(piece.name.part, part);
        });
        if (at == m_pieces.end())
            break;
        if (taken)
            taken->quantity += at->quantity;
        else
            taken = *at;
        m_pieces.erase(at);
    }
    return taken;
}

std::optional<IssuedPiece> IssuedPieces::take(const Part &planned, std::int64_t count)
{
    if (auto piece = takeOf(planned.number, count))
        return piece;
    for (const Instead &instead : m_workshop.notes.build(m_plan.id).instead) {
        if (!sameFolded(instead.planned, planned.number))
            continue;
        if (auto piece = takeOf(instead.used, count))
            return piece;
    }
    return std::nullopt;
}

std::optional<IssuedPiece> IssuedPieces::takeLine(const Part &hose, std::int64_t length)
{
    auto at = std::find_if(m_pieces.begin(), m_pieces.end(), [&](const IssuedPiece &piece) {
        return piece.name.part == hose.number && piece.quantity == length;
    });
    if (at == m_pieces.end())
        at = std::find_if(m_pieces.begin(), m_pieces.end(),
                          [&](const IssuedPiece &piece) { return piece.name.part == hose.number; });
    if (at == m_pieces.end())
        at = std::find_if(m_pieces.begin(), m_pieces.end(), [&](const IssuedPiece &piece) {
            const auto made = m_workshop.notes.hoses.find(piece.name.part);
            return made != m_workshop.notes.hoses.end() &&
                   sameFolded(made->second.hose, hose.number);
        });
    if (at == m_pieces.end())
        return std::nullopt;
    IssuedPiece piece = *at;
    m_pieces.erase(at);
    return piece;
}

} // namespace flarestock
