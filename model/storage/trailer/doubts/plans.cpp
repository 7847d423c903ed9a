// SPDX-License-Identifier: MIT
//
// What the copy's entries name and is another here by now: a part that the catalogue has no more, a
// build that is not planned any more, a template that was changed.

#include "model/exchange/template_toml.h"
#include "model/storage/journal_reader.h"
#include "model/storage/shop_sql.h"
#include "model/storage/trailer/doubts/doubts.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr auto PlansName = "builds.toml";

std::set<std::string> partsIn(const std::vector<NewsEntry> &news)
{
    std::set<std::string> parts;
    eachMovement(news, [&parts](const Movement &one) { parts.insert(one.part); });
    return parts;
}

std::set<std::string> buildsIn(const std::vector<NewsEntry> &news)
{
    std::set<std::string> builds;
    eachMovement(news, [&builds](const Movement &one) {
        if (const auto issued = issuedBy(one))
            builds.insert(issued->claim.build);
    });
    eachRecord(news, RecordKind::Promise,
               [&builds](const Record &record) { builds.insert(record.subject); });
    return builds;
}

/// All that lies of a part in stock becomes another part, over the bench.
void becomes(const std::string &part, const std::string &other, EntriesBrought &entries,
             const EntriesBrought::Into &into)
{
    entries.settle();
    const Ledger &ledger = into.writer.knowing(part);
    const std::string bench = placeOf(PlaceKind::Bench, ledger);
    std::vector<BalanceKey> lying;
    for (const auto &[key, held] : ledger.balancesOf(part)) {
        const Place *place = ledger.place(key.place);
        if (place && isStock(place->kind) && held.quantity > 0)
            lying.push_back(key);
    }
    for (const BalanceKey &key : lying) {
        const Balance held = into.writer.balance(key);
        static_cast<void>(into.writer.append(
            into.own.movement(key, held.quantity, bench, "is called " + other + " by now")));
        Movement off = into.own.movement({other, bench, key.lot, key.condition}, held.quantity,
                                         key.place, "was called " + part);
        off.value = held.value;
        static_cast<void>(into.writer.append(std::move(off)));
    }
}

class Plans {
public:
    Plans(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into)
        : m_sides(sides), m_entries(entries), m_into(into),
          m_documents(newestDocuments(into.connection))
    {
    }

    void askForParts()
    {
        const auto parts = partsIn(m_sides.copy);
        if (parts.empty())
            return;
        const auto catalogue = readCatalogue(m_documents);
        if (!catalogue || catalogue->parts().empty())
            return; // Others say what is wrong with it.
        for (const std::string &part : parts) {
            if (catalogue->find(part) || isMadeUp(part))
                continue;
            const auto word = m_into.disagreements.decide(
                {"part:" + part,
                 "the copy moved " + part + ", which the catalogue has no more",
                 {{"keep", "what lies of it stays under that number"},
                  {"as:", "what lies of it is called otherwise by now: as:NEW-NUMBER"}},
                 {}});
            if (!word.starts_with("as:"))
                continue;
            const Part *other = catalogue->find(word.substr(3));
            if (!other)
                throw StorageFailure{{word.substr(3), "is no part of the catalogue",
                                      "Say as: and the number that it has by now."}};
            becomes(part, other->number, m_entries, m_into);
        }
    }

    void askForBuilds()
    {
        const auto builds = buildsIn(m_sides.copy);
        const auto text = m_documents.find(PlansName);
        if (builds.empty() || text == m_documents.end())
            return;
        const auto plans = readBuilds(text->second, PlansName);
        for (const std::string &build : plans ? builds : std::set<std::string>()) {
            const auto plan =
                std::find_if(plans->begin(), plans->end(),
                             [&build](const BuildPlan &one) { return one.id == build; });
            if (plan != plans->end())
                continue;
            static_cast<void>(m_into.disagreements.decide(
                {"build:" + build,
                 "the copy has pieces for " + build + ", which is not planned here any more",
                 {{"keep", "what was promised and issued to it stays written down"}},
                 {}}));
        }
    }

    /// `changed`: names of documents that are others here than in the copy.
    void askForTemplates(const std::set<std::string> &changed)
    {
        const auto text = m_documents.find(PlansName);
        const auto plans = text == m_documents.end() ? Result<std::vector<BuildPlan>>()
                                                     : readBuilds(text->second, PlansName);
        if (!plans)
            return;
        for (const std::string &build : buildsIn(m_sides.copy)) {
            const auto plan =
                std::find_if(plans->begin(), plans->end(),
                             [&build](const BuildPlan &one) { return one.id == build; });
            const std::string name =
                plan == plans->end() ? "" : "templates/" + plan->templateId + ".toml";
            if (!changed.contains(name))
                continue;
            static_cast<void>(m_into.disagreements.decide(
                {"template:" + build,
                 "the copy has pieces for " + build + ", and " + name + " was changed here",
                 {{"seen", "they stay as they are: look at its bill and findings"}},
                 {}}));
        }
    }

private:
    [[nodiscard]] bool isMadeUp(const std::string &part) const
    {
        bool found = false;
        m_into.connection.runAgain(sql::SelectRecordsAbout,
                                   {text(part), text(std::string(text(RecordKind::MadeHose)))},
                                   [&found](const QSqlQuery &) { found = true; });
        return found;
    }

    const BothSides &m_sides;
    EntriesBrought &m_entries;
    const EntriesBrought::Into &m_into;
    TextFiles m_documents;
};

} // namespace

void settlePlans(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into)
{
    if (into.changedHere.empty())
        return; // Both sides read the same documents.
    Plans plans(sides, entries, into);
    plans.askForParts();
    plans.askForBuilds();
    plans.askForTemplates(into.changedHere);
}

} // namespace flarestock
