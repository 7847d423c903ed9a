// SPDX-License-Identifier: MIT

#include "model/storage/verification.h"

#include "model/storage/journal_writer.h"
#include "model/storage/shop_sql.h"

#include <map>

namespace flarestock {

namespace {

constexpr std::size_t ProblemsMost = 20;

class Verifying {
public:
    explicit Verifying(const ShopConnection &connection) : m_connection(connection) {}

    Verification done()
    {
        checkPages();
        checkSchema();
        checkRecords();
        checkJournal();
        m_said.whole = m_said.problems.empty();
        return std::move(m_said);
    }

private:
    void wrong(const std::string &what, std::size_t &count)
    {
        if (++count <= ProblemsMost)
            m_said.problems.push_back(what);
    }

    void checkPages()
    {
        auto query = m_connection.run("PRAGMA integrity_check(20)");
        while (query.next()) {
            const auto line = query.value(0).toString().toStdString();
            if (line != "ok")
                m_said.problems.push_back("SQLite finds: " + line);
        }
    }

    /// The tables and triggers are those that we made: a dropped trigger would let rows be changed.
    void checkSchema()
    {
        std::size_t wrongs = 0;
        std::map<std::string, bool> there;
        auto query = m_connection.run(sql::SelectSchema);
        while (query.next())
            there[query.value(3).toString().toStdString()] = true;
        for (const auto statement : sql::schemaOne()) {
            if (!there.contains(std::string(statement)))
                wrong("the schema lacks or has changed: " +
                          std::string(statement.substr(0, statement.find('\n'))),
                      wrongs);
        }
    }

    void checkSeal(const QSqlQuery &query, int sealColumn, const QByteArray &seal,
                   const std::string &what)
    {
        if (query.value(sealColumn).toByteArray() != seal)
            wrong(what + " was changed after it was written", m_sealProblems);
    }

    void checkRecords()
    {
        auto shop = m_connection.run(sql::SelectShop);
        if (shop.next())
            checkSeal(shop, 3,
                      shopSeal(shop.value(0).toString().toStdString(),
                               shop.value(1).toString().toStdString(), shop.value(2).toLongLong()),
                      "the shop's name or currency");
        for (auto place = m_connection.run(sql::SelectPlaces); place.next();) {
            const auto id = place.value(1).toString().toStdString();
            const auto kind = parsePlaceKind(place.value(3).toString().toStdString());
            const Place read{id, place.value(2).toString().toStdString(),
                             kind.value_or(PlaceKind::Shelf)};
            checkSeal(place, 4, kind ? sealOf(canonicalBytes(read)) : QByteArray(), "place " + id);
        }
        QByteArray previous;
        for (auto document = m_connection.run(sql::SelectEveryDocument); document.next();) {
            const auto name = document.value(1).toString().toStdString();
            previous = sealOf(canonicalBytes(std::vector<std::string>{
                                  name, document.value(2).toString().toStdString(),
                                  document.value(3).toString().toStdString(),
                                  document.value(4).toString().toStdString(),
                                  document.value(5).toString().toStdString()}),
                              previous);
            checkSeal(document, 6, previous, "document " + name);
        }
        for (auto box = m_connection.run(sql::SelectBoxChecks); box.next();) {
            const auto part = box.value(2).toString().toStdString();
            std::array<std::uint8_t, 16> id{};
            const auto bytes = box.value(1).toByteArray();
            std::copy_n(bytes.begin(), std::min<qsizetype>(16, bytes.size()), id.begin());
            const BoxCheck check{MovementId::ofBytes(id),
                                 part,
                                 box.value(3).toString().toStdString(),
                                 missingOf(box.value(4).toString().toStdString()),
                                 box.value(5).toString().toStdString(),
                                 box.value(6).toLongLong()};
            checkSeal(box, 7, sealOf(canonicalBytes(check)), "what was seen in a box of " + part);
        }
    }

    struct Replica {
        QByteArray id;
        std::int64_t movements = 0;
        QByteArray head;
        std::int64_t seen = 0;
        QByteArray reached = QByteArray(32, '\0'); ///< The head that a chain begins with.
    };

    void checkJournal()
    {
        std::map<std::int64_t, Replica> replicas;
        for (auto query = m_connection.run(sql::SelectReplicas); query.next();) {
            auto &replica = replicas[query.value(0).toLongLong()];
            replica.id = query.value(1).toByteArray();
            replica.movements = query.value(2).toLongLong();
            replica.head = query.value(4).toByteArray();
        }
        Ledger ledger(placesIn(m_connection));
        for (auto query = m_connection.run(sql::SelectMovements); query.next();)
            follow(journalRow(query), replicas, ledger);
        for (const auto &[number, replica] : replicas) {
            m_said.heads.push_back(replica.id.toHex().toStdString() + ":" +
                                   std::to_string(replica.seen) + ":" +
                                   replica.reached.toHex().toStdString());
            if (replica.seen != replica.movements || replica.reached != replica.head)
                wrong("the journal ends at movement " + std::to_string(replica.seen) + " of " +
                          std::to_string(replica.movements),
                      m_chainProblems);
        }
        checkBalances(ledger);
    }

    void follow(const JournalRow &row, std::map<std::int64_t, Replica> &replicas, Ledger &ledger)
    {
        ++m_said.movements;
        auto &replica = replicas[row.replica];
        const auto id = row.movement.id.text();
        const bool next = row.sequence == replica.seen + 1;
        const auto hash = chainHash(row, replica.reached, replica.id);
        if (!next || hash != row.hash)
            wrong("movement " + id +
                      (next ? " was changed after it was written"
                            : " does not follow the one before it"),
                  m_chainProblems);
        else if (m_chainProblems == 0)
            m_said.lastGood = id;
        replica.seen = row.sequence;
        replica.reached = row.hash;
        if (const auto refusal = ledger.apply(row.movement))
            wrong("movement " + id + " " + std::string(text(*refusal)), m_foldProblems);
    }

    void checkBalances(const Ledger &ledger)
    {
        std::size_t wrongs = 0;
        Balances left = ledger.balances();
        for (auto query = m_connection.run(sql::SelectBalances); query.next();) {
            const auto condition = parsePieceCondition(query.value(3).toString().toStdString());
            const BalanceKey key{
                query.value(0).toString().toStdString(), query.value(1).toString().toStdString(),
                query.value(2).toString().toStdString(), condition.value_or(PieceCondition::New)};
            const Balance cached{query.value(4).toLongLong(), query.value(5).toLongLong()};
            if (!condition || !(ledger.balance(key) == cached))
                wrong("the balance of " + key.part + " at " + key.place +
                          " is not what the movements add up to",
                      wrongs);
            left.erase(key);
        }
        for (const auto &[key, balance] : left)
            wrong("the balance of " + key.part + " at " + key.place + " is missing", wrongs);
    }

    const ShopConnection &m_connection;
    Verification m_said;
    std::size_t m_sealProblems = 0;
    std::size_t m_chainProblems = 0;
    std::size_t m_foldProblems = 0;
};

} // namespace

Verification verified(const ShopConnection &connection)
{
    return Verifying(connection).done();
}

} // namespace flarestock
