// SPDX-License-Identifier: MIT
//
// What a shop file tells: documents, places, journal, ledger.

#include "model/storage/journal_reader.h"
#include "model/storage/journal_writer.h"
#include "model/storage/shop_file.h"
#include "model/storage/shop_sql.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What stands beside the journal says enough, and nobody waits for a long one.
void carryOver(const ShopConnection &connection, Ledger &ledger)
{
    connection.eachRow(sql::SelectBalances,
                       [&ledger](const StoredRow &row) { carryBalance(row, ledger); });
    connection.eachRow(sql::SelectLayers,
                       [&ledger](const StoredRow &row) { carryLayer(row, ledger); });
    connection.eachRow(sql::SelectClaims,
                       [&ledger](const StoredRow &row) { carryClaim(row, ledger); });
    for (const MovementId &id : takenBackIn(connection))
        ledger.knowTakenBack(id);
}

/// All movements, with one of so many documents.
std::string selectOfDocuments(std::size_t count)
{
    std::string where = " WHERE document IN (?";
    for (std::size_t i = 1; i < count; ++i)
        where += ", ?";
    std::string select(sql::SelectMovements);
    return select.insert(select.find(" ORDER BY"), where + ")");
}

} // namespace

Result<TextFiles> ShopFile::documents() const
{
    return guarded([&] { return newestDocuments(*m_connection); });
}

Result<std::vector<Place>> ShopFile::places() const
{
    return guarded([&] { return placesIn(*m_connection); });
}

Result<Ledger> ShopFile::ledger() const
{
    return guarded([&] {
        Ledger ledger(placesIn(*m_connection), m_settings.costing);
        m_connection->atOneMoment([&] { carryOver(*m_connection, ledger); });
        return ledger;
    });
}

Result<std::vector<Movement>> ShopFile::movements(std::string_view part) const
{
    return guarded([&] {
        std::vector<Movement> found;
        auto query = part.empty()
                         ? m_connection->run(sql::SelectMovements)
                         : m_connection->run(sql::SelectMovementsOfPart, {text(std::string(part))});
        while (m_connection->next(query))
            found.push_back(journalRow(query).movement);
        return found;
    });
}

Result<std::vector<Movement>> ShopFile::movementsOfLot(std::string_view lot) const
{
    return guarded([&] {
        std::vector<Movement> found;
        const QString spelt = text(std::string(lot));
        for (auto query = m_connection->run(sql::SelectMovementsOfLot, {spelt, spelt});
             m_connection->next(query);)
            found.push_back(journalRow(query).movement);
        return found;
    });
}

Result<std::vector<Movement>>
ShopFile::movementsOfDocuments(const std::vector<std::string> &documents) const
{
    constexpr std::size_t AtOnce = 500; // Far below what a statement may have of question marks.
    return guarded([&] {
        std::vector<Movement> found;
        for (std::size_t first = 0; first < documents.size(); first += AtOnce) {
            Values values;
            for (std::size_t i = first; i < std::min(first + AtOnce, documents.size()); ++i)
                values.push_back(text(documents[i]));
            for (auto query = m_connection->run(selectOfDocuments(values.size()), values);
                 m_connection->next(query);)
                found.push_back(journalRow(query).movement);
        }
        return found;
    });
}

Result<std::vector<Movement>> ShopFile::movementsOfAction(const MovementId &id) const
{
    return guarded([&] {
        std::vector<Movement> found;
        auto one = m_connection->run(sql::SelectMovement, {idBytes(id)});
        if (!m_connection->next(one))
            return found;
        const auto first = idBytes(journalRow(one).movement.action.value_or(id));
        for (auto query = m_connection->run(sql::SelectMovementsOfAction, {first, first});
             m_connection->next(query);)
            found.push_back(journalRow(query).movement);
        return found;
    });
}

Result<std::vector<Record>> ShopFile::records() const
{
    return guarded([&] {
        std::vector<Record> found;
        for (auto query = m_connection->run(sql::SelectRecords); m_connection->next(query);)
            found.push_back(recordRow(query).record);
        return found;
    });
}

Result<std::optional<Record>> ShopFile::recordOf(const MovementId &id) const
{
    return guarded([&]() -> std::optional<Record> {
        auto query = m_connection->run(sql::SelectRecord, {idBytes(id)});
        if (!m_connection->next(query))
            return std::nullopt;
        return recordRow(query).record;
    });
}

Result<std::optional<Movement>> ShopFile::movement(const MovementId &id) const
{
    return guarded([&]() -> std::optional<Movement> {
        auto query = m_connection->run(sql::SelectMovement, {idBytes(id)});
        if (!m_connection->next(query))
            return std::nullopt;
        return journalRow(query).movement;
    });
}

Result<std::vector<BoxCheck>> ShopFile::boxChecks() const
{
    return guarded([&] {
        std::vector<BoxCheck> checks;
        for (auto query = m_connection->run(sql::SelectBoxChecks); m_connection->next(query);)
            checks.push_back(boxCheckRow(query));
        return checks;
    });
}

} // namespace flarestock
