// SPDX-License-Identifier: MIT

#include "model/storage/trailer/documents_brought.h"

#include "model/storage/journal_reader.h"
#include "model/storage/new_shop.h"
#include "model/storage/shop_sql.h"

#include <algorithm>

namespace flarestock {

namespace {

std::vector<DocumentVersion> versionsIn(const ShopConnection &connection)
{
    std::vector<DocumentVersion> versions;
    connection.runAgain(sql::SelectEveryDocument, {}, [&versions](const QSqlQuery &query) {
        versions.push_back({query.value(0).toLongLong(), query.value(1).toString().toStdString(),
                            query.value(3).toString().toStdString(),
                            query.value(4).toString().toStdString(), query.value(5).toLongLong(),
                            query.value(6).toByteArray()});
    });
    return versions;
}

std::vector<BoxCheck> looksIn(const ShopConnection &connection)
{
    std::vector<BoxCheck> looks;
    connection.runAgain(sql::SelectBoxChecks, {},
                        [&looks](const QSqlQuery &query) { looks.push_back(boxCheckRow(query)); });
    return looks;
}

/// So many versions both began with: each seal says all before it.
std::size_t commonVersions(const std::vector<DocumentVersion> &copy,
                           const std::vector<DocumentVersion> &shop)
{
    const auto differ = std::mismatch(
        copy.begin(), copy.end(), shop.begin(), shop.end(),
        [](const DocumentVersion &a, const DocumentVersion &b) { return a.seal == b.seal; });
    return static_cast<std::size_t>(differ.first - copy.begin());
}

class Beside {
public:
    Beside(const BesideJournal &copy, ShopConnection &shop, Disagreements &disagreements)
        : m_copy(copy), m_shop(shop), m_disagreements(disagreements)
    {
    }

    DocumentsBrought bring(std::int64_t broughtBefore)
    {
        bringPlaces();
        bringDocuments(broughtBefore);
        bringLooks();
        return std::move(m_brought);
    }

private:
    void bringPlaces()
    {
        const auto here = placesIn(m_shop);
        auto sequence = static_cast<std::int64_t>(here.size());
        for (const Place &place : m_copy.places) {
            const auto same = std::find_if(here.begin(), here.end(), [&place](const Place &one) {
                return one.id == place.id;
            });
            if (same == here.end()) {
                writePlace(m_shop, place, ++sequence);
                m_brought.places.push_back(place.id);
            } else if (same->kind != place.kind) {
                static_cast<void>(m_disagreements.decide(
                    {"place:" + place.id,
                     "place " + place.id + " is a " + std::string(text(same->kind)) +
                         " here and a " + std::string(text(place.kind)) + " in the copy",
                     {{"shop", "it stays what it is here"}},
                     {}}));
            }
        }
    }

    void bringDocuments(std::int64_t broughtBefore)
    {
        const auto &versions = m_copy.documents;
        const std::size_t known = std::max(commonVersions(versions, versionsIn(m_shop)),
                                           static_cast<std::size_t>(broughtBefore));
        std::map<std::string, std::string> before;
        std::map<std::string, const DocumentVersion *> changed;
        for (std::size_t i = 0; i < versions.size(); ++i) {
            if (i < known)
                before[versions[i].name] = versions[i].content;
            else
                changed[versions[i].name] = &versions[i];
        }
        for (const auto &[name, newest] : changed) {
            const auto here = newestDocument(m_shop, name);
            const auto was = before.find(name);
            if (here == newest->content || (was != before.end() && was->second == newest->content))
                continue;
            const bool isAsThen = was == before.end() ? !here : here == was->second;
            if (!isAsThen && !copyWins(name))
                continue;
            writeDocument(m_shop, name, newest->content, {newest->who, newest->at});
            m_brought.documents.push_back(name);
        }
    }

    bool copyWins(const std::string &name)
    {
        return m_disagreements.decide(
                   {"document:" + name,
                    name + " was changed on both sides",
                    {{"shop", "it stays as it is here; the copy's is left out"},
                     {"copy",
                      "the copy's stands from now on; the shop's stays among its versions"}},
                    {}}) == "copy";
    }

    void bringLooks()
    {
        const auto here = looksIn(m_shop);
        for (const BoxCheck &look : m_copy.looks) {
            const bool isKnown =
                std::any_of(here.begin(), here.end(),
                            [&look](const BoxCheck &one) { return one.id == look.id; });
            if (isKnown)
                continue;
            writeBoxCheck(m_shop, look);
            ++m_brought.looks;
            sayAgainWhereTheShopLooked(look, here);
        }
    }

    /// Where somebody looked into the same box here, since the copy was taken, and saw otherwise.
    void sayAgainWhereTheShopLooked(const BoxCheck &look, const std::vector<BoxCheck> &here)
    {
        const auto last = std::find_if(here.rbegin(), here.rend(), [&](const BoxCheck &one) {
            return one.part == look.part && one.lot == look.lot;
        });
        if (last == here.rend() || last->missing == look.missing ||
            std::any_of(m_copy.looks.begin(), m_copy.looks.end(),
                        [&last](const BoxCheck &one) { return one.id == last->id; }))
            return;
        static_cast<void>(m_disagreements.decide(
            {"box:" + look.part + (look.lot.empty() ? "" : "/" + look.lot),
             "the box of " + look.part + " was looked into on both sides, and other pieces lacked",
             {{"copy", "what was seen there counts: look again where it stands here"}},
             {}}));
    }

    const BesideJournal &m_copy;
    ShopConnection &m_shop;
    Disagreements &m_disagreements;
    DocumentsBrought m_brought;
};

} // namespace

BesideJournal besideJournal(const ShopConnection &connection)
{
    return {versionsIn(connection), placesIn(connection), looksIn(connection)};
}

DocumentsBrought bringBeside(const BesideJournal &copy, std::int64_t broughtBefore,
                             ShopConnection &shop, Disagreements &disagreements)
{
    return Beside(copy, shop, disagreements).bring(broughtBefore);
}

} // namespace flarestock
