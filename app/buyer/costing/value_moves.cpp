// SPDX-License-Identifier: MIT

#include "app/buyer/costing/value_moves.h"

#include "app/buyer/costing/still_here.h"
#include "app/buyer/receiving/receiving.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What lies there, as layers; by a moving average one.
Layers lyingAt(const BalanceKey &key, const Ledger &ledger)
{
    if (ledger.costing() == Costing::FirstInFirstOut)
        return ledger.layersAt(key);
    return {{0, ledger.balance(key)}};
}

std::int64_t sumOf(const std::map<std::int64_t, std::int64_t> &changes)
{
    std::int64_t sum = 0;
    for (const auto &[rank, change] : changes)
        sum += change;
    return sum;
}

} // namespace

std::int64_t ValueChanges::add(const LayerAt &at, std::int64_t value, const Ledger &ledger)
{
    const Layers lying = lyingAt(at.key, ledger);
    const auto layer = lying.find(at.rank);
    if (value == 0 || layer == lying.end())
        return 0;
    std::int64_t &change = m_changes[at.key][at.rank];
    const std::int64_t added = std::max(value, -(layer->second.value + change));
    change += added;
    if (change == 0) {
        m_changes[at.key].erase(at.rank);
        if (m_changes[at.key].empty())
            m_changes.erase(at.key);
    }
    return added;
}

ValueMoves::ValueMoves(const Workshop &workshop, const ShopFile &file, std::string document)
    : m_workshop(workshop), m_file(file), m_document(std::move(document))
{
}

void ValueMoves::valueAlone(const BalanceKey &from, const std::string &to, std::int64_t value)
{
    if (value == 0)
        return;
    Movement movement = flarestock::movementOf(from, 0, to, Deed::Receive);
    movement.value = value;
    movement.document = m_document;
    m_movements.push_back(std::move(movement));
}

Result<void> ValueMoves::overTheBench(const BalanceKey &key,
                                      const std::map<std::int64_t, std::int64_t> &by)
{
    const auto ofPart = m_file.movements(key.part);
    if (!ofPart)
        return tl::unexpected(ofPart.error());
    const auto origin = origins(*ofPart);
    const Layers lying = lyingAt(key, m_workshop.ledger);
    BalanceKey onBench = key;
    onBench.place = m_places.bench;
    BalanceKey atSupplier = key;
    atSupplier.place = m_places.supplier;
    const bool average = m_workshop.ledger.costing() == Costing::MovingAverage;
    const std::string anew = worthAnew(m_document);
    for (const auto &[rank, layer] : lying) {
        Movement out = flarestock::movementOf(key, layer.quantity, m_places.bench, Deed::Move);
        out.document = average ? anew : m_document;
        m_movements.push_back(std::move(out));
    }
    const std::int64_t sum = sumOf(by);
    valueAlone(atSupplier, m_places.bench, std::max<std::int64_t>(sum, 0));
    for (const auto &[rank, layer] : lying) {
        const auto change = by.find(rank);
        Movement back = flarestock::movementOf(onBench, layer.quantity, key.place, Deed::Move);
        back.value = layer.value + (change == by.end() ? 0 : change->second);
        const auto brought = origin.find(rank);
        back.document =
            average || brought == origin.end() ? anew : ofLayer(m_document, brought->second);
        m_movements.push_back(std::move(back));
    }
    valueAlone(onBench, m_places.supplier, std::max<std::int64_t>(-sum, 0));
    return {};
}

Result<std::vector<Movement>> ValueMoves::of(const std::string &supplier, const ValueChanges &stock,
                                             const std::map<std::string, std::int64_t> &differences)
{
    const Ledger &ledger = m_workshop.ledger;
    const auto from = placeOfSupplier(supplier, ledger);
    const auto bench = placeOfKind(PlaceKind::Bench, ledger);
    const auto difference = placeOfKind(PlaceKind::Difference, ledger);
    if (!from || !bench || !difference)
        return tl::unexpected(!from ? from.error() : !bench ? bench.error() : difference.error());
    m_places = {(*from)->id, (*bench)->id, (*difference)->id};
    m_movements.clear();
    for (const auto &[key, by] : stock.byKey()) {
        const Layers lying = lyingAt(key, ledger);
        const bool onlyNewest =
            by.size() == 1 && by.begin()->second > 0 && lying.rbegin()->first == by.begin()->first;
        if (onlyNewest) {
            BalanceKey atSupplier = key;
            atSupplier.place = m_places.supplier;
            valueAlone(atSupplier, key.place, by.begin()->second);
        } else if (const auto changed = overTheBench(key, by); !changed) {
            return tl::unexpected(changed.error());
        }
    }
    for (const auto &[part, value] : differences) {
        const BalanceKey theirs{part, m_places.supplier, {}, PieceCondition::New};
        const BalanceKey off{part, m_places.difference, {}, PieceCondition::New};
        valueAlone(theirs, m_places.difference, std::max<std::int64_t>(value, 0));
        valueAlone(off, m_places.supplier, std::max<std::int64_t>(-value, 0));
    }
    return std::move(m_movements);
}

} // namespace flarestock
