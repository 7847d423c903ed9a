// SPDX-License-Identifier: MIT
//
// What the screen says of a list that is taken in.

#include "app/desk/language/sentences.h"
#include "app/desk/parts/editing/card_fields.h"
#include "app/desk/parts/importing/list_import.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

QString saidCount(std::size_t count)
{
    return QLocale().toString(static_cast<int>(count));
}

} // namespace

void ListImport::show()
{
    std::vector<Row> rows;
    if (const AskedRow *row = askedRow()) {
        std::vector<std::string> headings = keyHeadings(m_list->kind());
        for (const CellFault &fault : row->faults)
            headings.push_back(fault.heading);
        for (const auto &[heading, text] : row->typed)
            headings.push_back(heading);
        for (const std::string &heading : headings) {
            const QString key = said(heading);
            const bool isThere = std::any_of(rows.begin(), rows.end(),
                                             [&key](const Row &one) { return one.key == key; });
            if (isThere || heading.empty())
                continue;
            const bool isWrong =
                std::any_of(row->faults.begin(), row->faults.end(),
                            [&](const CellFault &fault) { return fault.heading == heading; });
            const QString value = said(cellOf(row->typed, heading));
            const QString shown = value.isEmpty() ? tr("(empty)") : value;
            rows.push_back({key, {key, shown, isWrong, tr("%1: %2").arg(key, shown)}});
        }
    }
    m_cells.become({}); // Each question is another row.
    m_cells.become(std::move(rows));
    Q_EMIT changed();
}

QString ListImport::about() const
{
    if (!m_list)
        return {};
    const auto isNew = [](const ListRow &row) { return !row.before; };
    const auto &clear = m_list->clear();
    const auto fresh = static_cast<std::size_t>(std::count_if(clear.begin(), clear.end(), isNew));
    return tr("%1 rows: %2 as the shop has them, %3 new, %4 changed, %5 ask something")
        .arg(saidCount(m_list->rowCount()), saidCount(m_list->sameCount()), saidCount(fresh),
             saidCount(clear.size() - fresh), saidCount(m_list->asking().size()));
}

QString ListImport::where() const
{
    const AskedRow *row = askedRow();
    if (row == nullptr)
        return {};
    QStringList names;
    for (const std::string &heading : keyHeadings(m_list->kind())) {
        if (const QString cell = said(cellOf(row->typed, heading)); !cell.isEmpty())
            names.append(cell);
    }
    const QString line = tr("line %1").arg(saidCount(row->row.line));
    return names.isEmpty() ? line : tr("%1: %2").arg(line, names.join(QStringLiteral(", ")));
}

QString ListImport::wrong() const
{
    QStringList all;
    for (const CellFault &fault : askedRow() ? askedRow()->faults : std::vector<CellFault>()) {
        const QString one = fault.heading.empty()
                                ? inWords(fault.wrong)
                                : tr("%1: %2").arg(said(fault.heading), inWords(fault.wrong));
        if (!all.contains(one))
            all.append(one);
    }
    return all.join(QStringLiteral("\n"));
}

QString ListImport::meant() const
{
    const AskedRow *row = askedRow();
    if (row == nullptr)
        return {};
    if (!row->meant)
        return tr("Nothing can be made of it. It stays out until it is put right in the file.");
    QStringList all;
    for (const Understood::Change &change : row->meant->changes)
        all.append(change.is.empty()
                       ? tr("without %1").arg(said(change.heading))
                       : tr("%1 read as %2").arg(said(change.heading), said(change.is)));
    if (row->isDoubt)
        return tr("taken as it stands");
    return all.isEmpty() ? tr("taken in place of the row before") : all.join(QStringLiteral("\n"));
}

QString ListImport::takeWords() const
{
    const std::size_t rows = m_list ? taken().size() : 0;
    return rows == 1 ? tr("Take in 1 row") : tr("Take in %1 rows").arg(saidCount(rows));
}

} // namespace flarestock
