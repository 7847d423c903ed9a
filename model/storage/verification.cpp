// SPDX-License-Identifier: MIT

#include "model/storage/verification.h"

#include "model/storage/journal_reader.h"
#include "model/storage/new_shop.h"
#include "model/storage/shop_sql.h"

#include <map>
#include <set>

namespace flarestock {

namespace {

constexpr std::size_t ProblemsMost = 20;

class Verifying {
public:
    explicit Verifying(const ShopConnection &connection) : m_connection(connection) {}

    Verification done()
    {
        m_connection.examine([this](const std::string &what) { wrong(what, m_ownProblems); });
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

    void checkSeal(const QSqlQuery &query, int sealColumn, const QByteArray &seal,
                   const std::string &what)
    {
        if (query.value(sealColumn).toByteArray() != seal)
            wrong(what + " was changed after it was written", m_sealProblems);
    }

    void checkSequence(const QSqlQuery &query, std::int64_t expected, const std::string &what)
    {
        if (query.value(0).toLongLong() != expected)
            wrong(what + " does not follow the one before it", m_sealProblems);
    }

    void checkRecords()
    {
        auto shop = m_connection.run(sql::SelectShop);
        if (!shop.next())
            wrong("the shop's name and currency are missing", m_sealProblems);
        else
            checkSeal(
                shop, 4,
                shopSeal({shop.value(0).toString().toStdString(),
                          shop.value(1).toString().toStdString(),
                          shop.value(2).toString().toStdString(), shop.value(3).toLongLong()}),
                "the shop's name, currency or costing");
        checkPlaces();
        checkDocuments();
        checkBoxes();
    }

    void checkPlaces()
    {
        std::int64_t places = 0;
        for (auto place = m_connection.run(sql::SelectPlaces); place.next();) {
            const auto id = place.value(1).toString().toStdString();
            checkSequence(place, ++places, "place " + id);
            const auto kind = parsePlaceKind(place.value(3).toString().toStdString());
            const Place read{id, place.value(2).toString().toStdString(),
                             kind.value_or(PlaceKind::Shelf)};
            checkSeal(place, 4,
                      kind && text(*kind) == place.value(3).toString().toStdString()
                          ? sealOf(canonicalBytes(read))
                          : QByteArray(),
                      "place " + id);
        }
    }

    void checkDocuments()
    {
        QByteArray previous;
        std::int64_t versions = 0;
        for (auto document = m_connection.run(sql::SelectEveryDocument); document.next();) {
            const auto name = document.value(1).toString().toStdString();
            checkSequence(document, ++versions, "document " + name);
            previous = sealOf(canonicalBytes(std::vector<std::string>{
                                  name, document.value(2).toString().toStdString(),
                                  document.value(3).toString().toStdString(),
                                  document.value(4).toString().toStdString(),
                                  document.value(5).toString().toStdString()}),
                              previous);
            checkSeal(document, 6, previous, "document " + name);
        }
    }

    void checkBoxes()
    {
        std::int64_t looks = 0;
        for (auto box = m_connection.run(sql::SelectBoxChecks); box.next();) {
            const BoxCheck check = boxCheckRow(box);
            checkSequence(box, ++looks, "what was seen in a box of " + check.part);
            checkSeal(box, 7, sealOf(canonicalBytes(check)),
                      "what was seen in a box of " + check.part);
        }
    }

    struct Replica {
        QByteArray id;
        std::int64_t entries = 0;
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
            replica.entries = query.value(2).toLongLong();
            replica.head = query.value(4).toByteArray();
        }
        Ledger ledger(placesIn(m_connection), costingIn(m_connection));
        ledger.remember(takenBack());
        readJournal(
            m_connection,
            [&](const JournalRow &row) {
                ++m_said.movements;
                follow(row, canonicalBytes(row.movement), "movement " + row.movement.id.text(),
                       replicas);
                if (m_chainProblems == 0)
                    m_said.lastGood = row.movement.id.text();
                if (const auto refusal = ledger.apply(row.movement))
                    wrong("movement " + row.movement.id.text() + " " + std::string(text(*refusal)),
                          m_foldProblems);
            },
            [&](const RecordRow &row) {
                follow(row, canonicalBytes(row.record), "record " + row.record.id.text(), replicas);
                foldRecord(row.record, ledger);
            });
        for (const auto &[number, replica] : replicas) {
            m_said.heads.push_back(replica.id.toHex().toStdString() + ":" +
                                   std::to_string(replica.seen) + ":" +
                                   replica.reached.toHex().toStdString());
            if (replica.seen != replica.entries || replica.reached != replica.head)
                wrong("the journal ends at entry " + std::to_string(replica.seen) + " of " +
                          std::to_string(replica.entries),
                      m_chainProblems);
        }
        if (ledger.benchValue() != 0)
            wrong("value was left at the bench", m_foldProblems);
        checkBalances(ledger);
        checkLayers(ledger);
        checkClaims(ledger);
    }

