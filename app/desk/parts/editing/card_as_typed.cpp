// SPDX-License-Identifier: MIT
//
// What the screen says of a card while it is typed.

#include "app/desk/parts/editing/card_editor.h"
#include "app/desk/parts/editing/card_fields.h"
#include "app/desk/stock/card/part_panel.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/part_columns.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Fewer ports are odd, though a card may have them. Common practice, no source.
int usualPorts(Kind kind)
{
    return kind == Kind::Tee ? 3 : kind == Kind::Adapter ? 2 : 0;
}

} // namespace

QString CardEditor::number() const
{
    return said(cellOf(m_cells, "part"));
}

QString CardEditor::keptName() const
{
    return QStringLiteral("card|") + (m_isNew ? QString() : said(cellOf(m_begun, "part")));
}

/// By heading; the row of the shop that it goes on from stands under "".
QVariantMap CardEditor::typed() const
{
    QVariantMap cells;
    QString begun;
    for (const auto &[heading, cell] : m_begun)
        begun.append(said(heading)).append(u'\t').append(said(cell)).append(u'\n');
    cells[QString()] = begun;
    for (const auto &[heading, cell] : m_cells)
        cells[said(heading)] = said(cell);
    cells[QStringLiteral("ports")] = said(m_ports.cell());
    return cells;
}

void CardEditor::takeUp()
{
    QVariantMap kept = m_pen.unwritten().takeUp(keptName());
    m_isOfBefore = !kept.isEmpty() && kept.take(QString()) == m_asBegun.value(QString());
    if (!m_isOfBefore)
        return;
    m_cells.clear();
    for (auto at = kept.begin(); at != kept.end(); ++at)
        m_cells[at.key().toStdString()] = at.value().toString().toStdString();
    m_ports.read(cellOf(m_cells, "ports"));
    m_cells.erase("ports");
}

void CardEditor::keep()
{
    m_pen.unwritten().keep(keptName(), title(), typed(), m_asBegun);
}

/// The row as it would be written: what parts of another kind have stays on the screen only, as
/// does a figure that can be read in two ways.
RowCells CardEditor::row() const
{
    RowCells cells;
    const auto headings = partHeadings();
    for (std::size_t at = 0; at < headings.size(); ++at) {
        const std::string heading(headings[at]);
        const auto cell = cellOfTyped(heading, cellOf(m_cells, heading));
        if (cell && hasColumn(kind(), at) && !trimmed(*cell).empty())
            cells.emplace(heading, trimmed(*cell));
    }
    if (const std::string ports = m_ports.cell(); !ports.empty())
        cells["ports"] = ports;
    return cells;
}

std::map<std::string, QString> CardEditor::unclear() const
{
    std::map<std::string, QString> wrong;
    const auto headings = partHeadings();
    for (std::size_t at = 0; at < headings.size(); ++at) {
        const std::string heading(headings[at]);
        const auto cell = cellOfTyped(heading, cellOf(m_cells, heading));
        if (!cell && hasColumn(kind(), at))
            wrong.emplace(heading, saidProblem(cell.error()));
    }
    return wrong;
}

QString CardEditor::title() const
{
    return m_isNew ? tr("A new card") : tr("Card %1").arg(number());
}

QString CardEditor::standing() const
{
    const std::size_t wrong = m_wrong.size() + m_wrongAtPort.size();
    const int usual = usualPorts(kind());
    const auto ports = static_cast<int>(portTexts().size());
    if (isWhole() && ports < usual)
        return tr("The card is whole. Odd, though: as a rule such a part has %1 ports, here %2.")
            .arg(usual)
            .arg(ports);
    if (isWhole())
        return tr("The card is whole.");
    if (!m_isTried && m_touched.empty()) // None of them is marked.
        return wrong == 1 ? tr("1 field has still to be filled in.")
                          : tr("%1 fields have still to be filled in.").arg(wrong);
    return wrong == 1 ? tr("1 field is not right yet.")
                      : tr("%1 fields are not right yet.").arg(wrong);
}

QString CardEditor::body() const
{
    return bodyOf(kind(), !m_ports.all().empty());
}

int CardEditor::bend() const
{
    return kind() == Kind::HoseEnd ? std::clamp(said(cellOf(m_cells, "angle")).toInt(), 0, 90) : 0;
}

QStringList CardEditor::portTexts() const
{
    QStringList texts;
    for (const auto &typed : m_ports.all()) {
        if (const auto port = PortFields::portOf(typed))
            texts.append(said(port->text()));
    }
    return texts;
}

QString CardEditor::meets() const
{
    for (const auto &typed : m_ports.all()) {
        const auto port = PortFields::portOf(typed);
        if (typed.key == m_lookedAt && port)
            return saidPort(*port);
    }
    return {};
}

} // namespace flarestock
