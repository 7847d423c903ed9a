// SPDX-License-Identifier: MIT
//
// What is asked of the stock: words, fields, and a code that was scanned or typed whole.

#include "app/desk/scan/label_code.h"
#include "app/desk/stock/found_by.h"
#include "app/desk/stock/narrow_fields.h"
#include "app/desk/stock/stock_desk.h"
#include "app/desk/words/spoken.h"
#include "model/exact/case_fold.h"

#include <algorithm>
#include <utility>

namespace flarestock {

bool StockDesk::isNarrowed() const
{
    Narrowing any;
    any.order = m_asked.order;
    any.downwards = m_asked.downwards;
    return !(m_asked == any);
}

void StockDesk::find(const QString &typed)
{
    m_asked.words.clear();
    m_asked.ports.clear();
    m_toReach.reset();
    if (m_what.read(typed))
        m_asked.ports = m_what.portsOf(-1);
    else
        m_asked.words = wordsTyped(unlocalised(typed).toStdString());
    sift();
}

void StockDesk::narrow(const QString &field, int choice)
{
    if (!m_book)
        return;
    const std::string before = m_asked.where;
    m_asked = narrowed(*m_book, m_asked, {field, choice});
    if (m_asked.where != before)
        m_panel.mean({m_asked.where, {}, {}});
    showFields();
    sift();
}

void StockDesk::forget()
{
    const Narrowing before = m_asked;
    m_asked = {};
    m_toReach.reset();
    m_asked.order = before.order;
    m_asked.downwards = before.downwards;
    m_panel.mean({});
    Q_EMIT forgotten();
}

void StockDesk::clear()
{
    forget();
    showFields();
    sift();
}

void StockDesk::showBelow()
{
    forget();
    m_asked.below = true;
    showFields();
    sift();
}

void StockDesk::sortBy(int order)
{
    const auto wanted = static_cast<StockOrder>(std::clamp(order, 0, 5));
    m_asked.downwards = wanted == m_asked.order && !m_asked.downwards;
    m_asked.order = wanted;
    sift();
    Q_EMIT changed();
}

void StockDesk::showCandidate(int candidate)
{
    forget();
    m_asked.ports = m_what.portsOf(candidate);
    showFields();
    sift();
}

/// A place, or a part; a lot or a serial leads to its part, and its pieces come into hand.
PartPanel::Meant StockDesk::meantBy(const QString &code) const
{
    const std::string wanted = code.trimmed().toStdString();
    for (const std::string &place : m_book->places) {
        if (sameFolded(place, wanted))
            return {place, {}, {}};
    }
    const LabelCode label = LabelCode::of(code);
    const std::string part = label.part.toStdString();
    const std::string lot = label.lot.isEmpty() ? wanted : label.lot.toStdString();
    for (const auto &[key, held] : m_workshop->ledger.balances()) {
        if (!key.lot.empty() && sameFolded(key.lot, lot) &&
            (label.lot.isEmpty() || sameFolded(key.part, part)))
            return {{}, key.part, key.lot};
    }
    const Part *found = m_workshop->part(wanted);
    return {{}, found ? found->number : std::string(), {}};
}

void StockDesk::reach(const QString &typed)
{
    m_toReach = typed.trimmed();
    if (m_isSought && !m_sifting.isUnderWay())
        reached();
}

/// The lines of what was typed are there.
void StockDesk::reached()
{
    const auto typed = std::exchange(m_toReach, {});
    if (!typed)
        return;
    if (m_rows.count() == 0 && !typed->isEmpty()) {
        const auto meant = meantBy(*typed);
        if (!(meant.where.empty() && meant.part.empty()))
            scan(*typed);
        return; // Where nothing is like it one types on.
    }
    Q_EMIT linesReached();
}

bool StockDesk::scan(const QString &code)
{
    if (!m_book)
        return false;
    const auto meant = meantBy(code);
    forget();
    m_panel.mean(meant);
    if (!meant.where.empty()) {
        m_asked.where = meant.where;
        showFields();
        sift();
        return true;
    }
    const Part *part = m_workshop->part(meant.part);
    if (part == nullptr)
        return false;
    if (const StockEntry *entry = m_book->find(part->number); entry && !entry->isOurs())
        m_asked.where = Narrowing::Catalogue;
    m_panel.show(m_book, said(part->number));
    showFields();
    sift();
    Q_EMIT arrived();
    return true;
}

} // namespace flarestock
