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

Row shownCell(const QString &key, const QString &value, bool isWrong)
{
    return {key, {key, value, isWrong, ListImport::tr("%1: %2").arg(key, value)}};
}

/// What stands in the row: its key first, then what is wrong.
std::vector<Row> cellsOf(const AskedRow &row, SheetKind kind)
{
    if (!row.line.empty())
        return {shownCell(ListImport::tr("as it stands"), said(row.line), true)};
    std::vector<std::string> headings = keyHeadings(kind);
    for (const CellFault &fault : row.faults)
        headings.push_back(fault.heading);
    for (const auto &[heading, text] : row.typed)
        headings.push_back(heading);
    std::vector<Row> rows;
    for (const std::string &heading : headings) {
        const QString key = said(heading);
        const bool isThere = std::any_of(rows.begin(), rows.end(),
                                         [&key](const Row &one) { return one.key == key; });
        if (isThere || heading.empty())
            continue;
        const bool isWrong =
            std::any_of(row.faults.begin(), row.faults.end(),
                        [&](const CellFault &fault) { return fault.heading == heading; });
        const QString value = said(cellOf(row.typed, heading));
        rows.push_back(
            shownCell(key, value.isEmpty() ? ListImport::tr("(empty)") : value, isWrong));
    }
    return rows;
}

/// With what to do about it where it is no row of cells.
QString saidFault(const CellFault &fault)
{
    if (!fault.heading.empty()) {
        const std::string head = fault.heading + ": "; // Some sentences begin with it.
        const std::string_view wrong = fault.wrong;
        const auto rest = wrong.substr(wrong.starts_with(head) ? head.size() : 0);
        return ListImport::tr("%1: %2").arg(said(fault.heading), inWords(rest));
    }
    return fault.remedy.empty()
               ? inWords(fault.wrong)
               : ListImport::tr("%1. %2").arg(inWords(fault.wrong), inWords(fault.remedy));
}

/// What it comes to that a cell is left out.
QString saidWithout(const std::string &heading)
{
    if (heading == "currency")
        return ListImport::tr("without currency: then the shop's own counts");
    if (heading == "pack")
        return ListImport::tr("without pack: then the price is for one piece");
    if (heading == "ports")
        return ListImport::tr("without ports: then nothing fits it");
    return ListImport::tr("without %1").arg(said(heading));
}

} // namespace

void ListImport::show()
{
    m_cells.become({}); // Each question is another row.
    if (const AskedRow *row = askedRow())
        m_cells.become(cellsOf(*row, m_list->kind()));
    Q_EMIT changed();
}

QString ListImport::about() const
{
    if (!m_list)
        return {};
    const auto isNew = [](const ListRow &row) { return !row.before; };
    const auto &clear = m_list->clear();
    const auto fresh = static_cast<std::size_t>(std::count_if(clear.begin(), clear.end(), isNew));
    const std::size_t rows = m_list->rowCount();
    return tr("%1: %2 as the shop has them, %3 new, %4 changed, %5 to be asked about")
        .arg(rows == 1 ? tr("1 row") : tr("%1 rows").arg(saidCount(rows)),
             saidCount(m_list->sameCount()), saidCount(fresh), saidCount(clear.size() - fresh),
             saidCount(m_list->asking().size()));
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
        const QString one = saidFault(fault);
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
                       ? saidWithout(change.heading)
                       : tr("%1 read as %2").arg(said(change.heading), said(change.is)));
    if (row->isDoubt)
        return tr("taken as it stands");
    return all.isEmpty() ? tr("taken in place of the row before") : all.join(QStringLiteral("\n"));
}

QString ListImport::answeredWords() const
{
    if (m_answers.empty())
        return {};
    const auto taken = std::count(m_answers.begin(), m_answers.end(), true);
    return tr("Of the rows asked about: taken in %1, left out %2.")
        .arg(saidCount(static_cast<std::size_t>(taken)),
             saidCount(m_answers.size() - static_cast<std::size_t>(taken)));
}

QString ListImport::takeWords() const
{
    const std::size_t rows = m_list ? taken().size() : 0;
    return rows == 1 ? tr("Take in 1 row") : tr("Take in %1 rows").arg(saidCount(rows));
}

} // namespace flarestock
