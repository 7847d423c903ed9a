// SPDX-License-Identifier: MIT

#include "app/desk/abreast/abreast_desk.h"

#include "app/desk/abreast/abreast_outcome.h"
#include "app/desk/abreast/abreast_words.h"
#include "app/desk/language/sentences.h"
#include "app/desk/rows/pace.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"

#include <algorithm>
#include <utility>

namespace flarestock {

AbreastDesk::AbreastDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_heads(abreastHeadCells()), m_lines(abreastLineCells())
{
    connect(this, &AbreastDesk::changed, this, &AbreastDesk::tellInHand);
    connect(this, &AbreastDesk::daysChanged, this, &AbreastDesk::tellInHand);
}

void AbreastDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    const auto was = std::exchange(m_workshop, shop.workshop);
    m_read = shop.read;
    m_cars = nullptr;
    m_before = nullptr;
    m_known.clear();
    m_isStale = true;
    if (isOther) {
        m_now = nullptr;
        m_moved.clear();
        m_meanwhile.clear();
        m_outcome.clear();
        m_problem.clear();
        m_typed.clear();
        m_all.clear();
        m_heads.become({});
        m_lines.become({});
    } else if (was && m_workshop) {
        seeWhatChanged(*was, *m_workshop);
    }
    make();
    Q_EMIT daysChanged();
    Q_EMIT changed();
}

void AbreastDesk::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    if (looking)
        Q_EMIT begun();
    make();
    Q_EMIT changed();
}

void AbreastDesk::setInInches(bool inInches)
{
    if (inInches == this->inInches())
        return;
    m_units = inInches ? Units::Inch : Units::Metric;
    m_isStale = true;
    make();
    Q_EMIT changed();
}

void AbreastDesk::setShown(int shown)
{
    m_shown =
        static_cast<AbreastShown>(std::clamp(shown, 0, static_cast<int>(AbreastShown::Changed)));
    Q_EMIT shownChanged();
    showLines();
}

void AbreastDesk::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || !m_read || m_making.isUnderWay())
        return;
    m_isStale = false;
    const auto made = std::make_shared<Made>();
    made->cars = m_cars;
    made->before = m_before;
    made->known = m_known;
    m_making.run([this, made, workshop = m_workshop, read = m_read, moved = m_moved,
                  units = m_units, shown = m_all]() -> Errand::Back {
        const std::string today = dayOf(nowMilliseconds());
        if (!made->cars)
            made->readCars(*workshop, read, today);
        if (!made->before)
            made->before = AbreastBook::of(workshop, {made->cars, today, {}});
        made->keep(made->before);
        std::vector<std::shared_ptr<const TakenInOrder>> known;
        for (const auto &book : made->known)
            known.push_back(book->needs.taken);
        made->now = moved.empty() ? made->before
                                  : AbreastBook::of(workshop, {made->cars, today, moved, known});
        made->keep(made->now);
        made->tell(units);
        shareWith(shown, made->lines);
        return [this, made] {
            if (made->before->workshop == m_workshop)
                take(made);
            make(); // The shop, or what is tried, may have gone on meanwhile.
        };
    });
}

void AbreastDesk::Made::readCars(const Workshop &workshop, const ReadShop &read,
                                 const std::string &today)
{
    auto due =
        readOf<DueInShop>(read, [&](ShopFile &file) { return dueInShop(workshop, file, today); });
    if (!due)
        problem = saidProblem(due.error());
    cars = std::make_shared<const DueInShop>(due ? std::move(*due) : DueInShop());
}

void AbreastDesk::Made::keep(const std::shared_ptr<const AbreastBook> &book)
{
    const bool isKnown = std::any_of(known.begin(), known.end(), [&book](const auto &one) {
        return one->needs.taken == book->needs.taken;
    });
    if (!book->needs.taken || isKnown)
        return;
    if (known.size() == KnownMost)
        known.erase(known.begin() + 1); // The first is of the days as they stand.
    known.push_back(book);
}

