// SPDX-License-Identifier: MIT

#include "app/desk/trailer/carry/carry_desk.h"

#include "app/desk/trailer/carry/carry_rows.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"
#include "app/garage/garage.h"
#include "app/trailer/certainty.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"

#include <algorithm>

namespace flarestock {

namespace {

/// With what is in the cars now.
Result<SpareBook> spareBookOf(const Workshop &workshop,
                              const std::function<Result<void>(const LookUp &look)> &read)
{
    SpareBook known;
    const auto looked = read([&](ShopFile &file, const Workshop &) -> Result<void> {
        auto book = SpareBook::of(file);
        if (!book)
            return tl::unexpected(book.error());
        auto garage = Garage::of(workshop, file);
        if (!garage)
            return tl::unexpected(garage.error());
        known = std::move(*book);
        known.lives = std::move(garage->lives);
        return {};
    });
    if (!looked)
        return tl::unexpected(looked.error());
    return known;
}

std::string todaysDay()
{
    return dayOf(nowMilliseconds());
}

} // namespace

CarryDesk::CarryDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_certainty(tr("95 %")), m_rows(spareCells()), m_sum(sumCells()),
      m_bars(barCells())
{
}

void CarryDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_read = shop.read;
    m_spares = nullptr;
    m_isStale = true;
    m_problem.clear();
    if (isOther) {
        m_book = nullptr;
        m_occasion = 0;
        m_added.clear();
        m_selected.clear();
        m_rows.become({});
        m_sum.become({});
        m_bars.become({});
    }
    make();
    Q_EMIT changed();
}

void CarryDesk::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    make();
    Q_EMIT changed();
}

CarryBook::Asked CarryDesk::asked() const
{
    CarryBook::Asked asked;
    asked.wanted.today = todaysDay();
    const auto all = occasionsOf(m_workshop->season, asked.wanted.today);
    if (m_occasion < all.size())
        asked.wanted.events = all[m_occasion].events;
    asked.wanted.certainty = m_wanted;
    asked.parts = m_added;
    asked.together = m_isTogether;
    return asked;
}

void CarryDesk::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || !m_read || m_making.isUnderWay())
        return;
    m_isStale = false;
    m_making.run([this, workshop = m_workshop, read = m_read, spares = m_spares,
                  asked = asked()]() -> Errand::Back {
        auto known = spares;
        QString wrong;
        if (!known) {
            auto fresh = spareBookOf(*workshop, read);
            if (fresh)
                known = std::make_shared<const SpareBook>(std::move(*fresh));
            else
                wrong = saidProblem(fresh.error());
        }
        const auto book = known ? CarryBook::of(workshop, known, asked) : nullptr;
        return [this, workshop, known, book, wrong] {
            if (workshop == m_workshop) {
                m_spares = known;
                m_problem = wrong;
                if (book)
                    m_book = book;
                show();
            }
            make(); // Something else may be asked for by now.
        };
    });
}

void CarryDesk::reckon()
{
    m_isStale = true;
    make();
    Q_EMIT changed();
}

void CarryDesk::show()
{
    if (m_book) {
        if (!m_book->find(m_selected.toStdString()))
            m_selected = m_book->parts.empty() ? QString() : said(m_book->parts.front().number);
        const SparePart *part = m_book->find(m_selected.toStdString());
        m_rows.become(spareRows(*m_book));
        m_sum.become(part ? sumRows(*m_book, *part) : std::vector<Row>());
        m_bars.become(part ? barRows(*m_book, *part) : std::vector<Row>());
    }
    Q_EMIT changed();
}

QStringList CarryDesk::occasions() const
{
    QStringList all;
    if (m_workshop)
        for (const Occasion &one : occasionsOf(m_workshop->season, todaysDay()))
            all.append(saidOccasion(one));
    return all;
}

QString CarryDesk::occasion() const
{
    return occasions().value(static_cast<qsizetype>(m_occasion));
}

void CarryDesk::carryFor(int occasion)
{
    m_occasion = static_cast<std::size_t>(std::max(0, occasion));
    reckon();
}

void CarryDesk::beCertain(const QString &typed)
{
    const auto wanted = figuresTyped(typed).and_then([](const std::string &figures) {
        return certaintyAsked(figures, tr("a certainty of").toStdString());
    });
    m_certaintyProblem = wanted ? QString() : saidProblem(wanted.error());
    if (!wanted) {
        Q_EMIT changed();
        return m_pen.refuse(m_certaintyProblem);
    }
    m_certainty = saidPercent(*wanted);
    m_wanted = *wanted;
    m_pen.hear();
    reckon();
}

void CarryDesk::setTogether(bool together)
{
    if (together == m_isTogether)
        return;
    m_isTogether = together;
    reckon();
}

QString CarryDesk::kit() const
{
    return m_book && m_isTogether ? saidKit(*m_book) : QString();
}

void CarryDesk::select(const QString &number)
{
    if (number == m_selected || m_rows.rowOf(number) < 0)
        return;
    m_selected = number;
    show();
}

QString CarryDesk::sentence() const
{
    const SparePart *part = m_book ? m_book->find(m_selected.toStdString()) : nullptr;
    return part ? saidCarry(*m_book, *part) : QString();
}

bool CarryDesk::add(const QString &number)
{
    const Part *part = m_workshop ? m_workshop->part(number.trimmed().toStdString()) : nullptr;
    if (part == nullptr)
        return false;
    if (std::find(m_added.begin(), m_added.end(), part->number) == m_added.end())
        m_added.push_back(part->number);
    m_selected = said(part->number);
    reckon();
    return true;
}

} // namespace flarestock
