// SPDX-License-Identifier: MIT

#include "app/desk/buying/lacking/lacking_page.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/lacking/lacking_rows.h"
#include "app/desk/language/sentences.h"
#include "app/desk/rows/pace.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <utility>

namespace flarestock {

LackingPage::LackingPage(QObject *parent)
    : QObject(parent), m_days(stripCells()), m_lines(lackingCells()), m_facts(lackingFactCells())
{
}

void LackingPage::show(const std::shared_ptr<const BuyersBook> &book, Made made, Units units)
{
    m_book = book;
    m_units = units;
    m_all = std::move(made.lines);
    m_strip = std::move(made.strip);
    m_notes = book && book->problem.empty() ? lackingNotes(*book) : QStringList();
    showLines();
}

void LackingPage::find(const QString &typed)
{
    if (std::exchange(m_typed, typed) != typed)
        showLines();
}

void LackingPage::showLines()
{
    std::vector<Row> shown;
    std::copy_if(m_all.begin(), m_all.end(), std::back_inserter(shown), [this](const Row &row) {
        return hasWords(row.cells.constLast().toString(), m_typed);
    });
    m_lines.become(std::move(shown));
    if (m_lines.rowOf(m_selected) < 0)
        m_selected = keyAt(0);
    showSelected();
}

const Shortage *LackingPage::inHand() const
{
    if (!m_book)
        return nullptr;
    const auto &all = m_book->shortages;
    const auto found = std::find_if(all.begin(), all.end(), [this](const Shortage &one) {
        return lackingKey(one) == m_selected;
    });
    return found == all.end() ? nullptr : &*found;
}

/// The line first: a key does not wait for what is known of it.
void LackingPage::showSelected()
{
    Q_EMIT selectedChanged();
    Pace::instance().later(this, [this] { showFacts(); });
}

void LackingPage::showFacts()
{
    const Shortage *shortage = inHand();
    m_facts.showOther(shortage ? lackingFacts(*m_book, *shortage, m_units) : std::vector<Row>());
    Q_EMIT changed();
    Pace::instance().later(this, [this] { // Nor that for all days.
        const Shortage *now = inHand();
        m_days.become(m_strip.rows(now ? now->part : std::string()));
    });
}

void LackingPage::select(const QString &key)
{
    if (key == m_selected || m_lines.rowOf(key) < 0)
        return;
    m_selected = key;
    showSelected();
}

bool LackingPage::selectPart(const QString &part)
{
    for (int row = 0; row < m_lines.count(); ++row) {
        if (m_lines.cell(row, QStringLiteral("part")).toString() != part)
            continue;
        select(keyAt(row));
        return true;
    }
    return false;
}

QString LackingPage::part() const
{
    const Shortage *shortage = inHand();
    return shortage ? said(shortage->part) : QString();
}

QString LackingPage::what() const
{
    const Shortage *shortage = inHand();
    const Part *part = shortage ? m_book->workshop->part(shortage->part) : nullptr;
    return part ? said(part->description) : QString();
}

QString LackingPage::nothing() const
{
    if (!m_book)
        return tr("Working out what the builds need …");
    if (!m_book->problem.empty())
        return inWords(m_book->problem);
    if (m_lines.count() > 0)
        return {};
    return m_all.empty() ? tr("Nothing is short: all that the builds and the trailer need is here "
                              "or comes in time.")
                         : tr("Nothing that is short is like that.");
}

void LackingPage::goToDay(const QString &day)
{
    if (!m_book)
        return;
    for (const Shortage &one : m_book->shortages) {
        const QString key = lackingKey(one);
        if ((one.day.empty() || said(one.day) >= day) && m_lines.rowOf(key) >= 0)
            return select(key);
    }
}

QString LackingPage::keyAt(int row) const
{
    return m_lines.cell(row, QStringLiteral("key")).toString();
}

} // namespace flarestock