void AbreastDesk::Made::tell(Units units)
{
    const Abreast abreast{*now, *before, units};
    if (problem.isEmpty() && !now->problem.empty())
        problem = inWords(now->problem);
    heads = abreastHeads(abreast);
    lines = abreastLines(abreast);
    if (now != before)
        outcome = saidOutcome(abreast);
}

void AbreastDesk::take(const std::shared_ptr<Made> &made)
{
    m_cars = made->cars;
    m_before = made->before;
    m_known = made->known;
    m_now = made->now;
    m_all = std::move(made->lines);
    m_outcome = made->outcome;
    m_problem = made->problem;
    Pace::instance().later(this, [this, made] {
        if (made->now != m_now)
            return; // Another one is shown by now.
        m_heads.become(std::move(made->heads));
        if (m_heads.rowOf(m_build) < 0)
            m_build = m_heads.cell(0, QStringLiteral("key")).toString();
    });
    Pace::instance().later(this, [this, made] {
        if (made->now != m_now)
            return;
        if (!isTrying() && m_shown == AbreastShown::Changed)
            setShown(static_cast<int>(AbreastShown::Contested));
        else
            showLines();
    });
}

void AbreastDesk::showLines()
{
    m_lines.become(abreastShown(m_all, m_shown, m_typed));
    if (m_lines.rowOf(m_part) < 0)
        m_part = m_lines.cell(0, QStringLiteral("key")).toString();
    Pace::instance().later(this, [this] { Q_EMIT changed(); });
}

/// Once for all that has changed, and after it.
void AbreastDesk::tellInHand()
{
    if (!std::exchange(m_isInHandTold, false))
        return;
    Pace::instance().later(this, [this] {
        m_isInHandTold = true;
        Q_EMIT inHandChanged();
    });
}

QString AbreastDesk::about() const
{
    if (!m_now || m_heads.count() == 0)
        return {};
    if (m_heads.count() == 1)
        return tr("One build that is not done. Plan another one (Ctrl+N) to see who gets what.");
    const bool hasDay = std::any_of(m_now->builds.begin(), m_now->builds.end(),
                                    [](const BuildPlan &plan) { return !plan.by.empty(); });
    if (!hasDay)
        return tr("No build has a day, so that they come as they were planned. Give them days "
                  "first: Enter on the head of a build.");
    const auto scarce = std::count_if(m_all.begin(), m_all.end(), [](const Row &row) {
        return row.cells.at(4) == AbreastWords::tr("not enough for all");
    });
    return tr("%1 builds that are not done, by their days  ·  of %2 parts there is not enough for "
              "all")
        .arg(m_heads.count())
        .arg(scarce);
}

QString AbreastDesk::nothing() const
{
    if (m_workshop && !m_now)
        return tr("Working out who gets what …");
    if (!m_problem.isEmpty())
        return m_problem;
    if (m_heads.count() == 0)
        return tr("No build is planned that is not done. Plan one first: Ctrl+B, then “Plan what "
                  "is on the desk”.");
    if (m_lines.count() > 0)
        return {};
    if (!m_typed.isEmpty())
        return tr("Nothing that is shown is like that.");
    if (m_shown == AbreastShown::Changed)
        return tr("The days that are tried change nothing.");
    return m_heads.count() == 1
               ? tr("All that it needs is here, and nobody else wants it.")
               : tr("There is enough for all of them, and no part is wanted by two.");
}

int AbreastDesk::changedCount() const
{
    return static_cast<int>(abreastShown(m_all, AbreastShown::Changed, {}).size());
}

void AbreastDesk::find(const QString &typed)
{
    m_typed = typed.trimmed();
    showLines();
}

bool AbreastDesk::scan(const QString &code)
{
    const Part *part = m_workshop ? m_workshop->part(code.trimmed().toStdString()) : nullptr;
    if (part == nullptr)
        return false;
    const QString number = said(part->number);
    m_typed.clear();
    const bool isShown = std::any_of(m_all.begin(), m_all.end(),
                                     [&number](const Row &row) { return row.key == number; });
    if (!isShown)
        return false;
    showLines();
    if (m_lines.rowOf(number) < 0)
        setShown(static_cast<int>(AbreastShown::All));
    setPart(number);
    return true;
}

} // namespace flarestock
