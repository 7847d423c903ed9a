// SPDX-License-Identifier: MIT

#include "app/desk/parts/importing/list_changes.h"

#include "app/desk/words/spoken.h"

#include <QLocale>

namespace flarestock {

namespace {

enum ChangeRole { TitleRole = Qt::UserRole + 1, SaysRole, TickedRole };

/// What a row is called by, and its line.
QString titleOf(const ListRow &row, SheetKind kind)
{
    QStringList names;
    for (const std::string &heading : keyHeadings(kind)) {
        if (const QString cell = said(cellOf(row.cells, heading)); !cell.isEmpty())
            names.append(cell);
    }
    return ListChanges::tr("%1  ·  line %2")
        .arg(names.join(QStringLiteral(", ")), QLocale().toString(static_cast<int>(row.line)));
}

/// Each cell that changes on a line of its own.
QString changesOf(const ListRow &row)
{
    QStringList all;
    const auto shown = [](const std::string &cell) {
        return cell.empty() ? ListChanges::tr("(empty)") : said(cell);
    };
    const auto tell = [&](const std::string &heading) {
        const std::string was = cellOf(*row.before, heading);
        const std::string becomes = cellOf(row.cells, heading);
        if (was != becomes)
            all.append(
                ListChanges::tr("%1: %2 → %3").arg(said(heading), shown(was), shown(becomes)));
    };
    for (const auto &[heading, text] : row.cells)
        tell(heading);
    for (const auto &[heading, text] : *row.before) {
        if (!row.cells.contains(heading))
            tell(heading);
    }
    return all.join(QStringLiteral("\n"));
}

} // namespace

void ListChanges::show(SheetKind kind, const std::vector<ListRow> &taken)
{
    beginResetModel();
    m_kind = kind;
    m_rows.clear();
    for (const ListRow &row : taken) {
        if (row.before && *row.before != row.cells)
            m_rows.push_back(row);
    }
    endResetModel();
    Q_EMIT countChanged();
}

void ListChanges::forget()
{
    m_leftOut.clear();
    show(m_kind, {});
}

void ListChanges::toggle(int row)
{
    if (row < 0 || row >= count())
        return;
    const std::size_t line = m_rows[static_cast<std::size_t>(row)].line;
    if (m_leftOut.erase(line) == 0)
        m_leftOut.insert(line);
    Q_EMIT dataChanged(index(row), index(row), {TickedRole});
    Q_EMIT toggled();
}

int ListChanges::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant ListChanges::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= count())
        return {};
    const ListRow &row = m_rows[static_cast<std::size_t>(index.row())];
    if (role == TitleRole)
        return titleOf(row, m_kind);
    if (role == SaysRole)
        return changesOf(row);
    return role == TickedRole ? QVariant(!isLeftOut(row)) : QVariant();
}

QHash<int, QByteArray> ListChanges::roleNames() const
{
    return {{TitleRole, "title"}, {SaysRole, "says"}, {TickedRole, "ticked"}};
}

} // namespace flarestock
