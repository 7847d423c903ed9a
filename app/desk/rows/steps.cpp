// SPDX-License-Identifier: MIT

#include "app/desk/rows/steps.h"

#include "app/desk/rows/pace.h"

namespace flarestock {

void Steps::setOf(Rows *of)
{
    if (of == m_of)
        return;
    if (m_of)
        m_of->disconnect(this);
    m_of = of;
    if (m_of) {
        takeNames(*m_of);
        connect(m_of, &Rows::rowsInserted, this, &Steps::follow);
        connect(m_of, &Rows::rowsRemoved, this, &Steps::follow);
        connect(m_of, &Rows::rowsMoved, this, &Steps::follow);
        connect(m_of, &Rows::dataChanged, this, &Steps::follow);
        connect(m_of, &Rows::modelReset, this, &Steps::follow);
    }
    follow();
    Q_EMIT ofChanged();
}

/// A list changes by many small steps: it is looked at once they are over.
void Steps::follow()
{
    m_isStale = true;
    if (!m_isOnTheWay) {
        m_isOnTheWay = true;
        Pace::instance().work(this, [this] { return goOn(); });
    }
}

/// From the first row on: what is the same already takes no time.
void Steps::lookAnew()
{
    m_isStale = false;
    m_to = m_of ? m_of->rows() : std::vector<Row>();
    m_at = 0;
    m_keys.clear();
    for (const Row &row : m_to)
        m_keys.insert(row.key);
}

/// One line more, or one less.
bool Steps::goOn()
{
    if (m_isStale)
        lookAnew();
    const int before = count();
    if (!removeOne()) {
        while (m_at < m_to.size() && static_cast<int>(m_at) < count() && rows()[m_at] == m_to[m_at])
            ++m_at;
        m_isOnTheWay = m_at < m_to.size();
        if (m_isOnTheWay) {
            place(static_cast<int>(m_at), m_to[m_at]);
            ++m_at;
        }
    }
    if (count() != before)
        Q_EMIT countChanged();
    if (!m_isOnTheWay)
        Q_EMIT settled();
    return m_isOnTheWay;
}

/// The last line that is no more.
bool Steps::removeOne()
{
    for (int row = count() - 1; row >= 0; --row) {
        if (!m_keys.contains(rows()[static_cast<std::size_t>(row)].key)) {
            drop(row);
            return true;
        }
    }
    return false;
}

} // namespace flarestock
