// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/verification.h"

#include "model/storage/journal_reader.h"
#include "model/storage/shop_sql.h"
#include "model/storage/trailer/taken_in.h"
#include "model/storage/upkeep/sealed_rows.h"

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
        tried(m_ownProblems, [this] {
            m_connection.examine([this](const std::string &what) { wrong(what, m_ownProblems); });
        });
        tried(m_sealProblems, [this] {
            checkSealed(m_connection,
                        [this](const std::string &what) { wrong(what, m_sealProblems); });
        });
        tried(m_chainProblems, [this] { checkJournal(); });
        m_said.whole = m_said.problems.empty();
        return std::move(m_said);
    }

private:
    /// What cannot be read is a problem like another, and says nothing of what can.
    template <class Check>
    void tried(std::size_t &count, const Check &check)
    {
        try {
            check();
        } catch (const StorageFailure &failure) {
            if (!isOfTheShop(failure))
                throw;
            wrong(failure.problem.sentence(), count);
        }
    }

    void wrong(const std::string &what, std::size_t &count)
    {
        if (++count <= ProblemsMost)
            m_said.problems.push_back(what);
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
        for (auto query = m_connection.run(sql::SelectReplicas); m_connection.next(query);) {
            auto &replica = replicas[query.value(0).toLongLong()];
            replica.id = query.value(1).toByteArray();
            replica.entries = query.value(2).toLongLong();
            replica.head = query.value(4).toByteArray();
        }
        tried(m_chainProblems, [this] { m_takenIn = TakenIn(m_connection); });
        std::optional<Ledger> ledger;
        tried(m_foldProblems, [this, &ledger] {
            Ledger empty(placesIn(m_connection), costingIn(m_connection));
            empty.remember(takenBackIn(m_connection));
            ledger = std::move(empty);
        });
        followAndFold(replicas, ledger);
        checkEnds(replicas);
        if (ledger)
            checkSums(*ledger);
    }

    /// Damage that SQLite finds may lie in an index: then rows are read as they lie, which shows
    /// more, and by the index only where so nothing can be read at all.
    void followAndFold(std::map<std::int64_t, Replica> &replicas, std::optional<Ledger> &ledger)
    {
        const auto read = [&](JournalRead way) {
            readJournal(
                m_connection, way,
                [&](const JournalRow &row) {
                    ++m_said.movements;
                    follow(row, canonicalBytes(row.movement), "movement " + row.movement.id.text(),
                           replicas);
                    if (m_chainProblems == 0)
                        m_said.lastGood = row.movement.id.text();
                    foldMovement(row, ledger);
                },
                [&](const RecordRow &row) {
                    ++m_records;
                    follow(row, bytesOf(row), "record " + row.record.id.text(), replicas);
                    foldRecord(row, ledger);
                });
        };
        if (m_ownProblems == 0)
            return read(JournalRead::ByIndex);
        try {
            read(JournalRead::AsItLies);
        } catch (const StorageFailure &failure) {
            if (!isOfTheShop(failure) || m_said.movements + m_records > 0)
                throw;
            read(JournalRead::ByIndex);
        }
    }

    void checkEnds(const std::map<std::int64_t, Replica> &replicas)
    {
        for (const auto &[number, replica] : replicas) {
            m_said.heads.push_back(replica.id.toHex().toStdString() + ":" +
                                   std::to_string(replica.seen) + ":" +
                                   replica.reached.toHex().toStdString());
            if (replica.seen != replica.entries || replica.reached != replica.head)
                wrong("the journal ends at entry " + std::to_string(replica.seen) + " of " +
                          std::to_string(replica.entries),
                      m_chainProblems);
        }
    }

    void checkSums(const Ledger &ledger)
    {
        if (ledger.benchValue() != 0)
            wrong("value was left at the bench", m_foldProblems);
        checkBalances(ledger);
        checkLayers(ledger);
        checkClaims(ledger);
    }

    void foldMovement(const JournalRow &row, std::optional<Ledger> &ledger)
    {
        if (!ledger)
            return;
        const auto refusal =
            isTakenIn(row) ? ledger->take(row.movement) : ledger->apply(row.movement);
        if (refusal)
            wrong("movement " + row.movement.id.text() + " " + std::string(text(*refusal)),
                  m_foldProblems);
    }

    void follow(const ChainPlace &row, const std::vector<std::uint8_t> &bytes,
                const std::string &what, std::map<std::int64_t, Replica> &replicas)
    {
        auto &replica = replicas[row.replica];
        const bool next = row.sequence == replica.seen + 1;
        ChainPlace there = row;
        there.lamport = m_takenIn.countOf(row);
        if (!next || chainHash(there, bytes, replica.reached, replica.id) != row.hash)
            wrong(what + (next ? " was changed after it was written"
                               : " does not follow the one before it"),
                  m_chainProblems);
        replica.seen = row.sequence;
        replica.reached = row.hash;
    }

    void foldRecord(const RecordRow &row, std::optional<Ledger> &ledger)
    {
        const Record &record = row.record;
        if (!ledger || record.kind != RecordKind::Promise)
            return;
        const auto promise = Promise::read(record);
        if (!promise)
            return wrong(promise.error().sentence(), m_foldProblems);
        const auto refusal = isTakenIn(row) ? ledger->take(*promise) : ledger->apply(*promise);
        if (refusal)
            wrong("record " + record.id.text() + " " + std::string(text(*refusal)), m_foldProblems);
    }

    void checkClaims(const Ledger &ledger)
    {
        Claims left = ledger.claims();
        for (auto query = m_connection.run(sql::SelectClaims); m_connection.next(query);) {
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
        for (auto query = m_connection.run(sql::SelectLayers); m_connection.next(query);) {
            const BalanceKey key = carryLayer(QueryRow(query), stored);
            if (text(key.condition) != query.value(3).toString().toStdString())
                differ.insert(key);
        }
        for (const auto &[key, layers] : stored.layers()) {
            if (ledger.layersAt(key) != layers)
                differ.insert(key);
        }
        for (const auto &[key, layers] : ledger.layers()) {
            if (stored.layersAt(key) != layers || !(sumOf(layers) == ledger.balance(key)))
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
        for (auto query = m_connection.run(sql::SelectBalances); m_connection.next(query);) {
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
    TakenIn m_takenIn;
    Verification m_said;
    std::int64_t m_records = 0;
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
