// SPDX-License-Identifier: MIT
//
// Played shop: what copies_played begins with, and what it asks of a shop in the end.

#pragma once

#include "model/journal/notes/count.h"
#include "model/storage/trailer/travelling.h"

#include <set>
#include <stdexcept>

namespace flarestock::tests {

inline constexpr std::int64_t FirstDay = 1'780'000'000'000;
inline constexpr std::int64_t Year = 31'536'000'000;

[[noreturn]] inline void wrong(const std::string &what)
{
    throw std::runtime_error(what);
}

template <class T>
T good(Result<T> result, const char *what)
{
    if (!result)
        wrong(std::string(what) + ": " + result.error().sentence());
    return std::move(*result);
}

inline NewShop playedShop(Costing costing)
{
    NewShop shop{{"Played shop", Currency::parse("USD").value(), costing},
                 {{"A1", "bin", PlaceKind::Bin},
                  {"B1", "bin", PlaceKind::Bin},
                  {"T1", "drawer", PlaceKind::Drawer},
                  {"T2", "drawer", PlaceKind::Drawer},
                  {"car", "car", PlaceKind::Car},
                  {"supplier", "supplier", PlaceKind::Supplier},
                  {"opening", "opening", PlaceKind::Opening},
                  {"bench", "bench", PlaceKind::Bench},
                  {"difference", "difference", PlaceKind::Difference}},
                 {{"notes.txt", "as begun\n"}},
                 {},
                 {},
                 "player",
                 FirstDay};
    return shop;
}

/// What is asked of a shop in the end, whatever its replicas are called.
struct Seen {
    std::set<std::string> ids;                     ///< Of all movements and records.
    std::map<BalanceKey, std::int64_t> quantities; ///< Without what bringing itself has settled.
    Balances balances;
    Claims claims;
    std::map<std::string, std::int64_t> values; ///< By part, in stock and as differences.
    std::size_t entries = 0;
};

/// Ids that the shop gives itself while a copy is brought begin with this millisecond.
inline constexpr std::int64_t OwnIds = 1'700'000'000'000;

inline bool isOwn(const MovementId &id)
{
    return id.text().substr(0, 8) == MovementId::make(OwnIds, {}).text().substr(0, 8);
}

inline Seen seenIn(const ShopFile &shop)
{
    Seen seen;
    const Ledger ledger = good(shop.ledger(), "ledger");
    seen.balances = ledger.balances();
    seen.claims = ledger.claims();
    const auto add = [&](const BalanceKey &key, std::int64_t quantity) {
        if ((seen.quantities[key] += quantity) == 0)
            seen.quantities.erase(key);
    };
    std::int64_t sum = 0;
    for (const Movement &one : good(shop.movements(), "movements")) {
        ++seen.entries;
        if (isOwn(one.id))
            continue;
        seen.ids.insert(one.id.text());
        add(source(one), -one.quantity);
        add(target(one), one.quantity);
    }
    for (const Record &record : good(shop.records(), "records")) {
        ++seen.entries;
        if (record.kind == RecordKind::Decision && !record.field("id").empty())
            seen.ids.insert(record.field("id"));
        else if (!isOwn(record.id) && record.kind != RecordKind::Trip)
            seen.ids.insert(record.id.text());
    }
    for (const auto &[key, held] : seen.balances) {
        sum += held.value;
        const PlaceKind kind = ledger.place(key.place)->kind;
        if (isStock(kind) || kind == PlaceKind::Difference)
            seen.values[key.part] += held.value;
        if (isStock(kind) && (held.quantity <= 0 || held.value < 0))
            wrong("below zero at " + key.place);
    }
    if (sum != 0)
        wrong("the values do not add up to zero");
    return seen;
}

inline void proveWhole(const std::filesystem::path &path)
{
    const auto found = good(ShopFile::verify(path), "verify");
    if (!found.whole)
        wrong("not whole: " + found.problems.front());
}

} // namespace flarestock::tests
