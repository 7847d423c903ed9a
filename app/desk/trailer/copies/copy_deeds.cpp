// SPDX-License-Identifier: MIT
//
// What is done with copies: taken along, looked at, brought, given up.

#include "app/desk/trailer/copies/copies_desk.h"
#include "app/desk/trailer/copies/copy_words.h"
#include "app/workshop/clock.h"

namespace flarestock {

namespace {

std::vector<std::string> textsOf(const QVariant &list)
{
    std::vector<std::string> all;
    for (const QString &one : list.toStringList())
        all.push_back(one.toStdString());
    return all;
}

} // namespace

/// Once somebody has said who is at the desk.
void CopiesDesk::run(const QString &what, const Deed &deed)
{
    m_problem.clear();
    if (isBusy() || m_pen.isBusy())
        return refuse(tr("The shop is being written just now. Try again."));
    if (const QString why = barrier(); !why.isEmpty())
        return refuse(why);
    m_pen.whenNamed([this, what, deed] { begin(what, deed); });
}

void CopiesDesk::begin(const QString &what, const Deed &deed)
{
    if (isBusy()) // By the time somebody has said who is at the desk.
        return;
    const Said by{freshId(), m_pen.who().toStdString(), {}, nowMilliseconds()};
    m_under = what;
    m_tick.start();
    m_errand.run([this, deed, by, open = m_change]() -> Errand::Back {
        auto file = open();
        Errand::Back back =
            file ? deed(*file, by) : [this, wrong = file.error()] { refuse(saidProblem(wrong)); };
        return [this, back] {
            m_tick.stop();
            m_progress = nullptr;
            back();
            Q_EMIT changed();
        };
    });
    Q_EMIT changed();
}

void CopiesDesk::stands(const QString &sentence, const QString &why)
{
    m_pen.stays(why);
    Q_EMIT wrote(sentence);
}

void CopiesDesk::take(const QVariantMap &departure)
{
    const auto typed = [&departure](const char *key) {
        return departure.value(QString::fromLatin1(key)).toString().trimmed();
    };
    const std::string file = typed("file").toStdString();
    const Departure going{typed("name").toStdString(), typed("with").toStdString(),
                          textsOf(departure.value(QStringLiteral("places")))};
    if (file.empty() || going.places.empty())
        return refuse(file.empty() ? tr("Name the file that goes along.")
                                   : tr("Choose a drawer at least that goes along."));
    run(tr("The copy is being made …"),
        [this, file, going](ShopFile &shop, const Said &by) -> Errand::Back {
            const auto trip = Travelling::take(shop, file, going, by);
            return [this, trip, file] {
                if (!trip)
                    return refuse(saidProblem(trip.error()));
                m_takenTo[trip->name] = said(file);
                stands(tr("Taken along as %1: %2.").arg(said(trip->name), said(file)),
                       tr("That a copy went along is not taken back by this key: give it up under "
                          "Copies."));
            };
        });
}

void CopiesDesk::look(const QString &file)
{
    if (isBusy())
        return;
    putAway();
    m_file = file.trimmed();
    if (m_file.isEmpty())
        return refuse(tr("Choose the file of the copy."));
    bringBack(true, false);
}

void CopiesDesk::bring(bool goesOn)
{
    if (!m_back || isBusy())
        return;
    if (openCount() > 0)
        return refuse(
            openCount() == 1
                ? tr("One question is open: choose an answer to it.")
                : tr("%1 questions are open: choose an answer to each.").arg(openCount()));
    bringBack(false, goesOn);
}

/// Looking writes nothing, but is done as bringing is, and so inside a transaction.
void CopiesDesk::bringBack(bool looks, bool goesOn)
{
    const auto progress = std::make_shared<Progress>();
    Bringing bringing;
    bringing.goesOn = goesOn;
    bringing.looks = looks;
    if (m_back)
        bringing.decisions = wordsOf(m_back->disagreements, m_decided);
    bringing.step = [progress](std::size_t done, std::size_t of) {
        progress->done = done;
        progress->of = of;
        return !progress->isStopped;
    };
    m_progress = progress;
    run(looks ? tr("Looking at the copy …") : tr("Bringing it back …"),
        [this, bringing, progress, file = m_file.toStdString()](ShopFile &shop,
                                                                const Said &by) -> Errand::Back {
            const auto back = Travelling::bring(shop, file, bringing, by);
            return [this, back, progress] {
                if (back)
                    return takeBack(*back);
                refuse(progress->isStopped ? tr("Stopped: nothing of the copy was taken in.")
                                           : saidProblem(back.error()));
            };
        });
}

void CopiesDesk::takeBack(const BroughtBack &back)
{
    m_back = std::make_shared<const BroughtBack>(back);
    showLooked();
    if (back.written)
        stands(tr("Brought back from %1: %2.").arg(said(back.copy.taken.name), saidCame(back)),
               tr("That the copy %1 was brought stays. What came with it is taken back one by one: "
                  "in the journal of its part under Stock, or where Service says what was done.")
                   .arg(said(back.copy.taken.name)));
}

void CopiesDesk::release(const QString &trip, const QString &place)
{
    run(tr("Being written down …"),
        [this, name = nameOf(trip), place](ShopFile &shop, const Said &by) -> Errand::Back {
            const auto done = Travelling::release(shop, name, {place.toStdString()}, by);
            return [this, done, place] {
                if (!done)
                    return refuse(saidProblem(done.error()));
                stands(tr("The shop uses %1 from now on, although it is with the copy %2.")
                           .arg(place, said(done->name)),
                       tr("That the shop uses %1 stays until the copy is brought.").arg(place));
            };
        });
}

void CopiesDesk::end(const QString &trip)
{
    run(tr("Being written down …"),
        [this, name = nameOf(trip)](ShopFile &shop, const Said &by) -> Errand::Back {
            const auto done = Travelling::end(shop, name, by);
            return [this, done] {
                if (!done)
                    return refuse(saidProblem(done.error()));
                stands(
                    tr("The copy %1 is away no more: what it had is the shop's again.")
                        .arg(said(done->name)),
                    tr("That the copy %1 was given up stays; what it holds can still be brought.")
                        .arg(said(done->name)));
            };
        });
}

} // namespace flarestock
