// SPDX-License-Identifier: MIT
//
// What the area of service says above its list and at the head of its panel.

#include "app/desk/service/piece_card.h"
#include "app/desk/service/service_desk.h"
#include "app/desk/service/service_rows.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

QString ServiceDesk::heading() const
{
    if (m_tab == QStringLiteral("lot"))
        return m_lot.asked().isEmpty() ? tr("Where did a lot go?")
                                       : tr("Where %1 went").arg(m_lot.asked());
    const Place *place = m_book ? m_book->car(m_tab.mid(4).toStdString()) : nullptr;
    return place ? tr("Service: %1").arg(said(place->title)) : tr("Service: what is due");
}

QString ServiceDesk::about() const
{
    if (!m_book)
        return {};
    if (m_tab == QStringLiteral("lot"))
        return tr("a lot, a serial, a tag or a part");
    if (!m_tab.startsWith(QStringLiteral("car|"))) {
        const QString intervals = m_book->garage.ownIntervals
                                      ? tr("by the shop's own intervals")
                                      : tr("by the usual intervals: the shop has none of its own");
        return tr("%1, and the events of its season").arg(intervals);
    }
    const CarLife &life = m_book->garage.life(m_tab.mid(4).toStdString());
    if (life.outings.empty())
        return tr("it has not run yet, as far as the shop was told");
    return tr("ran %1; last at %2, %3")
        .arg(saidUse(life.use()), saidEvent(life.outings.back().event, *m_workshop),
             saidDate(life.outings.back().day));
}

QString ServiceDesk::nothing() const
{
    if (!m_workshop || !m_read)
        return tr("Nothing is known here of the cars of this shop.");
    if (!m_problem.isEmpty())
        return m_problem;
    if (!m_book)
        return tr("Looking into the cars …");
    if (m_tab == QStringLiteral("lot"))
        return m_lot.says();
    if (m_tab == QStringLiteral("due")) {
        if (m_due.count() > 0)
            return {};
        return m_words.isEmpty() ? tr("Nothing is due on any car.")
                                 : tr("Nothing that is due says that.");
    }
    if (m_positions.count() > 0)
        return {};
    return m_words.isEmpty()
               ? tr("Nothing is known of what is in this car. Issue a build to it under Builds, or "
                    "say what is in it: press F.")
               : tr("Nothing in this car says that.");
}

std::string ServiceDesk::carShown() const
{
    return m_tab.startsWith(QStringLiteral("car|")) ? m_tab.mid(4).toStdString() : std::string();
}

QString ServiceDesk::overdue() const
{
    return m_book ? saidOverdue(*m_book, carShown()) : QString();
}

int ServiceDesk::overdueMark() const
{
    return m_book ? markOverdue(*m_book, carShown()) : Standing::Note;
}

QString ServiceDesk::dueNext() const
{
    return m_book ? saidDueNext(*m_book, carShown()) : QString();
}

QString ServiceDesk::car() const
{
    return said(inHand().car);
}

QString ServiceDesk::pieceTitle() const
{
    const CarPosition at = inHand();
    if (!m_book || at.position.empty())
        return {};
    return said(m_book->saidPosition(at));
}

QString ServiceDesk::pieceAbout() const
{
    const CarPosition at = inHand();
    if (!m_book || at.position.empty())
        return {};
    const Place *place = m_book->car(at.car);
    const QString about = saidPieceAbout({*m_book, at, m_units});
    return m_tab.startsWith(QStringLiteral("car|"))
               ? about
               : tr("%1; %2").arg(said(place ? place->title : at.car), about);
}

QString ServiceDesk::pieceState() const
{
    const CarPosition at = inHand();
    if (!m_book || at.position.empty())
        return {};
    return standingAt(at, *m_book).words;
}

int ServiceDesk::pieceMark() const
{
    const CarPosition at = inHand();
    return m_book ? standingAt(at, *m_book).mark : Standing::Short;
}

QString ServiceDesk::opened() const
{
    const CarPosition at = inHand();
    if (!m_book || at.position.empty() || m_book->out(at))
        return {};
    const std::string system = m_book->systemOf(at.position);
    return system.empty() ? tr("Before it is opened")
                          : tr("Before the %1 line is opened").arg(saidSystem(system));
}

QStringList ServiceDesk::cautions() const
{
    return opened().isEmpty() ? QStringList() : openingCautions();
}

} // namespace flarestock
