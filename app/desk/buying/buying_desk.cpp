// SPDX-License-Identifier: MIT

#include "app/desk/buying/buying_desk.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/lacking/lacking_rows.h"
#include "app/desk/buying/orders/orders_told.h"
#include "app/desk/buying/owed/owed_told.h"
#include "app/desk/rows/pace.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

BuyingDesk::BuyingDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_slips(pen), m_orders(pen), m_box(pen), m_owed(pen)
{
    connect(&m_slips, &SlipsPage::changed, this, &BuyingDesk::changed);
}

void BuyingDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_read = shop.read;
    m_isStale = true;
    const std::string today = dayOf(nowMilliseconds());
    m_slips.setShop(shop, isOther);
    m_orders.setShop(shop, today);
    m_box.setShop(shop, isOther);
    m_owed.setShop(shop, today);
    if (isOther) {
        find({});
        m_book = nullptr;
        m_lacking.show(nullptr, {}, m_units);
        m_orders.show(nullptr, {}, m_units);
        m_owed.show(nullptr, {});
        Q_EMIT forgotten();
    }
    make();
    Q_EMIT changed();
}

void BuyingDesk::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    lookAtSlips();
    make();
    Q_EMIT changed();
}

void BuyingDesk::setPage(int page)
{
    if (page == m_page)
        return;
    m_page = std::clamp(page, static_cast<int>(Lacking), static_cast<int>(Owed));
    find({});
    Q_EMIT forgotten();
    lookAtSlips();
    Q_EMIT changed();
}

void BuyingDesk::lookAtSlips()
{
    m_slips.setLooking(m_isLooking && m_page == Slips);
}

void BuyingDesk::setInInches(bool inInches)
{
    if (inInches == this->inInches())
        return;
    m_units = inInches ? Units::Inch : Units::Metric;
    m_isStale = true;
    m_slips.setUnits(m_units);
    m_box.setUnits(m_units);
    m_owed.setUnits(m_units);
    make();
    Q_EMIT changed();
}

void BuyingDesk::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || !m_read || m_making.isUnderWay())
        return;
    m_isStale = false;
    m_making.run([this, workshop = m_workshop, read = m_read, units = m_units]() -> Errand::Back {
        const std::string today = dayOf(nowMilliseconds());
        const auto made = std::make_shared<Made>();
        const auto done = read([&](ShopFile &file, const Workshop &) -> Result<void> {
            made->book = BuyersBook::of(workshop, file, today);
            return {};
        });
        if (!done)
            made->book = BuyersBook::none(workshop, done.error());
        made->lacking = {lackingRows(*made->book, units), DayStrip(*made->book, units)};
        made->orders = orderListRows(*workshop, today);
        made->claims = claimListRows(*workshop, today, units);
        return [this, made] {
            if (made->book->workshop == m_workshop)
                take(std::move(*made));
            make(); // The shop may have gone on meanwhile.
        };
    });
}

void BuyingDesk::take(Made made)
{
    m_book = made.book;
    m_late = static_cast<int>(std::count_if(
        m_book->needs.lines.begin(), m_book->needs.lines.end(),
        [](const NeedLine &line) { return line.shortBy.sign() > 0 && line.isTooLate(); }));
    const auto later = [this, book = m_book](auto show) {
        Pace::instance().later(this, [this, book, show = std::move(show)] {
            if (book == m_book) // Else another one is shown by now.
                show();
        });
    };
    const auto shown = std::make_shared<Made>(std::move(made));
    later([this, shown] { m_lacking.show(m_book, std::move(shown->lacking), m_units); });
    later([this, shown] { m_orders.show(m_book->workshop, std::move(shown->orders), m_units); });
    later([this, shown] { m_owed.show(m_book->workshop, std::move(shown->claims)); });
    later([this] { Q_EMIT changed(); });
}

void BuyingDesk::find(const QString &typed)
{
    m_lacking.find(typed);
    m_orders.find(typed);
    m_owed.find(typed);
}