    [[nodiscard]] std::set<MovementId> takenBack() const
    {
        std::set<MovementId> ids;
        for (auto query = m_connection.run(sql::SelectTakenBack); query.next();)
            ids.insert(idOf(query.value(0).toByteArray()));
        return ids;
    }

    void follow(const ChainPlace &row, const std::vector<std::uint8_t> &bytes,
                const std::string &what, std::map<std::int64_t, Replica> &replicas)
    {
        auto &replica = replicas[row.replica];
        const bool next = row.sequence == replica.seen + 1;
        if (!next || chainHash(row, bytes, replica.reached, replica.id) != row.hash)
            wrong(what + (next ? " was changed after it was written"
                               : " does not follow the one before it"),
                  m_chainProblems);
        replica.seen = row.sequence;
        replica.reached = row.hash;
    }

    void foldRecord(const Record &record, Ledger &ledger)
    {
        if (record.kind != RecordKind::Promise)
            return;
        const auto promise = Promise::read(record);
        if (!promise)
            return wrong(promise.error().sentence(), m_foldProblems);
        if (const auto refusal = ledger.apply(*promise))
            wrong("record " + record.id.text() + " " + std::string(text(*refusal)), m_foldProblems);
    }

    void checkClaims(const Ledger &ledger)
    {
        Claims left = ledger.claims();
        for (auto query = m_connection.run(sql::SelectClaims); query.next();) {
            const ClaimKey key{query.value(0).toString().toStdString(),
                               query.value(1).toString().toStdString()};
            const Claim cached{query.value(2).toLongLong(), query.value(3).toLongLong()};
            if (!(ledger.claim(key) == cached))
                wrong("what build " + key.build + " has of " + key.part +
                          " is not what the journal adds up to",
                      m_foldProblems);
            left.erase(key);
        }
        for (const auto &[key, claim] : left)
            wrong("what build " + key.build + " has of " + key.part + " is missing",
                  m_foldProblems);
    }

    void checkLayers(const Ledger &ledger)
    {
        std::set<BalanceKey> differ;
        Ledger stored({}, ledger.costing());
        for (auto query = m_connection.run(sql::SelectLayers); query.next();) {
            const BalanceKey key = carryLayer(QueryRow(query), stored);
            if (text(key.condition) != query.value(3).toString().toStdString())
                differ.insert(key);
        }
        for (const auto &[key, layers] : stored.layers()) {
            if (ledger.layersAt(key) != layers)
                differ.insert(key);
        }
        for (const auto &[key, layers] : ledger.layers()) {
            if (stored.layersAt(key) != layers)
                differ.insert(key);
        }
        for (const BalanceKey &key : differ)
            wrong("when and for how much " + key.part + " at " + key.place +
                      " came in is not what the movements say",
                  m_foldProblems);
    }

    void checkBalances(const Ledger &ledger)
    {
        Balances left = ledger.balances();
        for (auto query = m_connection.run(sql::SelectBalances); query.next();) {
            const auto condition = parsePieceCondition(query.value(3).toString().toStdString());
            const BalanceKey key{
                query.value(0).toString().toStdString(), query.value(1).toString().toStdString(),
                query.value(2).toString().toStdString(), condition.value_or(PieceCondition::New)};
            const Balance cached{query.value(4).toLongLong(), query.value(5).toLongLong()};
            const bool spelt =
                condition && text(*condition) == query.value(3).toString().toStdString();
            const Place *place = ledger.place(key.place);
            const bool stock = place && isStock(place->kind);
            if (!spelt || !(ledger.balance(key) == cached) ||
                (query.value(6).toLongLong() != 0) != stock)
                wrong("the balance of " + key.part + " at " + key.place +
                          " is not what the movements add up to",
                      m_foldProblems);
            left.erase(key);
        }
        for (const auto &[key, balance] : left)
            wrong("the balance of " + key.part + " at " + key.place + " is missing",
                  m_foldProblems);
    }

    const ShopConnection &m_connection;
    Verification m_said;
    std::size_t m_ownProblems = 0;
    std::size_t m_sealProblems = 0;
    std::size_t m_chainProblems = 0;
    std::size_t m_foldProblems = 0;
};

} // namespace

Verification verified(const ShopConnection &connection)
{
    Verification said;
    connection.atOneMoment([&] { said = Verifying(connection).done(); });
    return said;
}

} // namespace flarestock
