// SPDX-License-Identifier: MIT

#include "app/desk/stock/card/part_panel.h"

#include "app/desk/stock/sieve.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"

#include <algorithm>

namespace flarestock {

namespace {

OnHand onHandIn(const StockBook &book, const std::vector<Movement> &movements)
{
    const Ledger &ledger = book.workshop->ledger;
    return onHandOver(
        movements,
        [&ledger](const std::string &id) {
            const Place *place = ledger.place(id);
            return place != nullptr && isStock(place->kind);
        },
        nowMilliseconds());
}

} // namespace

PartPanel::PartPanel(QObject *parent)
    : QObject(parent), m_ports(portCells()), m_lying(lyingCells()), m_lines(cardCells())
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(PatienceMs);
    connect(&m_patience, &QTimer::timeout, this, &PartPanel::showRows);
}

void PartPanel::show(const std::shared_ptr<const StockBook> &book, const QString &number)
{
    const bool isOther = number != m_number;
    if (book == m_book && !isOther)
        return;
    m_book = book;
    m_number = number;
    m_entry = book ? book->find(number.toStdString()) : nullptr;
    m_problem.clear();
    if (isOther) {
        m_movements = nullptr;
        m_hand = {};
        m_isAllShown = false;
        m_pieces.clear();
    }
    if (m_entry != nullptr && isOther && m_history && m_entry->part != nullptr) {
        m_pieces = meantOf(lyingRows(asked()));
        m_patience.start();
        Q_EMIT taken();
    } else {
        showRows();
    }
    if (m_entry != nullptr)
        read();
}

void PartPanel::mean(const Meant &meant)
{
    m_meant = meant;
    const bool isAnything = meant.where.empty() && meant.lot.empty();
    if (m_entry == nullptr || (isAnything && !m_pieces.isEmpty()))
        return; // What is in hand stays there.
    const QString pieces = meantOf(lyingRows(asked()));
    if (pieces == m_pieces)
        return;
    m_pieces = pieces;
    Q_EMIT changed();
}

QString PartPanel::meantOf(const std::vector<Row> &lying) const
{
    const std::string lot = m_meant.part == m_entry->number ? m_meant.lot : std::string();
    const auto isMeant = [&](const Row &row) {
        const auto key = lyingAt(*m_entry, row.key);
        return key && liesAt(*key, m_meant.where, m_book->workshop->ledger) &&
               (lot.empty() || key->lot == lot);
    };
    const auto found = std::find_if(lying.begin(), lying.end(), isMeant);
    return found == lying.end() ? QString() : found->key;
}

CardAsked PartPanel::asked() const
{
    return {*m_book, *m_entry, m_units, m_movements.get(),
            m_isAllShown ? EventsMost : EventsAtFirst};
}

void PartPanel::showRows()
{
    m_patience.stop();
    const bool isThere = m_entry != nullptr;
    const auto show =
        std::exchange(m_shown, m_number) == m_number ? &Rows::become : &Rows::showOther;
    (m_ports.*show)(isThere && m_entry->part ? portRows(*m_entry->part) : std::vector<Row>());
    (m_lying.*show)(isThere ? lyingRows(asked()) : std::vector<Row>());
    (m_lines.*show)(isThere ? cardRows(asked()) : std::vector<Row>());
    if (isThere)
        m_time.show(m_hand, *m_entry, m_units);
    else
        m_time.clear();
    if (m_lying.rowOf(m_pieces) < 0) // They lie there no more: others come into hand.
        m_pieces = isThere ? meantOf(lyingRows(asked())) : QString();
    Q_EMIT changed();
}

void PartPanel::read()
{
    if (!m_history || m_entry->part == nullptr) {
        m_movements = std::make_shared<const std::vector<Movement>>();
        return showRows();
    }
    if (m_reading.isUnderWay()) {
        m_readAgain = true;
        return;
    }
    const std::string part = m_entry->number;
    m_reading.run([this, part, history = m_history, book = m_book]() -> Errand::Back {
        const auto movements = std::make_shared<Result<std::vector<Movement>>>(history(part));
        const OnHand hand = *movements ? onHandIn(*book, **movements) : OnHand();
        return [this, part, movements, hand] {
            if (std::exchange(m_readAgain, false) && m_entry != nullptr)
                return read();
            if (m_entry == nullptr || m_entry->number != part)
                return;
            m_hand = hand;
            if (*movements)
                m_movements = std::make_shared<const std::vector<Movement>>(std::move(**movements));
            else
                m_problem = saidProblem(movements->error());
            showRows();
        };
    });
}

void PartPanel::setAllShown(bool shown)
{
    m_isAllShown = shown;
    showRows();
}

void PartPanel::setUnits(Units units)
{
    if (units == m_units)
        return;
    m_units = units;
    showRows();
}

std::optional<BalanceKey> PartPanel::key() const
{
    return m_entry == nullptr || m_pieces.isEmpty() ? std::nullopt : lyingAt(*m_entry, m_pieces);
}

void PartPanel::setPieces(const QString &key)
{
    if (key == m_pieces || m_lying.rowOf(key) < 0)
        return;
    m_pieces = key;
    Q_EMIT changed();
}

QString PartPanel::title() const
{
    return m_entry == nullptr || m_entry->part == nullptr ? QString()
                                                          : said(m_entry->part->description);
}

QString PartPanel::about() const
{
    return m_entry == nullptr ? QString() : cardAbout(*m_entry);
}

QString PartPanel::body() const
{
    return m_entry == nullptr || m_entry->part == nullptr
               ? QString()
               : bodyOf(m_entry->part->kind, !m_entry->part->ports.empty());
}

QString bodyOf(Kind kind, bool hasPorts)
{
    switch (kind) {
    case Kind::Hose:
    case Kind::Tubing:
    case Kind::Wire:
        return QStringLiteral("length");
    case Kind::Ring:
    case Kind::Washer:
        return QStringLiteral("ring");
    case Kind::HoseEnd:
    case Kind::TubeNut:
    case Kind::TubeSleeve:
    case Kind::Adapter:
    case Kind::Tee:
    case Kind::Bulkhead:
    case Kind::Cap:
    case Kind::Plug:
        return QStringLiteral("hex");
    default:
        return hasPorts ? QStringLiteral("box") : QString();
    }
}

int PartPanel::bend() const
{
    const auto *end = m_entry == nullptr || m_entry->part == nullptr
                          ? nullptr
                          : m_entry->part->as<HoseEndFacts>();
    return end == nullptr ? 0 : std::min(end->angleDegrees, 90);
}

QStringList PartPanel::portTexts() const
{
    QStringList texts;
    for (int row = 0; row < m_ports.count(); ++row)
        texts.append(m_ports.cell(row, QStringLiteral("port")).toString());
    return texts;
}

QString PartPanel::sum() const
{
    return m_entry == nullptr ? QString() : cardSum(asked());
}

} // namespace flarestock
