// SPDX-License-Identifier: MIT

#include "app/desk/buying/slips/slips_page.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/slips/slip_rows.h"
#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

/// "Drafted: 2026-0007 to Ridgemoor."
QString saidDrafted(const Wrote &wrote)
{
    QStringList all;
    for (const Record &record : wrote.action.records) {
        const auto order = Order::read(record);
        if (order && wrote.shop.workshop)
            all.append(BuyingWords::tr("%1 to %2")
                           .arg(said(order->number),
                                saidSupplier(order->supplier, wrote.shop.workshop->catalogue)));
    }
    return BuyingWords::tr("Drafted: %1.").arg(all.join(QStringLiteral(", ")));
}

} // namespace

SlipsPage::SlipsPage(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_aims(aimCells()), m_slips(slipCells())
{
}

void SlipsPage::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_read = shop.read;
    m_isStale = true;
    if (isOther) {
        m_book = nullptr;
        showPlan();
    }
    make();
}

void SlipsPage::setUnits(Units units)
{
    m_units = units;
    showPlan();
}

void SlipsPage::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    make();
    Q_EMIT changed();
}

void SlipsPage::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || !m_read || m_making.isUnderWay())
        return;
    m_isStale = false;
    m_making.run([this, workshop = m_workshop, read = m_read]() -> Errand::Back {
        std::shared_ptr<const SlipBook> book;
        const auto done = read([&](const ShopFile &file, const Workshop &) -> Result<void> {
            book = SlipBook::of(workshop, file, dayOf(nowMilliseconds()));
            return {};
        });
        if (!done)
            book = SlipBook::none(workshop, done.error());
        return [this, book] {
            if (book->workshop == m_workshop) {
                m_book = book;
                showPlan();
            }
            make(); // The shop may have gone on meanwhile.
        };
    });
    Q_EMIT changed();
}

void SlipsPage::showPlan()
{
    const bool isPlanned = m_book && m_book->problem.empty();
    m_aims.become(isPlanned && !m_book->shortages.empty() ? aimRows(*m_book) : std::vector<Row>());
    m_slips.become(isPlanned ? slipRows(*m_book, m_aim, m_units) : std::vector<Row>());
    m_notes = isPlanned ? slipNotes(*m_book, m_aim, m_units) : QStringList();
    Q_EMIT changed();
}

QString SlipsPage::aim() const
{
    return said(text(m_aim));
}

void SlipsPage::setAim(const QString &aim)
{
    const auto wanted = parsePlanAim(aim.toStdString());
    if (!wanted || *wanted == m_aim)
        return;
    m_aim = *wanted;
    showPlan();
}

QString SlipsPage::nothing() const
{
    if (!m_book)
        return m_read ? tr("Working out what is best ordered of whom …")
                      : tr("Nothing is known here of what suppliers ask.");
    if (!m_book->problem.empty())
        return inWords(m_book->problem);
    if (m_slips.count() > 0)
        return {};
    return m_book->shortages.empty()
               ? tr("Nothing has to be ordered: nothing is short that does not come already.")
               : tr("Nobody sells what is short.");
}

void SlipsPage::draft(const QString &key)
{
    if (!m_book || !m_book->problem.empty())
        return;
    Drafting drafting{m_book, {}};
    for (const ProposedOrder &order : m_book->plan(m_aim).orders) {
        const QString slip = slipKey(order);
        const bool hasDraft =
            !m_slips.cell(m_slips.rowOf(slip), QStringLiteral("draft")).toString().isEmpty();
        if (key.isEmpty() ? hasDraft : slip != key)
            continue; // Of all those that have no draft yet.
        for (Order &draft : m_book->drafts(m_aim, order))
            drafting.drafts.push_back(std::move(draft));
    }
    if (drafting.drafts.empty())
        return m_pen.refuse(tr("Each of these slips has a draft already; look at the orders."));
    m_pen.act(
        Pen::Sentence(saidDrafted),
        [drafting](const ShopFile &file, const Workshop &now, const By &by) -> Result<ToWrite> {
            return drafted(drafting, file, now, by);
        });
}

} // namespace flarestock
