// SPDX-License-Identifier: MIT

#include "app/desk/parts/card/port_meetings.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "model/ports/mating.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct MeetingWords {
    Q_DECLARE_TR_FUNCTIONS(PortMeetings)
};

/// More of them are not read by anybody.
constexpr std::size_t MeetingsMost = 40;

/// Two of one gender never screw into each other: the first thing that mating() says.
bool isOfOneGender(const Port &a, const Port &b)
{
    return a.gender != Gender::None && a.gender == b.gender;
}

bool isTrap(Verdict verdict)
{
    return verdict == Verdict::Leaks || verdict == Verdict::Jams || verdict == Verdict::Loose;
}

Standing::Mark markOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Fits:
        return Standing::Made;
    case Verdict::FitsWithAid:
        return Standing::Needs;
    case Verdict::FitsWithCaution:
        return Standing::Caution;
    default:
        return Standing::Trap;
    }
}

/// The best first, traps behind all that fits.
int rank(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Fits:
        return 0;
    case Verdict::FitsWithAid:
        return 1;
    case Verdict::FitsWithCaution:
        return 2;
    case Verdict::Leaks:
        return 3;
    case Verdict::Loose:
        return 4;
    default:
        return 5;
    }
}

QString detailOf(const Mating &mating)
{
    QStringList needs;
    for (const Need &need : mating.needs)
        needs.append(inWords(need.text()));
    return needs.isEmpty() || isTrap(mating.verdict)
               ? inWords(mating.why)
               : MeetingWords::tr("with %1").arg(needs.join(QStringLiteral(", ")));
}

QString countOf(std::size_t cards, std::size_t free)
{
    const QString all =
        cards == 1 ? MeetingWords::tr("1 card")
                   : MeetingWords::tr("%1 cards").arg(QLocale().toString(static_cast<int>(cards)));
    return free == 0 ? MeetingWords::tr("%1, none here").arg(all)
                     : MeetingWords::tr("%1, %2 here")
                           .arg(all, QLocale().toString(static_cast<int>(free)));
}

} // namespace

QStringList meetingCells()
{
    return {QStringLiteral("mark"),   QStringLiteral("port"),   QStringLiteral("verdict"),
            QStringLiteral("detail"), QStringLiteral("figure"), QStringLiteral("says")};
}

PortsOfShop::PortsOfShop(const StockBook &book)
    : m_catalogue(&book.workshop->catalogue), m_workshop(book.workshop)
{
    std::map<Port, std::size_t> places;
    const std::size_t cards = book.workshop->catalogue.parts().size();
    for (std::size_t at = 0; at < std::min(cards, book.entries.size()); ++at) {
        const StockEntry &entry = book.entries[at];
        for (const PartPort &port : entry.part->ports) {
            const auto [place, isNew] = places.try_emplace(port.port, m_ports.size());
            if (isNew)
                m_ports.push_back({port.port, {}});
            auto &holders = m_ports[place->second].holders;
            if (holders.empty() || holders.back().card != at)
                holders.push_back({static_cast<std::uint32_t>(at), entry.free > 0});
        }
    }
}

FittingCards PortsOfShop::fitting(const Port &port, const std::string &besides) const
{
    const Part *self = besides.empty() ? nullptr : m_catalogue->find(besides);
    const std::size_t cards = m_catalogue->parts().size();
    std::vector<bool> seen(cards, false);
    if (self)
        seen[m_catalogue->index(*self)] = true;
    FittingCards fitting;
    for (const Known &known : m_ports) {
        if (isOfOneGender(port, known.port) || !fits(mating(port, known.port).verdict))
            continue;
        for (const Holder &holder : known.holders) {
            if (seen[holder.card])
                continue;
            seen[holder.card] = true;
            ++fitting.cards;
            fitting.onShelf += holder.isFree ? 1 : 0;
        }
    }
    return fitting;
}

std::vector<Row> PortsOfShop::meetings(const Port &port) const
{
    struct Met {
        const Known *known;
        Mating mating;
    };
    std::vector<Met> all;
    for (const Known &known : m_ports) {
        if (isOfOneGender(port, known.port))
            continue;
        Mating met = mating(port, known.port);
        if (fits(met.verdict) || isTrap(met.verdict))
            all.push_back({&known, std::move(met)});
    }
    std::stable_sort(all.begin(), all.end(), [](const Met &a, const Met &b) {
        const int one = rank(a.mating.verdict);
        const int other = rank(b.mating.verdict);
        return one != other ? one < other : a.known->holders.size() > b.known->holders.size();
    });
    if (all.size() > MeetingsMost)
        all.resize(MeetingsMost);
    std::vector<Row> rows;
    for (const Met &met : all) {
        const auto &holders = met.known->holders;
        const auto free = static_cast<std::size_t>(std::count_if(
            holders.begin(), holders.end(), [](const Holder &one) { return one.isFree; }));
        const QString text = saidPort(met.known->port);
        const QString verdict = saidVerdict(met.mating.verdict);
        const QString detail = detailOf(met.mating);
        const QString figure = countOf(holders.size(), free);
        rows.push_back({text,
                        {static_cast<int>(markOf(met.mating.verdict)), text, verdict, detail,
                         figure, QStringList{text, verdict, detail, figure}.join(u", ")}});
    }
    return rows;
}

QString saidFitting(const FittingCards &fitting)
{
    if (fitting.cards == 0)
        return MeetingWords::tr("no card fits it");
    const QString cards =
        fitting.cards == 1
            ? MeetingWords::tr("1 card fits it")
            : MeetingWords::tr("%1 cards fit it").arg(QLocale().toString(fitting.cards));
    return fitting.onShelf == 0 ? MeetingWords::tr("%1, none of them here").arg(cards)
                                : MeetingWords::tr("%1, %2 of them here")
                                      .arg(cards, QLocale().toString(fitting.onShelf));
}

} // namespace flarestock
