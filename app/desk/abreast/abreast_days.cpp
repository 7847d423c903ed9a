// SPDX-License-Identifier: MIT
//
// The days of AbreastDesk: tried, kept, put back.

#include "app/desk/abreast/abreast_desk.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/rows/pace.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/stockroom/asked.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "model/journal/notes/lot_facts.h"

#include <QDate>

#include <algorithm>

namespace flarestock {

namespace {

constexpr auto BuildsDocument = "builds.toml";

/// A build's day as it is to be, and as it was in the shop when that was tried.
struct KeptDay {
    std::string build;
    std::string day;
    std::string was;
};

/// The newest builds with other days.
Result<TextFiles> withDays(const TextFiles &newest, const std::vector<KeptDay> &days)
{
    const auto document = newest.find(BuildsDocument);
    auto builds =
        readBuilds(document == newest.end() ? std::string() : document->second, BuildsDocument);
    if (!builds)
        return tl::unexpected(builds.error());
    for (const KeptDay &kept : days) {
        const auto at = std::find_if(builds->begin(), builds->end(), [&kept](const BuildPlan &one) {
            return one.id == kept.build;
        });
        if (at == builds->end())
            return problem(kept.build, "is no longer a build of this shop", "Choose another one.");
        if (at->by != kept.was)
            return problem(at->title.empty() ? at->id : at->title,
                           "was given another day at another seat meanwhile",
                           "Look at the days as they are now, and keep them once more.");
        at->by = kept.day;
    }
    return TextFiles{{BuildsDocument, writeBuilds(*builds)}};
}

} // namespace

std::string AbreastDesk::dayHere(const BuildPlan &plan) const
{
    const auto tried = m_moved.find(plan.id);
    return tried == m_moved.end() ? plan.by : tried->second;
}

QString AbreastDesk::typedDay(const QString &build) const
{
    const BuildPlan *plan = planOf(build);
    return plan == nullptr ? QString() : dayAsTyped(dayHere(*plan));
}

QString AbreastDesk::dayHint() const
{
    return dayAsTyped("2027-03-20");
}

void AbreastDesk::move(const QString &build, int days)
{
    const BuildPlan *plan = planOf(build);
    if (plan == nullptr)
        return;
    const std::string day = dayHere(*plan);
    const QDate from =
        QDate::fromString(said(day.empty() ? dayOf(nowMilliseconds()) : day), Qt::ISODate);
    if (from.isValid())
        tryDay(*plan, from.addDays(days).toString(Qt::ISODate).toStdString());
}

QString AbreastDesk::moveTo(const QString &build, const QString &typed)
{
    const BuildPlan *plan = planOf(build);
    if (plan == nullptr)
        return tr("This build is not in the shop any more.");
    const std::string day = dayTyped(typed);
    if (!isDay(day))
        return tr("“%1” is no day. Write it as %2.").arg(typed.trimmed(), dayAsTyped("2026-12-01"));
    tryDay(*plan, day);
    return {};
}

void AbreastDesk::tryDay(const BuildPlan &plan, const std::string &day)
{
    m_meanwhile.clear();
    m_pen.hear();
    if (day == plan.by)
        m_moved.erase(plan.id);
    else
        m_moved[plan.id] = day;
    m_isStale = true;
    make();
    tellDays();
}

/// A key does not wait for it.
void AbreastDesk::tellDays()
{
    Pace::instance().later(this, [this] { Q_EMIT daysChanged(); });
    Pace::instance().later(this, [this] { Q_EMIT changed(); });
}

void AbreastDesk::asBefore()
{
    m_moved.clear();
    m_meanwhile.clear();
    m_pen.hear();
    m_isStale = true;
    make();
    tellDays();
}

void AbreastDesk::keep()
{
    if (m_moved.empty() || m_pen.isBusy())
        return;
    Q_EMIT begun();
    std::vector<KeptDay> days;
    for (const auto &[build, day] : m_moved)
        if (const BuildPlan *plan = m_workshop->build(build))
            days.push_back({build, day, plan->by});
    const QString sentence = days.size() == 1
                                 ? tr("%1 is built by %2 now.")
                                       .arg(saidWhom(days.front().build, *m_workshop),
                                            saidDayOf(days.front().day, dayOf(nowMilliseconds())))
                                 : tr("%1 builds have other days now.").arg(days.size());
    m_pen.rewrite(sentence, [days](const TextFiles &newest) { return withDays(newest, days); });
}

/// What is tried stays, as far as there is something to try; the rest is said.
void AbreastDesk::seeWhatChanged(const Workshop &was, const Workshop &is)
{
    const bool wasTrying = isTrying();
    QStringList changed;
    for (const BuildPlan &before : was.builds) {
        const BuildPlan *plan = is.build(before.id);
        const auto tried = m_moved.find(before.id);
        const bool isGone = plan == nullptr || is.notes.build(before.id).isDone();
        const bool isKept = tried != m_moved.end() && !isGone && plan->by == tried->second;
        if (tried != m_moved.end() && (isGone || isKept))
            m_moved.erase(tried);
        const bool isOther =
            plan == nullptr || *plan != before || isGone != was.notes.build(before.id).isDone();
        if (isOther && !isKept)
            changed.append(saidWhom(before.id, was));
    }
    for (const BuildPlan &plan : is.builds)
        if (was.build(plan.id) == nullptr)
            changed.append(saidWhom(plan.id, is));
    if (wasTrying && !changed.isEmpty())
        m_meanwhile = tr("Changed in the shop meanwhile: %1. What is tried here stays.")
                          .arg(changed.join(QStringLiteral(", ")));
}

} // namespace flarestock
