// SPDX-License-Identifier: MIT

#include "model/storage/trailer/bringing.h"

#include "model/journal/notes/decision.h"
#include "model/storage/journal_reader.h"
#include "model/storage/shop_sql.h"
#include "model/storage/trailer/own_trip.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A chain of the copy on its way into the shop.
struct ChainOnItsWay {
    std::int64_t number = 0; ///< Here.
    QByteArray head;         ///< Proved so far.
    ChainTaken taken;
    std::int64_t lamport = 0;
};

class BringingIn {
public:
    BringingIn(ShopConnection &shop, const CopyRead &copy, const Bringing &bringing,
               const Said &said)
        : m_shop(shop), m_copy(copy), m_bringing(bringing), m_said(said),
          m_disagreements(bringing.decisions), m_own{said.id, said.who, said.why, said.at}
    {
    }

    BroughtBack done()
    {
        findTrip();
        readNews();
        const auto before = lastBrought();
        const auto beside = bringBeside(m_copy.beside, before, m_shop, m_disagreements);
        m_back.documents = beside.documents;
        m_back.places = beside.places;
        m_back.looks = beside.looks;
        const bool stays = m_back.copy.isOut == m_bringing.goesOn || !m_back.copy.isOut;
        m_back.already = m_news.empty() && beside.isNothing() && before == documentsOfCopy() &&
                         stays && !m_back.copy.brought.empty();
        if (m_back.already)
            return std::move(m_back);
        takeIn();
        m_back.disagreements = m_disagreements.all();
        m_back.needless = m_disagreements.needless();
        m_back.written = !m_disagreements.isOpen() && !m_bringing.looks;
        return std::move(m_back);
    }

private:
    void findTrip()
    {
        const Trips trips = tripsIn(m_shop);
        const TravellingCopy *copy = trips.named(m_copy.trip);
        if (!copy)
            throw StorageFailure{{"the copy",
                                  "says that it was taken where this shop knows nothing "
                                  "of it",
                                  "Bring it to the shop that it was taken from."}};
        m_back.copy = *copy;
    }

    [[nodiscard]] std::int64_t documentsOfCopy() const
    {
        return static_cast<std::int64_t>(m_copy.beside.documents.size());
    }

    [[nodiscard]] std::int64_t lastBrought() const
    {
        std::int64_t most = 0;
        for (const Trip &brought : m_back.copy.brought)
            most = std::max(most, brought.documents);
        return std::min(most, documentsOfCopy());
    }

    void readNews()
    {
        const auto ends = chainEnds(m_shop);
        for (const NewsEntry &entry : m_copy.news) {
            const auto known = ends.find(entry.replica);
            if (known == ends.end() || entry.place.sequence > known->second.entries)
                m_news.push_back(entry);
        }
        KnownChains there;
        for (const auto &[id, end] : m_copy.ends)
            there[id] = end.entries;
        m_here = newsBehind(there, m_shop);
        for (const NewsEntry &entry : m_here) {
            const bool ofTrip = entry.record && entry.record->kind == RecordKind::Trip;
            m_back.missing += ofTrip ? 0 : 1;
        }
    }

    void takeIn()
    {
        JournalWriter writer(m_shop, Promised::MayGo);
        writer.touchWhatIsAway();
        const EntriesBrought::Into into{m_shop,          writer,        m_own,
                                        m_disagreements, changedHere(), m_copy.trip};
        EntriesBrought entries(into);
        const BothSides sides{m_news, m_here};
        const auto aside = keptAside(sides, into);
        lendToCounts(sides, entries);
        doAgain(sides, entries, into);
        std::size_t taken = 0;
        for (const NewsEntry &entry : m_news) {
            goOn(m_bringing, taken++, m_news.size());
            prove(entry);
            const auto number = chainOf(entry).number;
            m_chains.at(entry.replica).lamport =
                entries.take(entry, number, aside.contains(entry.id()));
            if (entry.movement)
                m_back.movements.push_back(*entry.movement);
            else if (entry.record->kind != RecordKind::Trip)
                m_back.records.push_back(*entry.record);
        }
        proveEnds();
        entries.settle();
        settleCounts(sides, entries, into);
        settleRenewals(sides, entries, into);
        settleWashes(sides, entries, into);
        settlePromises(sides, into);
        settleWords(sides, into);
        sayAgainUnderNextNumber(sides, into);
        settlePlans(sides, entries, into);
        entries.settle();
        m_back.settled = entries.settled();
        writeDown(writer);
        writer.finish();
        for (const auto &[id, chain] : m_chains)
            m_shop.run(sql::UpdateReplica, {number(chain.taken.last), number(chain.lamport),
                                            chain.head, number(chain.number)});
    }

