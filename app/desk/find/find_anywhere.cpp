// SPDX-License-Identifier: MIT

#include "app/desk/find/find_anywhere.h"

#include <utility>

namespace flarestock {

FindAnywhere::FindAnywhere(QObject *parent) : QObject(parent), m_rows(foundAnywhereCells()) {}

void FindAnywhere::setShop(const ShopOnDesk &shop)
{
    m_workshop = shop.workshop;
    if (!m_typed.isEmpty())
        make();
}

void FindAnywhere::find(const QString &typed, const QStringList &without)
{
    m_typed = typed.trimmed();
    m_without = without;
    if (m_typed.isEmpty()) {
        m_rows.become({});
        Q_EMIT changed();
        return;
    }
    make();
}

void FindAnywhere::make()
{
    const bool isMade = m_book && m_book->workshop == m_workshop;
    if (isMade || !m_workshop)
        return look();
    if (m_making.isUnderWay())
        return;
    m_making.run([this, workshop = m_workshop]() -> Errand::Back {
        const auto book = FindBook::of(workshop);
        return [this, book] {
            m_book = book;
            make(); // The shop may have gone on meanwhile.
        };
    });
    Q_EMIT changed();
}

void FindAnywhere::look()
{
    if (!m_book || m_typed.isEmpty())
        return;
    if (m_looking.isUnderWay()) {
        m_isStale = true;
        return;
    }
    m_looking.run([this, book = m_book, typed = m_typed, without = m_without]() -> Errand::Back {
        auto rows = std::make_shared<std::vector<Row>>(foundAnywhere(*book, typed, MostEach));
        std::erase_if(*rows, [&without](const Row &row) {
            return without.contains(row.key.section(u'|', 0, 0));
        });
        return [this, rows] {
            if (std::exchange(m_isStale, false))
                return look();
            m_rows.showOther(m_typed.isEmpty() ? std::vector<Row>() : std::move(*rows));
            Q_EMIT changed();
        };
    });
    Q_EMIT changed();
}

} // namespace flarestock
