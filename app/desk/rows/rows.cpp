// SPDX-License-Identifier: MIT

#include "app/desk/rows/rows.h"

#include <QHash>
#include <QSet>

#include <algorithm>
#include <cassert>
#include <iterator>

namespace flarestock {

namespace {

constexpr int KeyRole = Qt::UserRole;
constexpr int FirstCellRole = Qt::UserRole + 1;

/// What is the same in both is one of them.
void share(const QVariantList &shown, QVariantList &made)
{
    if (made == shown) {
        made = shown;
        return;
    }
    for (int at = 0; at < std::min(made.size(), shown.size()); ++at) {
        QVariant &cell = made[at];
        if (cell == shown.at(at)) {
            cell = shown.at(at);
        } else if (cell.metaType() == QMetaType::fromType<QVariantList>() &&
                   shown.at(at).metaType() == cell.metaType()) {
            QVariantList list = cell.toList();
            share(shown.at(at).toList(), list);
            cell = list;
        }
    }
}

} // namespace

void shareWith(const std::vector<Row> &shown, std::vector<Row> &rows)
{
    QHash<QString, const Row *> known;
    for (const Row &row : shown)
        known.insert(row.key, &row);
    for (Row &row : rows)
        if (const Row *same = known.value(row.key))
            share(same->cells, row.cells);
}

Rows::Rows(const QStringList &names, QObject *parent) : QAbstractListModel(parent)
{
    m_names.insert(KeyRole, QByteArrayLiteral("key"));
    for (int at = 0; at < names.size(); ++at)
        m_names.insert(FirstCellRole + at, names.at(at).toLatin1());
}

int Rows::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant Rows::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row &row = m_rows.at(static_cast<std::size_t>(index.row()));
    if (role == KeyRole)
        return row.key;
    const int cell = role - FirstCellRole;
    return cell >= 0 && cell < row.cells.size() ? row.cells.at(cell) : QVariant();
}

QVariant Rows::cell(int row, const QString &name) const
{
    const int role = m_names.key(name.toLatin1(), -1);
    if (role < 0 || row < 0 || row >= count())
        return {};
    return data(index(row), role);
}

int Rows::rowOf(const QString &key) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [&key](const Row &row) { return row.key == key; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

void Rows::become(std::vector<Row> rows)
{
    if (rows == m_rows)
        return;
    const int before = count();
    int steps = 0;
    for (std::size_t at = 0; at < std::max(rows.size(), m_rows.size()); ++at)
        steps += at >= rows.size() || at >= m_rows.size() || rows[at] != m_rows[at] ? 1 : 0;
    if (steps > StepsMax) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
    } else {
        dropMissing(rows);
        for (std::size_t at = 0; at < rows.size(); ++at)
            place(static_cast<int>(at), std::move(rows[at]));
    }
    if (count() != before)
        Q_EMIT countChanged();
}

void Rows::showOther(std::vector<Row> rows)
{
    const int before = count();
    const int after = static_cast<int>(rows.size());
    if (after < before) {
        beginRemoveRows({}, after, before - 1);
        m_rows.resize(rows.size());
        endRemoveRows();
    }
    const int staying = std::min(before, after);
    std::vector<Row> added(std::make_move_iterator(rows.begin() + staying),
                           std::make_move_iterator(rows.end()));
    rows.resize(static_cast<std::size_t>(staying));
    m_rows.swap(rows); // Now `rows` has what was shown.
    for (int row = 0; row < staying; ++row)
        tellChanged(row, rows[static_cast<std::size_t>(row)]);
    if (!added.empty()) {
        beginInsertRows({}, staying, after - 1);
        std::move(added.begin(), added.end(), std::back_inserter(m_rows));
        endInsertRows();
    }
    if (after != before)
        Q_EMIT countChanged();
}

void Rows::takeNames(const Rows &of)
{
    beginResetModel();
    m_names = of.m_names;
    m_rows.clear();
    endResetModel();
}

void Rows::dropMissing(const std::vector<Row> &rows)
{
    QSet<QString> keys;
    for (const Row &row : rows) {
        assert(row.cells.size() + 1 == m_names.size());
        assert(!keys.contains(row.key));
        keys.insert(row.key);
    }
    for (int at = count() - 1; at >= 0; --at) {
        if (keys.contains(m_rows.at(static_cast<std::size_t>(at)).key))
            continue;
        drop(at);
    }
}

void Rows::drop(int row)
{
    beginRemoveRows({}, row, row);
    m_rows.erase(m_rows.begin() + row);
    endRemoveRows();
}

void Rows::place(int at, Row row)
{
    const int was = rowOf(row.key);
    if (was < 0) {
        beginInsertRows({}, at, at);
        m_rows.insert(m_rows.begin() + at, std::move(row));
        endInsertRows();
        return;
    }
    if (was != at) {
        assert(was > at); // Everything before `at` is in place already.
        beginMoveRows({}, was, was, {}, at);
        std::rotate(m_rows.begin() + at, m_rows.begin() + was, m_rows.begin() + was + 1);
        endMoveRows();
    }
    std::swap(m_rows.at(static_cast<std::size_t>(at)), row);
    tellChanged(at, row);
}

/// Only of the cells that are others now: a view makes anew what hangs on a cell.
void Rows::tellChanged(int row, const Row &before)
{
    const Row &now = m_rows.at(static_cast<std::size_t>(row));
    QList<int> roles;
    if (now.key != before.key)
        roles.append(KeyRole);
    for (int cell = 0; cell < now.cells.size(); ++cell) {
        if (cell >= before.cells.size() || now.cells.at(cell) != before.cells.at(cell))
            roles.append(FirstCellRole + cell);
    }
    if (!roles.isEmpty())
        Q_EMIT dataChanged(index(row), index(row), roles);
}

} // namespace flarestock
