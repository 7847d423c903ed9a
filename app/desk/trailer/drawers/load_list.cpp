// SPDX-License-Identifier: MIT

#include "app/desk/trailer/drawers/load_list.h"

#include "app/desk/scan/label_code.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <utility>

namespace flarestock {

namespace {

QString cellOf(const Rows &rows, int row, const char *name)
{
    return rows.cell(row, QString::fromLatin1(name)).toString();
}

} // namespace

LoadList::LoadList(Way way, Pen &pen, QObject *parent)
    : QObject(parent), m_way(way), m_pen(pen), m_rows(loadCells())
{
}

void LoadList::show(const std::shared_ptr<const TrailerBook> &book, Units units)
{
    m_book = book;
    m_units = units;
    showRows();
    std::erase_if(m_ticked, [this](const QString &key) { return m_rows.rowOf(key) < 0; });
    settle();
}

void LoadList::clear()
{
    m_book = nullptr;
    m_ticked.clear();
    m_rows.become({});
    settle();
}

void LoadList::settle()
{
    if (!wantsHome())
        m_home.clear(); // Who chose it meant what was in the hand then.
    Q_EMIT changed();
}

void LoadList::showRows()
{
    if (m_book)
        m_rows.become(m_way == Way::In ? loadRows(shown()) : unloadRows(shown()));
}

bool LoadList::isTickable(int row) const
{
    return row >= 0 && row < m_rows.count() &&
           !m_rows.cell(row, QStringLiteral("isToBuy")).toBool();
}

int LoadList::tickableCount() const
{
    int count = 0;
    for (int row = 0; row < m_rows.count(); ++row)
        count += isTickable(row) ? 1 : 0;
    return count;
}

QStringList LoadList::homes() const
{
    QStringList all;
    if (m_book && m_way == Way::Out)
        for (const Place &place : m_book->workshop->ledger.places())
            if (isStock(place.kind) && place.kind != PlaceKind::Drawer)
                all.append(said(place.id));
    return all;
}

bool LoadList::wantsHome() const
{
    for (const QString &key : m_ticked)
        if (m_way == Way::Out && cellOf(m_rows, m_rows.rowOf(key), "place").isEmpty())
            return true;
    return false;
}

void LoadList::setHome(int home)
{
    const QStringList all = homes();
    const QString now = home >= 0 && home < all.size() ? all.at(home) : QString();
    if (std::exchange(m_home, now) != now)
        Q_EMIT changed();
}

void LoadList::tick(int row)
{
    if (!isTickable(row))
        return;
    const QString key = cellOf(m_rows, row, "key");
    if (!m_ticked.erase(key))
        m_ticked.insert(key);
    m_pen.hear();
    showRows();
    settle();
}

void LoadList::tickAll()
{
    const bool isAll = tickedCount() == tickableCount();
    m_ticked.clear();
    for (int row = 0; row < m_rows.count() && !isAll; ++row)
        if (isTickable(row))
            m_ticked.insert(cellOf(m_rows, row, "key"));
    m_pen.hear();
    showRows();
    settle();
}

bool LoadList::scan(const QString &code)
{
    const LabelCode wanted = LabelCode::of(code);
    for (int row = 0; row < m_rows.count(); ++row) {
        if (wanted.means(cellOf(m_rows, row, "part"), cellOf(m_rows, row, "lot")) &&
            isTickable(row) && !m_ticked.contains(cellOf(m_rows, row, "key"))) {
            tick(row);
            Q_EMIT found(row);
            return true;
        }
    }
    return scanPlace(code.trimmed());
}

int LoadList::lineOf(const QString &place) const
{
    for (int row = 0; row < m_rows.count(); ++row) {
        const QString key = cellOf(m_rows, row, "key");
        const QString drawer = key.section(u'|', 0, 0);
        if (isTickable(row) && !m_ticked.contains(key) &&
            (place.compare(drawer, Qt::CaseInsensitive) == 0 ||
             place.compare(cellOf(m_rows, row, "place"), Qt::CaseInsensitive) == 0))
            return row;
    }
    return -1;
}

bool LoadList::becomesHome(const QString &place)
{
    const QStringList all = homes();
    const auto at = std::find_if(all.begin(), all.end(), [&place](const QString &one) {
        return one.compare(place, Qt::CaseInsensitive) == 0;
    });
    if (at == all.end() || !wantsHome())
        return false;
    m_pen.hear();
    setHome(static_cast<int>(at - all.begin()));
    return true;
}

bool LoadList::scanPlace(const QString &place)
{
    if (place.isEmpty())
        return false;
    if (m_home.isEmpty() && becomesHome(place))
        return true;
    if (const int row = lineOf(place); row >= 0) {
        m_pen.hear();
        Q_EMIT found(row);
        return true;
    }
    return becomesHome(place);
}

void LoadList::finish(int home)
{
    if (m_ticked.empty())
        return m_pen.refuse(tr("Tick first what is in the hand."));
    const QStringList all = homes();
    write(m_ticked, home >= 0 && home < all.size() ? all.at(home).toStdString() : std::string());
}

void LoadList::finishDrawer(const QString &drawer)
{
    std::set<QString> keys;
    for (int row = 0; row < m_rows.count(); ++row) {
        const QString key = cellOf(m_rows, row, "key");
        if (isTickable(row) && key.section(u'|', 0, 0) == drawer)
            keys.insert(key);
    }
    if (keys.empty())
        return m_pen.refuse(tr("There is nothing in the bins to bring into %1.").arg(drawer));
    write(keys, {});
}

void LoadList::write(const std::set<QString> &ticked, const std::string &home)
{
    const int row = m_rows.rowOf(*ticked.begin());
    const bool isOne = ticked.size() == 1;
    const QString what =
        tr("%1 of %2").arg(cellOf(m_rows, row, "take"), cellOf(m_rows, row, "part"));
    const QString lines = tr("%1 lines of the list").arg(ticked.size());
    if (m_way == Way::In)
        return m_pen.act(tr("Brought into the trailer: %1.").arg(isOne ? what : lines),
                         loadedBy(m_book->asked, ticked));
    m_pen.act(tr("Taken out of the trailer: %1.").arg(isOne ? what : lines),
              takenOutBy({m_book->asked, ticked, home}));
}

} // namespace flarestock
