// SPDX-License-Identifier: MIT

#include "model/storage/trailer/own_entries.h"

#include <algorithm>

namespace flarestock {

MovementId OwnEntries::nextId()
{
    auto bytes = first.bytes();
    std::uint64_t n = count++;
    for (std::size_t i = 15; i >= 8 && n > 0; --i) {
        const std::uint64_t sum = bytes[i] + (n & 0xff);
        bytes[i] = static_cast<std::uint8_t>(sum);
        n = (n >> 8) + (sum >> 8);
    }
    return MovementId::ofBytes(bytes);
}

Movement OwnEntries::movement(const BalanceKey &from, std::int64_t quantity, const std::string &to,
                              std::string says)
{
    Movement movement;
    movement.id = nextId();
    movement.part = from.part;
    movement.lot = from.lot;
    movement.condition = from.condition;
    movement.from = from.place;
    movement.to = to;
    movement.quantity = quantity;
    movement.who = who;
    movement.why = std::move(says) + (why.empty() ? "" : ": " + why);
    movement.at = at;
    return movement;
}

std::string placeOf(PlaceKind kind, const Ledger &ledger)
{
    const auto places = ledger.places();
    const auto found = std::find_if(places.begin(), places.end(),
                                    [kind](const Place &place) { return place.kind == kind; });
    if (found == places.end())
        throw StorageFailure{{"the shop", "has no place of the kind " + std::string(text(kind)),
                              "Add one: flarestock place."}};
    return found->id;
}

std::string spelt(const BalanceKey &key)
{
    std::string name = key.part + "@" + key.place;
    if (!key.lot.empty())
        name += "/" + key.lot;
    if (key.condition != PieceCondition::New)
        name += "/" + std::string(text(key.condition));
    return name;
}

} // namespace flarestock
