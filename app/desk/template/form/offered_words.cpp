// SPDX-License-Identifier: MIT

#include "app/desk/template/form/offered_words.h"

#include "app/desk/words/spoken.h"
#include "model/exact/case_fold.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

/// More in a list nobody looks through.
constexpr int OffersMost = 60;

QString saidThere(const TomlValue *table, std::string_view key)
{
    const TomlEntry *const entry = table == nullptr ? nullptr : table->find(key);
    return entry == nullptr ? QString() : said(entry->value.text);
}

class Offering {
public:
    Offering(const ParagraphAt &at, const FreshFrom &from) : m_at(at), m_from(from) {}

    QStringList words(const QString &key)
    {
        const QString last = key.section(u'/', -1);
        const QString first = key.section(u'/', 0, 0);
        if (last == QStringLiteral("when"))
            addConditions();
        else if (first == QStringLiteral("answers"))
            addAnswers(key.section(u'/', 1, 1));
        else if (m_at.kind == Paragraph::Run &&
                 (first == QStringLiteral("from") || first == QStringLiteral("to")))
            addPorts();
        else if (first == QStringLiteral("plugged"))
            addPortsOf(saidThere(m_at.in(m_from.root), "id"), {});
        else if (first == QStringLiteral("pumps"))
            addStations(QStringLiteral("pump"));
        else if (first == QStringLiteral("template"))
            addTemplates();
        else
            addValues(first);
        return m_words;
    }

private:
    void add(const QString &word)
    {
        if (!word.isEmpty() && m_words.size() < OffersMost && !m_words.contains(word))
            m_words.append(word);
    }

    /// Those that are asked before this paragraph.
    [[nodiscard]] std::vector<const TomlValue *> questions() const
    {
        const std::size_t count = m_at.kind == Paragraph::Question
                                      ? m_at.index
                                      : countOf(Paragraph::Question, m_from.root);
        std::vector<const TomlValue *> all;
        for (std::size_t at = 0; at < count; ++at) {
            const ParagraphAt one{Paragraph::Question, at};
            if (const TomlValue *const table = one.in(m_from.root))
                all.push_back(table);
        }
        return all;
    }

    void addConditions()
    {
        for (const TomlValue *const asked : questions()) {
            const QString id = saidThere(asked, "id");
            const QString form = saidThere(asked, "form");
            if (form == QStringLiteral("yes/no"))
                add(id + QStringLiteral(" is yes"));
            else if (form == QStringLiteral("measure"))
                add(id + QStringLiteral(" above ") + saidThere(asked, "default"));
            const TomlEntry *const choices = asked->find("choices");
            for (std::size_t at = 0; choices != nullptr && at < choices->value.items.size(); ++at)
                add(id + QStringLiteral(" is ") + said(choices->value.items[at].text));
        }
    }

    /// `{supply}`, of questions so answered.
    void addQuestions(const QString &form, const QString &dimension = {})
    {
        for (const TomlValue *const asked : questions()) {
            const bool fits = saidThere(asked, "form") == form &&
                              (dimension.isEmpty() || saidThere(asked, "dimension") == dimension);
            if (fits)
                add(u'{' + saidThere(asked, "id") + u'}');
        }
    }

    void addAnswers(const QString &id)
    {
        if (m_from.workshop == nullptr)
            return;
        const auto inside = m_from.workshop->templates->find(
            saidThere(m_at.in(m_from.root), "template").toStdString());
        if (inside == m_from.workshop->templates->end())
            return;
        const Question *const asked = inside->second->question(id.toStdString());
        if (asked == nullptr)
            return;
        if (asked->form == Question::Form::Measured)
            addQuestions(QStringLiteral("measure"), said(text(asked->dimension)));
        else
            addQuestions(asked->isDash ? QStringLiteral("dash") : QStringLiteral("choice"));
        for (const std::string &choice : asked->choices)
            add(said(choice));
        add(said(asked->standard));
    }

    void addPortsOf(const QString &station, const QString &before)
    {
        const PlacedStation *const placed =
            m_from.drawn == nullptr ? nullptr : m_from.drawn->station(station.toStdString());
        if (placed == nullptr || placed->part == nullptr)
            return;
        for (const PartPort &port : placed->part->ports)
            add(before + said(port.name));
    }

