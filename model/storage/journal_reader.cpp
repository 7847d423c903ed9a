// SPDX-License-Identifier: MIT

#include "model/storage/journal_reader.h"

#include "model/exchange/template_toml.h"
#include "model/journal/notes/lot_facts.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

namespace {

/// The records in the order of the fold, one ahead: it is read as one of ours when its turn comes,
/// and where it stands once.
class RecordsAhead {
public:
    RecordsAhead(const ShopConnection &connection, std::string_view sql)
        : m_connection(connection), m_query(connection.run(sql))
    {
        goOn();
    }

    [[nodiscard]] bool areBefore(const StoredRow &movement) const
    {
        return m_place &&
               isBefore(*m_place, {movement.number(0), movement.number(1), movement.number(2), {}});
    }
    [[nodiscard]] bool more() const noexcept { return m_place.has_value(); }
    RecordRow taken()
    {
        RecordRow row = recordRow(m_query);
        goOn();
        return row;
    }

private:
    void goOn()
    {
        m_place = m_connection.next(m_query) ? std::optional(chainPlace(m_query)) : std::nullopt;
    }

    const ShopConnection &m_connection;
    QSqlQuery m_query;
    std::optional<ChainPlace> m_place; ///< Nothing: there are no more.
};

} // namespace

void readJournal(const ShopConnection &connection, JournalRead way,
                 const std::function<void(const JournalRow &)> &onMovement,
                 const std::function<void(const RecordRow &)> &onRecord)
{
    const bool byIndex = way == JournalRead::ByIndex;
    RecordsAhead records(connection, byIndex ? sql::SelectRecords : sql::SelectRecordsAsTheyLie);
    connection.eachRow(byIndex ? sql::SelectMovements : sql::SelectMovementsAsTheyLie,
                       [&](const StoredRow &stored) {
                           while (records.areBefore(stored))
                               onRecord(records.taken());
                           onMovement(journalRow(stored));
                       });
    while (records.more())
        onRecord(records.taken());
}

std::vector<Place> placesIn(const ShopConnection &connection)
{
    std::vector<Place> places;
    connection.runAgain(sql::SelectPlaces, {}, [&](const QSqlQuery &query) {
        const auto kind = parsePlaceKind(query.value(3).toString().toStdString());
        if (!kind)
            throw StorageFailure{{connection.name(), "has a place of an unknown kind",
                                  "Do not write to it: restore the newest backup."}};
        places.push_back({query.value(1).toString().toStdString(),
                          query.value(2).toString().toStdString(), *kind});
    });
    return places;
}

Costing costingIn(const ShopConnection &connection)
{
    std::optional<Costing> costing;
    connection.runAgain(sql::SelectShop, {}, [&costing](const QSqlQuery &query) {
        costing = costingOf(query.value(2).toString().toStdString());
    });
    if (!costing)
        throw StorageFailure{{connection.name(), "does not say how it costs its stock",
                              "Do not write to it: restore the newest backup."}};
    return *costing;
}

Record recordIn(const ShopConnection &connection, const MovementId &id)
{
    auto query = connection.run(sql::SelectRecord, {idBytes(id)});
    if (!connection.next(query))
        throw StorageFailure{{"record " + id.text(), "is not in the journal", "Check its id."}};
    return recordRow(query).record;
}

std::set<MovementId> takenBackIn(const ShopConnection &connection)
{
    std::set<MovementId> ids;
    for (auto query = connection.run(sql::SelectTakenBack); connection.next(query);)
        ids.insert(idOf(query.value(0).toByteArray()));
    return ids;
}

TextFiles newestDocuments(const ShopConnection &connection)
{
    TextFiles files;
    for (auto query = connection.run(sql::SelectNewestDocuments); connection.next(query);)
        files.emplace(query.value(0).toString().toStdString(),
                      query.value(1).toString().toStdString());
    return files;
}

std::optional<std::string> newestDocument(const ShopConnection &connection, const std::string &name)
{
    auto query = connection.run(sql::SelectNewestDocument, {text(name)});
    if (!connection.next(query))
        return std::nullopt;
    return query.value(1).toString().toStdString();
}

Bars barsIn(const ShopConnection &connection, const std::string &part)
{
    LotBook lots;
    const std::string kind(text(RecordKind::Lot));
    for (auto query = connection.run(sql::SelectRecordsAbout, {text(part), text(kind)});
         connection.next(query);) {
        if (auto facts = LotFacts::read(recordRow(query).record))
            lots.insert_or_assign(facts->lot, std::move(*facts));
    }
    if (lots.empty())
        return {};
    std::vector<Due> due;
    const std::string plans = "builds.toml";
    if (const auto newest = newestDocument(connection, plans)) {
        const auto builds = readBuilds(*newest, plans);
        for (const BuildPlan &plan : builds ? *builds : std::vector<BuildPlan>())
            due.push_back({plan.id, plan.car, plan.by});
    }
    return barsOf(lots, due);
}

} // namespace flarestock