    ChainOnItsWay &chainOf(const NewsEntry &entry)
    {
        const auto known = m_chains.find(entry.replica);
        if (known != m_chains.end())
            return known->second;
        auto ends = chainEnds(m_shop);
        if (!ends.contains(entry.replica)) {
            m_shop.run(sql::InsertReplicaElsewhere, {entry.replica, QByteArray(32, '\0')});
            ends = chainEnds(m_shop);
        }
        const ChainEnd &end = ends.at(entry.replica);
        ChainOnItsWay chain{end.replica, end.head, {}, end.lamport};
        chain.taken = {entry.replica.toHex().toStdString(), end.entries + 1, end.entries, {}};
        return m_chains.emplace(entry.replica, std::move(chain)).first->second;
    }

    /// That it is the one that follows, by the hash over all before it.
    void prove(const NewsEntry &entry)
    {
        ChainOnItsWay &chain = chainOf(entry);
        ChainPlace there = entry.place;
        there.lamport = entry.count;
        if (there.sequence != chain.taken.last + 1 ||
            chainHash(there, entry.bytes, chain.head, entry.replica) != there.hash)
            throw StorageFailure{{"the copy",
                                  "is not whole: entry " + std::to_string(there.sequence) +
                                      " was changed, or does not follow",
                                  "Run flarestock verify on it."}};
        chain.head = there.hash;
        chain.taken.last = there.sequence;
        auto &counts = chain.taken.counts;
        if (!counts.empty() && counts.back().second + 1 == entry.count)
            counts.back().second = entry.count;
        else
            counts.emplace_back(entry.count, entry.count);
    }

    /// That nothing is missing at their ends.
    void proveEnds() const
    {
        for (const auto &[id, chain] : m_chains) {
            const ChainEnd &end = m_copy.ends.at(id);
            if (chain.taken.last != end.entries || chain.head != end.head)
                throw StorageFailure{{"the copy",
                                      "is not whole: its journal ends at entry " +
                                          std::to_string(chain.taken.last) + " of " +
                                          std::to_string(end.entries),
                                      "Run flarestock verify on it."}};
        }
    }

    void writeDown(JournalWriter &writer)
    {
        for (const Disagreement &one : m_disagreements.all()) {
            if (!one.decided.empty())
                static_cast<void>(
                    writer.append(Decision{m_own.nextId(), one.name, one.what, one.decided,
                                           m_copy.trip, m_said.who, m_said.why, m_said.at}
                                      .asRecord()));
        }
        Trip trip = m_back.copy.taken;
        trip.id = m_own.nextId();
        trip.state = TripState::Brought;
        trip.places = {m_back.copy.places.begin(), m_back.copy.places.end()};
        trip.documents = documentsOfCopy();
        trip.goesOn = m_bringing.goesOn;
        trip.who = m_said.who;
        trip.why = m_said.why;
        trip.at = m_said.at;
        for (const auto &[id, chain] : m_chains)
            trip.chains.push_back(chain.taken);
        static_cast<void>(writer.append(trip.asRecord()));
    }

    /// Documents that say another thing here than they did in the copy.
    [[nodiscard]] std::set<std::string> changedHere() const
    {
        std::map<std::string, std::string> there;
        for (const DocumentVersion &version : m_copy.beside.documents)
            there[version.name] = version.content;
        std::set<std::string> changed;
        for (const auto &[name, content] : newestDocuments(m_shop)) {
            if (const auto same = there.find(name); same == there.end() || same->second != content)
                changed.insert(name);
        }
        return changed;
    }

    ShopConnection &m_shop;
    const CopyRead &m_copy;
    const Bringing &m_bringing;
    const Said &m_said;
    Disagreements m_disagreements;
    OwnEntries m_own;
    BroughtBack m_back;
    std::vector<NewsEntry> m_news; ///< The copy's.
    std::vector<NewsEntry> m_here; ///< The shop's.
    std::map<QByteArray, ChainOnItsWay> m_chains;
};

} // namespace

BroughtBack broughtInto(ShopConnection &shop, const CopyRead &copy, const Bringing &bringing,
                        const Said &said)
{
    throwUnlessOfThisShop(copy, shop);
    return BringingIn(shop, copy, bringing, said).done();
}

} // namespace flarestock
