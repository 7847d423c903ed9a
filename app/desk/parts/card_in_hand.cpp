// SPDX-License-Identifier: MIT
//
// What is said of the card in hand.

#include "app/desk/parts/card/card_facts.h"
#include "app/desk/parts/card/card_ports.h"
#include "app/desk/parts/parts_desk.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

/// Where it lies, what is promised and kept of it, who sells it.
std::vector<Row> tradeRows(const PartPanel &panel)
{
    std::vector<Row> rows;
    const QString head = PartsDesk::tr("where it lies");
    const Rows &lying = panel.lying();
    for (int row = 0; row < lying.count(); ++row) {
        const auto cell = [&lying, row](const char *name) {
            return lying.cell(row, QString::fromLatin1(name));
        };
        rows.push_back({QStringLiteral("at%1").arg(row),
                        {row == 0 ? head : QString(), cell("place"), cell("detail"), cell("amount"),
                         !cell("isFree").toBool(), cell("says"), QString()}});
    }
    if (rows.empty())
        rows.push_back({QStringLiteral("at"), {head, panel.sum(), {}, {}, false, panel.sum(), {}}});
    const Rows &lines = panel.lines();
    for (int row = 0; row < lines.count(); ++row) {
        QVariantList cells;
        for (const QString &name : cardCells())
            cells.append(lines.cell(row, name));
        rows.push_back({QStringLiteral("line%1").arg(row), cells});
    }
    return rows;
}

std::vector<Row> offerRows(const Catalogue &catalogue, const Part &card)
{
    std::vector<Row> rows;
    for (const Offer &offer : catalogue.offers(card)) {
        QString label = PartsDesk::tr("offer of %1").arg(said(offer.supplier));
        if (!offer.supplierNumber.empty())
            label = PartsDesk::tr("%1, no. %2").arg(label, said(offer.supplierNumber));
        rows.push_back({offerKey(offer), {label, PartsDesk::tr("change the %1").arg(label)}});
    }
    return rows;
}

} // namespace

const Part *PartsDesk::part() const
{
    return m_book && m_panel.entry() ? m_panel.entry()->part : nullptr;
}

/// Once a card: what its ports meet does not change with the rest.
void PartsDesk::showPorts(const Part *card)
{
    if (card == m_portsOf)
        return;
    m_portsOf = card;
    m_ports.showOther(card ? cardPortRows(*card, m_book->ports) : std::vector<Row>());
    if (m_ports.rowOf(m_port) < 0)
        m_port.clear();
}

void PartsDesk::showCard()
{
    const Part *card = part();
    const auto show = card == m_portsOf ? &Rows::become : &Rows::showOther;
    showPorts(card);
    (m_facts.*show)(card ? factRows(*card, m_units) : std::vector<Row>());
    (m_offers.*show)(card ? offerRows(m_book->catalogue(), *card) : std::vector<Row>());
    (m_trade.*show)(card ? tradeRows(m_panel) : std::vector<Row>());
    (m_links.*
     show)(card ? linkRows({*m_book->book->workshop, *card, m_book->named, m_used.get(), m_units})
                : std::vector<Row>());
    showMeetings();
}

const PartPort *PartsDesk::portInHand() const
{
    const Part *card = part();
    return card ? card->port(m_port.toStdString()) : nullptr;
}

QString PartsDesk::portSource() const
{
    const PartPort *port = portInHand();
    const QString source = port ? flarestock::portSource(port->port) : QString();
    return source.isEmpty() ? source : tr("Figures of this size: %1").arg(source);
}

void PartsDesk::showMeetings()
{
    const PartPort *port = portInHand();
    m_meetings.become(port ? m_book->ports.meetings(port->port) : std::vector<Row>());
    Q_EMIT changed();
}

void PartsDesk::setPort(const QString &port)
{
    m_port = port;
    showMeetings();
}

QString PartsDesk::portWords() const
{
    return m_ports.cell(m_ports.rowOf(m_port), QStringLiteral("port")).toString();
}

} // namespace flarestock
