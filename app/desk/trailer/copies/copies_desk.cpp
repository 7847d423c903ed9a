// SPDX-License-Identifier: MIT

#include "app/desk/trailer/copies/copies_desk.h"

#include "app/desk/language/sentences.h"
#include "app/desk/papers/persons_folder.h"
#include "app/desk/trailer/copies/copy_words.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"

#include <QDir>
#include <QFile>

namespace flarestock {

namespace {

/// How often it is said how far a bringing has come, in milliseconds.
constexpr int TickMs = 120;

} // namespace

CopiesDesk::CopiesDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen),
      m_departure(pen.unwritten(),
                  [] {
                      return SheetNamed{QStringLiteral("copy|take"), tr("Take a copy along")};
                  }),
      m_trips(tripCells()), m_came(broughtCells()), m_questions(questionCells())
{
    m_tick.setInterval(TickMs);
    connect(&m_tick, &QTimer::timeout, this, &CopiesDesk::changed);
    connect(&m_pen, &Pen::changed, this, &CopiesDesk::changed);
}

void CopiesDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_change = shop.change;
    if (isOther) {
        m_seen = {};
        m_problem.clear();
        m_trips.become({});
        putAway();
    }
    Q_EMIT changed();
}

void CopiesDesk::show(const TripsSeen &seen, Units units)
{
    m_seen = seen;
    m_units = units;
    m_trips.become(tripRows(m_seen));
    showLooked();
}

QString CopiesDesk::progress() const
{
    if (!isBusy())
        return {};
    if (m_progress && m_progress->isStopped)
        return tr("Stopping …");
    const auto of = static_cast<qlonglong>(m_progress ? m_progress->of.load() : 0);
    const auto done = static_cast<qlonglong>(m_progress ? m_progress->done.load() : 0);
    return of == 0 ? m_under
                   : tr("%1 %2 of %3 entries")
                         .arg(m_under, QLocale().toString(done), QLocale().toString(of));
}

double CopiesDesk::share() const
{
    const std::size_t of = m_progress ? m_progress->of.load() : 0;
    return of == 0 ? -1 : static_cast<double>(m_progress->done) / static_cast<double>(of);
}

QString CopiesDesk::barrier() const
{
    if (m_seen.own)
        return tr("This shop is itself the copy %1 that was taken along. Bring it back at the shop "
                  "that it was taken from.")
            .arg(said(m_seen.own->name));
    if (m_seen.problem)
        return saidProblem(*m_seen.problem);
    return m_change ? m_pen.barrier() : tr("Nothing can be written down here.");
}

QString CopiesDesk::awayWords() const
{
    if (m_seen.own)
        return tr("this is one");
    const int away = awayCount();
    return away == 0   ? tr("none is away")
           : away == 1 ? tr("1 is away")
                       : tr("%1 are away").arg(away);
}

QString CopiesDesk::suggested() const
{
    const QString folder = personsFolder();
    const QString day = said(dayOf(nowMilliseconds()));
    return QDir(folder).filePath(
        QString(tr("trailer") + u'-' + day + QStringLiteral(".flarestock")));
}

QString CopiesDesk::expected() const
{
    const QDir folder(personsFolder());
    for (const TravellingCopy &copy : m_seen.trips.copies) {
        const auto taken = m_takenTo.find(copy.taken.name);
        QString file =
            taken != m_takenTo.end()
                ? taken->second
                : folder.filePath(QString(said(copy.taken.name) + QStringLiteral(".flarestock")));
        if (copy.isOut && QFile::exists(file))
            return file;
    }
    return {};
}

QStringList CopiesDesk::places() const
{
    QStringList all;
    if (m_workshop)
        for (const Place &place : m_workshop->ledger.places())
            if (place.kind == PlaceKind::Drawer && m_seen.trips.away(place.id) == nullptr)
                all.append(said(place.id));
    return all;
}

QString CopiesDesk::lookedTitle() const
{
    return m_back ? tr("The copy %1").arg(said(m_back->copy.taken.name)) : QString();
}

QString CopiesDesk::lookedAbout() const
{
    if (!m_back)
        return {};
    QStringList all;
    if (m_back->already)
        all.append(tr("It was brought already: nothing new is in it."));
    else if (m_back->written)
        all.append(tr("Brought: %1. Nothing counts twice.").arg(saidCame(*m_back)));
    else
        all.append(tr("Would come: %1.").arg(saidCame(*m_back)));
    for (const std::string &settled : m_back->settled) {
        if (!m_back->written)
            break; // Before it is brought that is a question still.
        const QString words = inWords(settled);
        all.append(QString(words.left(1).toUpper() + words.mid(1) + u'.'));
    }
    if (m_back->missing > 0)
        all.append(tr("It does not know %1 of the shop's entries: to go on with it, take a new "
                      "copy.")
                       .arg(QLocale().toString(static_cast<qlonglong>(m_back->missing))));
    return all.join(u' ');
}

int CopiesDesk::openCount() const
{
    return m_back ? static_cast<int>(m_back->disagreements.size() -
                                     wordsOf(m_back->disagreements, m_decided).size())
                  : 0;
}

void CopiesDesk::showLooked()
{
    m_came.become(m_back && m_workshop ? broughtRows(*m_back, *m_workshop, m_units)
                                       : std::vector<Row>());
    m_questions.become(m_back && !m_back->written && m_workshop
                           ? questionRows(m_back->disagreements, m_decided, {*m_workshop, m_units})
                           : std::vector<Row>());
    Q_EMIT changed();
}

void CopiesDesk::refuse(const QString &sentence)
{
    m_problem = sentence;
    Q_EMIT changed();
}

void CopiesDesk::choose(int question, int choice)
{
    const QString name = m_questions.cell(question, QStringLiteral("key")).toString();
    if (name.isEmpty())
        return;
    m_decided[name.toStdString()].choice = choice;
    m_problem.clear(); // It was that this had not been said.
    showLooked();
}

void CopiesDesk::say(int question, const QString &more)
{
    const QString name = m_questions.cell(question, QStringLiteral("key")).toString();
    if (name.isEmpty())
        return;
    m_decided[name.toStdString()].more = more;
    showLooked();
}

void CopiesDesk::putAway()
{
    m_file.clear();
    m_back = nullptr;
    m_decided.clear();
    showLooked();
}

void CopiesDesk::stop()
{
    if (!canStop())
        return;
    m_progress->isStopped = true;
    Q_EMIT changed();
}

void CopiesDesk::hear()
{
    if (!m_problem.isEmpty())
        refuse({});
}

QString CopiesDesk::pathOf(const QUrl &file)
{
    return file.toLocalFile();
}

std::string CopiesDesk::nameOf(const QString &trip) const
{
    return m_seen.trips.named(trip.toStdString()) ? trip.toStdString() : std::string();
}

} // namespace flarestock
