// SPDX-License-Identifier: MIT

#include "app/desk/build/find_rows.h"

#include "app/desk/opened/detail.h"
#include "app/desk/stock/found_by.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct FindWords {
    Q_DECLARE_TR_FUNCTIONS(Find)
};

class Search {
public:
    Search(const QString &typed, int most)
        : m_words(wordsTyped(typed.toStdString())), m_most(static_cast<std::size_t>(most))
    {
    }
    [[nodiscard]] bool isBlank() const { return m_words.empty(); }

    struct Found {
        QString kind;
        QString title;
        QString detail;
        QString target;
    };
    void offer(const Found &found, const QString &further)
    {
        const QString key = QString(found.kind + u'|' + found.target);
        const bool isThere = std::any_of(m_rows.begin(), m_rows.end(),
                                         [&key](const Row &row) { return row.key == key; });
        if (m_rows.size() >= m_most || isThere)
            return;
        std::string sought;
        for (const QString &text : {found.title, found.detail, further})
            sought += foldedWords(text.toStdString());
        if (holdsAll(sought, m_words))
            m_rows.push_back({key, {found.kind, found.title, found.detail, found.target}});
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    std::vector<std::string> m_words;
    std::size_t m_most;
    std::vector<Row> m_rows;
};

QString portsOf(const Part &part)
{
    QStringList ports;
    for (const PartPort &port : part.ports)
        ports.append(said(port.port.text()));
    return ports.join(u' ');
}

QString piecesOf(const PlacedJoint &joint)
{
    QStringList pieces;
    if (joint.way) {
        for (const Piece &piece : joint.way->pieces)
            pieces.append(said(piece.part->number));
    }
    return pieces.join(QStringLiteral(" + "));
}

void offerStations(Search &search, const Expansion &expansion)
{
    for (const PlacedStation &station : expansion.stations) {
        const QString title =
            said(station.station != nullptr ? station.station->title : station.id);
        if (station.part == nullptr)
            search.offer({QStringLiteral("station"), title, QString(), said(station.id)}, {});
        else
            search.offer({QStringLiteral("station"), title,
                          QString(said(station.part->number) + QStringLiteral(" · ") +
                                  said(station.part->description)),
                          said(station.id)},
                         portsOf(*station.part));
    }
}

/// The joints that want a piece in the hand: it closes them in another way than the one in use.
void offerOtherWays(Search &search, const Expansion &expansion)
{
    for (const PlacedJoint &joint : expansion.joints) {
        for (const Way &other : joint.others)
            search.offer({QStringLiteral("joint"), said(joint.at),
                          FindWords::tr("could be made with %1").arg(said(other.key())),
                          said(joint.id)},
                         {});
    }
}

} // namespace

QStringList foundCells()
{
    return {QStringLiteral("kind"), QStringLiteral("title"), QStringLiteral("detail"),
            QStringLiteral("target")};
}

std::vector<Row> foundRows(const WorkedOut &worked, const QString &typed, int most, Units units)
{
    Search search(typed, most);
    if (search.isBlank())
        return {};
    offerStations(search, *worked.expansion);
    for (const PlacedJoint &joint : worked.expansion->joints)
        search.offer({QStringLiteral("joint"), said(joint.at),
                      QString(saidPort(joint.from) + QStringLiteral(" → ") + saidPort(joint.to)),
                      said(joint.id)},
                     QString(piecesOf(joint) + u' ' + saidStanding(joint)));
    for (const BillLine &line : worked.expansion->lines)
        search.offer({QStringLiteral("line"), said(line.part->number), said(line.part->description),
                      said(line.part->number)},
                     QString(portsOf(*line.part) + u' ' + said(text(line.part->kind))));
    for (const PlacedRun &run : worked.expansion->runs) {
        if (run.line != nullptr)
            search.offer({QStringLiteral("run"),
                          QString(titleOf(worked, run.from) + QStringLiteral(" → ") +
                                  titleOf(worked, run.to)),
                          QString(said(run.line->number) + QStringLiteral(" · ") +
                                  saidAmount(run.length, units)),
                          said(run.id)},
                         said(run.line->description));
    }
    offerOtherWays(search, *worked.expansion);
    return search.take();
}

} // namespace flarestock