bool BuyingDesk::scan(const QString &code)
{
    const std::string wanted = code.trimmed().toStdString();
    if (!m_workshop || !m_book)
        return false;
    const bool isBox = m_page == Orders && m_box.isOnBench();
    if (isBox && m_box.scan(code) >= 0)
        return true;
    const bool isOrder = m_workshop->bought.orders.order(wanted) != nullptr;
    const auto claim = m_workshop->bought.claims.find(wanted);
    if (isBox && !isOrder && !claim) { // What is none of it is no reason to leave it.
        m_box.isNoneOfIt(code);
        return true;
    }
    Q_EMIT forgotten();
    find({});
    if (isOrder) {
        setPage(Orders);
        m_box.close();
        m_orders.select(said(wanted));
        Q_EMIT arrived();
        return true;
    }
    if (claim) {
        setPage(Owed);
        m_owed.select(said((*claim)->now.number));
        Q_EMIT arrived();
        return true;
    }
    if (goToSupplier(wanted))
        return true;
    const Part *part = m_workshop->part(wanted);
    if (part == nullptr || !m_lacking.selectPart(said(part->number)))
        return false;
    setPage(Lacking);
    Q_EMIT arrived();
    return true;
}

/// To his newest order; where there is none, to the slips, where he may have one.
bool BuyingDesk::goToSupplier(const std::string &id)
{
    const auto all = m_workshop->catalogue.suppliers();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&id](const Supplier &one) { return sameFolded(one.id, id); });
    if (found == all.end())
        return false;
    const auto &orders = m_workshop->bought.orders.orders;
    const auto newest = std::find_if(orders.rbegin(), orders.rend(), [&found](const auto &one) {
        return one.second.now().supplier == found->id;
    });
    const bool hasOrder = newest != orders.rend();
    setPage(hasOrder ? Orders : Slips);
    if (hasOrder) {
        m_box.close();
        m_orders.select(said(newest->first));
    } else {
        Q_EMIT m_orders.told(
            tr("Nothing is ordered from %1 yet. What should be stands on the slips.")
                .arg(saidSupplier(found->id, m_workshop->catalogue)));
    }
    Q_EMIT arrived();
    return true;
}

QString BuyingDesk::inTime() const
{
    if (!m_book)
        return tr("not known yet");
    if (m_book->shortages.empty())
        return tr("yes, nothing is short");
    QStringList lines;
    if (m_late > 0)
        lines.append(m_late == 1 ? tr("1 line comes late") : tr("%1 lines come late").arg(m_late));
    if (m_book->onNoSlip > 0)
        lines.append(m_book->onNoSlip == 1 ? tr("1 line is on no slip")
                                           : tr("%1 lines are on no slip").arg(m_book->onNoSlip));
    return lines.isEmpty() ? tr("yes, if ordered now") : lines.join(QStringLiteral(", "));
}

bool BuyingDesk::canBeInTime() const
{
    return m_late == 0 && (!m_book || m_book->onNoSlip == 0);
}

QString BuyingDesk::heading() const
{
    if (!m_book || !m_book->problem.empty())
        return tr("Buying");
    std::set<std::string> builds;
    std::set<std::string> besides;
    for (const NeedLine &line : m_book->needs.lines)
        if (line.shortBy.sign() > 0)
            (m_workshop->build(line.whom) ? builds : besides).insert(line.whom);
    const auto lines = static_cast<int>(m_book->shortages.size());
    if (lines == 0)
        return tr("Buying: nothing is short");
    const QString count = lines == 1 ? tr("1 line short") : tr("%1 lines short").arg(lines);
    const auto some = static_cast<int>(builds.size());
    if (some == 0)
        return tr("Buying: %1, for cars and places").arg(count);
    const QString whom = some == 1 ? tr("for one build") : tr("for %1 builds").arg(some);
    return besides.empty() ? tr("Buying: %1, %2").arg(count, whom)
                           : tr("Buying: %1, %2, cars and places").arg(count, whom);
}

QString BuyingDesk::about() const
{
    if (!m_book)
        return {};
    std::set<std::string> orders;
    for (const OnOrder &one : m_book->coming)
        orders.insert(one.order);
    const auto some = static_cast<int>(orders.size());
    const QString way = some == 0   ? tr("nothing is on its way")
                        : some == 1 ? tr("one order or claim is on its way")
                                    : tr("%1 orders and claims are on their way").arg(some);
    return tr("%1  ·  %2").arg(saidDayOf(m_book->today, m_book->today), way);
}

} // namespace flarestock