    /// The map knows the stations inside modules, too.
    void addPorts()
    {
        std::set<QString> drawn;
        for (std::size_t at = 0; m_from.drawn != nullptr && at < m_from.drawn->stations.size();
             ++at) {
            const QString id = said(m_from.drawn->stations[at].id);
            drawn.insert(id);
            addPortsOf(id, id + u'.');
        }
        for (std::size_t at = 0; at < countOf(Paragraph::Station, m_from.root); ++at) {
            const QString id = saidThere(ParagraphAt{Paragraph::Station, at}.in(m_from.root), "id");
            if (drawn.contains(id))
                continue;
            add(id + QStringLiteral(".in"));
            add(id + QStringLiteral(".out"));
        }
    }

    void addStations(const QString &kind)
    {
        for (std::size_t at = 0; m_from.drawn != nullptr && at < m_from.drawn->stations.size();
             ++at) {
            const PlacedStation &placed = m_from.drawn->stations[at];
            if (said(text(placed.station->demand.kind)) == kind)
                add(said(placed.id));
        }
    }

    void addTemplates()
    {
        const std::string own = saidThere(&m_from.root, "id").toStdString();
        for (std::size_t at = 0;
             m_from.workshop != nullptr && at < m_from.workshop->templates->size(); ++at) {
            const auto one =
                std::next(m_from.workshop->templates->begin(), static_cast<std::ptrdiff_t>(at));
            if (one->first != own)
                add(said(one->first));
        }
    }

    void addValues(const QString &key)
    {
        static const std::map<QString, QString> Measured = {
            {QStringLiteral("length"), QStringLiteral("length")},
            {QStringLiteral("lengths"), QStringLiteral("length")},
            {QStringLiteral("rise"), QStringLiteral("length")},
            {QStringLiteral("forward"), QStringLiteral("length")},
            {QStringLiteral("bend"), QStringLiteral("length")},
            {QStringLiteral("flow"), QStringLiteral("flow")},
            {QStringLiteral("pressure"), QStringLiteral("pressure")},
            {QStringLiteral("rated"), QStringLiteral("pressure")},
            {QStringLiteral("set-pressure"), QStringLiteral("pressure")},
            {QStringLiteral("other-loss"), QStringLiteral("pressure")}};
        if (const auto dimension = Measured.find(key); dimension != Measured.end())
            addQuestions(QStringLiteral("measure"), dimension->second);
        else if (key == QStringLiteral("dash"))
            addDashes();
        else if (key == QStringLiteral("fluid"))
            addFluids();
        else if (key.endsWith(QStringLiteral("angle")))
            for (const char *angle : {"45", "90", "120"})
                add(QString::fromLatin1(angle));
        else
            addFromCatalogue(key);
    }

    void addDashes()
    {
        addQuestions(QStringLiteral("dash"));
        for (const char *dash : {"-4", "-6", "-8", "-10", "-12", "-16"})
            add(QString::fromLatin1(dash));
    }

    void addFluids()
    {
        addQuestions(QStringLiteral("choice"));
        for (int fluid = 0; fluid < static_cast<int>(FluidCount); ++fluid)
            add(said(text(static_cast<Fluid>(fluid))));
    }

    void addFromCatalogue(const QString &key)
    {
        if (m_from.workshop == nullptr)
            return;
        const auto kind = parseKind(saidThere(m_at.in(m_from.root), "kind").toStdString());
        std::set<QString> found;
        for (const Part &part : m_from.workshop->catalogue.parts()) {
            const bool isOfKind = kind ? part.kind == *kind : isExtra(part.kind);
            if (key == QStringLiteral("part") && isOfKind)
                found.insert(said(part.number));
            else if (key == QStringLiteral("words") && isOfKind)
                for (const std::string &word : part.words)
                    found.insert(said(word));
            else if (key == QStringLiteral("construction") && part.kind == Kind::Hose)
                for (const PartPort &port : part.ports)
                    found.insert(said(port.port.construction));
        }
        for (const QString &word : found)
            add(word);
    }

    [[nodiscard]] static bool isExtra(Kind kind)
    {
        return kind == Kind::Tool || kind == Kind::Relay || kind == Kind::Fuse ||
               kind == Kind::Wire || kind == Kind::Sealant;
    }

    const ParagraphAt &m_at;
    const FreshFrom &m_from;
    QStringList m_words;
};

} // namespace

QStringList offeredWords(const ParagraphAt &at, const std::string &key, const FreshFrom &from)
{
    return Offering(at, from).words(said(key));
}

} // namespace flarestock
