// SPDX-License-Identifier: MIT

#include "round.h"

#include <QElapsedTimer>
#include <QThread>

#include <algorithm>
#include <cstdio>
#include <iterator>

namespace flarestock {

namespace {

constexpr int QuietMs = 60;      ///< Nothing came for so long, so that nothing is under way.
constexpr int GiveUpMs = 120000; ///< A key whose work does not end in this time has failed.

/// The smallest value that so many of all are not above.
double quantile(std::vector<double> values, double part)
{
    if (values.empty())
        return 0;
    std::sort(values.begin(), values.end());
    return values[std::min(values.size() - 1,
                           static_cast<std::size_t>(part * static_cast<double>(values.size())))];
}

std::vector<double> each(const std::vector<Held> &events, double Held::*which)
{
    std::vector<double> values;
    values.reserve(events.size());
    for (const Held &one : events)
        values.push_back(one.*which);
    return values;
}

/// "key after press 1 (48.1)": the longest that took more than so long, at most four.
QStringList longest(const RoundSaid &round, double limit)
{
    constexpr int Most = 4;
    std::vector<Held> all;
    std::copy_if(round.events.begin(), round.events.end(), std::back_inserter(all),
                 [limit](const Held &one) { return one.cpu > limit; });
    std::sort(all.begin(), all.end(), [](const Held &a, const Held &b) { return a.cpu > b.cpu; });
    QStringList said;
    for (const Held &one : all) {
        said.append(QStringLiteral("%1 after press %2 (%3)")
                        .arg(one.what.simplified())
                        .arg(one.press)
                        .arg(one.cpu, 0, 'f', 1));
        if (said.size() == Most)
            break;
    }
    return said;
}

} // namespace

Round::Round(WatchedApplication &application, QString name, Asked isBusy, double walk)
    : m_application(application), m_isBusy(std::move(isBusy))
{
    m_said.name = std::move(name);
    m_said.walk = walk;
    (void)m_application.taken();
}

void Round::turn()
{
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents(QEventLoop::AllEvents);
}

bool Round::press(const char *what, const Acts &acts)
{
    (void)m_application.taken();
    ++m_presses;
    QElapsedTimer since;
    since.start();
    const int frame = m_application.frames();
    for (const auto &act : acts)
        m_application.hold(what, act);
    double toFrame = -1;
    qint64 last = since.elapsed();
    std::vector<Held> events = m_application.taken();
    while (since.elapsed() - last < QuietMs || m_isBusy()) {
        turn();
        const auto more = m_application.taken();
        if (more.empty())
            QThread::usleep(200);
        else
            last = since.elapsed();
        if (toFrame < 0 && m_application.frames() > frame)
            toFrame = static_cast<double>(since.nsecsElapsed()) / 1e6;
        events.insert(events.end(), more.begin(), more.end());
        if (since.elapsed() > GiveUpMs)
            return false;
    }
    for (Held &one : events)
        one.press = m_presses;
    m_said.events.insert(m_said.events.end(), events.begin(), events.end());
    if (toFrame >= 0)
        m_said.toFrame.push_back(toFrame);
    return true;
}

bool printRounds(const std::vector<RoundSaid> &rounds, double limit)
{
    std::printf("%-44s %6s %8s %8s %8s %8s %8s %8s %8s\n", "window's thread, ms", "events", "walk",
                "cpu p99", "cpu max", "wall max", "paint max", "frame 50", "frame max");
    bool isWithin = true;
    for (const RoundSaid &round : rounds) {
        const double most = quantile(each(round.events, &Held::cpu), 1);
        std::printf("%-44s %6zu %8.2f %8.2f %8.2f %8.2f %9.2f %8.2f %8.2f\n",
                    qPrintable(round.name), round.events.size(), round.walk,
                    quantile(each(round.events, &Held::cpu), 0.99), most,
                    quantile(each(round.events, &Held::wall), 1),
                    quantile(each(round.events, &Held::painting), 1), quantile(round.toFrame, 0.5),
                    quantile(round.toFrame, 1));
        if (most > limit) {
            isWithin = isWithin && !round.isKeyed;
            std::printf("    longest: %s\n",
                        qPrintable(longest(round, limit).join(QStringLiteral(", "))));
        }
    }
    return isWithin;
}

} // namespace flarestock
