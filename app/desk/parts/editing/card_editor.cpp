// SPDX-License-Identifier: MIT

#include "app/desk/parts/editing/card_editor.h"

#include "app/desk/language/sentences.h"
#include "app/desk/parts/editing/card_fields.h"
#include "app/desk/stock/card/part_panel.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/part_columns.h"
#include "model/exchange/typed/catalogue_rows.h"

#include <algorithm>

namespace flarestock {

namespace {

QString wordsOfFault(const CellFault &fault)
{
    if (fault.wrong == "the cell \"" + fault.heading + "\" is empty") // Of a file's row.
        return CardEditor::tr("Still empty: fill it in.");
    const QString wrong = inWords(fault.wrong);
    return fault.remedy.empty() ? CardEditor::tr("%1.").arg(wrong)
                                : CardEditor::tr("%1. %2").arg(wrong, inWords(fault.remedy));
}

/// The row of a card; nothing where there is none.
Result<std::optional<RowCells>> rowIn(const Result<TextFiles> &documents, const std::string &key)
{
    if (!documents)
        return tl::unexpected(documents.error());
    const auto rows = CatalogueRows::read(*documents, SheetKind::Parts);
    if (!rows)
        return tl::unexpected(rows.error());
    return rows->find(key);
}

} // namespace

CardEditor::CardEditor(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_fieldRows(cardFieldCells()), m_portRows(portFieldCells()),
      m_meetings(meetingCells())
{
}

void CardEditor::setShop(const ShopOnDesk &shop)
{
    m_documents = shop.documents;
}

void CardEditor::setBook(const std::shared_ptr<const CardBook> &book)
{
    m_book = book;
    if (m_isOpen && m_book)
        judge();
}

void CardEditor::beginNew()
{
    if (!m_book || m_reading.isUnderWay())
        return;
    m_isNew = true;
    begin({{"kind", "adapter"}, {"unit", "each"}});
    Q_EMIT opened();
}

void CardEditor::beginChange(const QString &number)
{
    if (!m_book || !m_documents || m_reading.isUnderWay())
        return;
    const std::string key = keyOf(SheetKind::Parts, {{"part", number.toStdString()}});
    m_reading.run([this, key, documents = m_documents]() -> Errand::Back {
        const auto row = std::make_shared<Result<std::optional<RowCells>>>(rowIn(documents(), key));
        return [this, row] {
            if (!*row)
                return m_pen.refuse(saidProblem(row->error()));
            if (!row->value())
                return m_pen.refuse(tr("There is no such card any more."));
            m_isNew = false;
            begin(*row->value());
            Q_EMIT opened();
        };
    });
}

void CardEditor::begin(const RowCells &cells)
{
    m_begun = cells;
    m_cells.clear();
    for (const auto &[heading, cell] : cells)
        m_cells[heading] = cellAsTyped(heading, cell).toStdString();
    m_cells.erase("ports");
    if (cellOf(m_cells, "unit").empty())
        m_cells["unit"] = "each";
    m_ports.read(cellOf(cells, "ports"));
    if (m_isNew)
        m_ports.add();
    m_asBegun = typed();
    takeUp();
    m_touched.clear();
    m_isTried = false;
    m_isOpen = true;
    m_lookedAt = m_ports.all().empty() ? 0 : m_ports.all().front().key;
    m_fieldRows.become({}); // What was typed on the card before is gone.
    m_portRows.become({});
    m_pen.hear();
    judge();
}

void CardEditor::close()
{
    m_pen.unwritten().forget(keptName());
    m_isOpen = false;
    Q_EMIT changed();
}

Kind CardEditor::kind() const
{
    return parseKind(cellOf(m_cells, "kind")).value_or(Kind::Adapter);
}

RowKnows CardEditor::knows() const
{
    return {[book = m_book](std::string_view number) -> std::optional<Kind> {
                const Part *part = book->catalogue().find(number);
                return part ? std::optional(part->kind) : std::nullopt;
            },
            {}};
}

/// By the code that reads the files; and a new card needs a number that none has.
void CardEditor::judge()
{
    keep();
    m_wrong = unclear();
    m_wrongAtPort.clear();
    for (const CellFault &fault : faultsOf(SheetKind::Parts, row(), knows())) {
        const auto port = fault.heading == "ports" ? m_ports.at(fault.within) : std::nullopt;
        if (port)
            m_wrongAtPort.emplace(*port, wordsOfFault(fault));
        else
            m_wrong.emplace(fault.heading, wordsOfFault(fault));
    }
    const std::string number = cellOf(row(), "part");
    if (m_isNew && m_book->catalogue().find(number))
        m_wrong["part"] = tr("There is a card of that number already.");
    showRows();
    if (m_isTried && !m_pen.problem().isEmpty()) // It was said of the card as it was then.
        isWhole() ? m_pen.hear() : m_pen.refuse(standing());
}

void CardEditor::showRows()
{
    std::map<std::string, QString> shown;
    for (const auto &[heading, words] : m_wrong) {
        if (m_isTried || m_touched.contains(heading))
            shown.emplace(heading, words);
    }
    m_fieldRows.become(cardFieldRows({m_cells, kind(), m_isNew, shown}));
    std::map<std::size_t, QString> atPorts;
    for (const auto &[place, words] : m_wrongAtPort) {
        if (m_isTried || m_touched.contains("port" + std::to_string(m_ports.all()[place].key)))
            atPorts.emplace(place, words);
    }
    m_portRows.become(portFieldRows(m_ports, atPorts, m_book ? &m_book->ports : nullptr));
    showMeetings();
}

void CardEditor::showMeetings()
{
    const auto *typed = m_ports.find(m_lookedAt);
    const auto port = typed ? PortFields::portOf(*typed) : std::nullopt;
    m_meetings.become(port && m_book ? m_book->ports.meetings(*port) : std::vector<Row>());
    Q_EMIT changed();
}

void CardEditor::fill(const QString &heading, const QVariant &filled)
{
    const std::string key = heading.toStdString();
    const bool isChoice =
        m_fieldRows.cell(m_fieldRows.rowOf(heading), QStringLiteral("form")).toString() ==
        QStringLiteral("choice");
    const std::string text =
        isChoice ? chosenText(key, filled.toInt()) : filled.toString().trimmed().toStdString();
    if (!m_isOpen || text == cellOf(m_cells, key))
        return;
    m_cells[key] = text;
    m_touched.insert(key);
    judge();
}

void CardEditor::addPort()
{
    m_ports.add();
    m_lookedAt = m_ports.all().back().key;
    judge();
}

void CardEditor::dropPort(const QString &key)
{
    m_ports.drop(key.toInt());
    judge();
}

void CardEditor::namePort(const QString &key, const QString &name)
{
    auto *typed = m_ports.find(key.toInt());
    if (typed == nullptr || typed->name == name)
        return;
    typed->name = name;
    m_touched.insert("port" + key.toStdString());
    judge();
}

void CardEditor::wordPort(const QString &key, const QString &words)
{
    auto *typed = m_ports.find(key.toInt());
    if (typed == nullptr || typed->words == words)
        return;
    typed->words = words;
    m_lookedAt = typed->key;
    m_touched.insert("port" + key.toStdString());
    judge();
}

void CardEditor::setRole(const QString &key, int role)
{
    auto *typed = m_ports.find(key.toInt());
    const auto wanted = static_cast<PortRole>(std::clamp(role, 0, 5));
    if (typed == nullptr || typed->role == wanted)
        return;
    typed->role = wanted;
    judge();
}

void CardEditor::lookAt(const QString &key)
{
    if (m_lookedAt == key.toInt())
        return;
    m_lookedAt = key.toInt();
    showMeetings();
}

void CardEditor::finish()
{
    if (!m_isOpen || m_pen.isBusy())
        return;
    m_isTried = true;
    judge();
    if (!m_wrong.empty() || !m_wrongAtPort.empty())
        return m_pen.refuse(standing());
    write();
}

void CardEditor::write()
{
    RowCells cells = row();
    if (cellOf(cells, "unit") == "each" && cellOf(m_begun, "unit").empty())
        cells.erase("unit"); // Nobody says so of what is counted in pieces.
    const QString sentence =
        m_isNew ? tr("Card %1 written.").arg(number()) : tr("Card %1 changed.").arg(number());
    m_pen.rewrite(
        sentence,
        [cells, begun = m_begun, isNew = m_isNew](const TextFiles &newest) -> Result<TextFiles> {
            const std::string number = cellOf(cells, "part");
            auto rows = CatalogueRows::read(newest, SheetKind::Parts);
            if (!rows)
                return tl::unexpected(rows.error());
            const auto row = rows->find(keyOf(SheetKind::Parts, cells));
            if (isNew && row)
                return problem(number, "was given to another part meanwhile",
                               "Choose another number.");
            if (!isNew && row != begun)
                return problem(number, "was changed at another seat meanwhile",
                               "Close this, look at the card as it is now, and change it again.");
            return rows->with({cells});
        });
}

} // namespace flarestock
