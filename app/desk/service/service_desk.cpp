// SPDX-License-Identifier: MIT

#include "app/desk/service/service_desk.h"

#include "app/desk/rows/pace.h"
#include "app/desk/service/piece_card.h"
#include "app/desk/service/service_rows.h"
#include "app/desk/stock/card/part_card.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

ServiceDesk::ServiceDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_tabs(sheetTabCells()), m_positions(positionCells()), m_due(dueCells()),
      m_lines(cardCells()), m_form(pen), m_goingBack(pen), m_paper(pen)
{
    connect(&m_lot, &LotSearch::changed, this, [this] {
        if (m_tab == QStringLiteral("lot"))
            keepInHand(0);
    });
}

void ServiceDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_read = shop.read;
    m_goingBack.setShop(shop.read);
    m_isStale = true;
    if (isOther) {
        m_book = nullptr;
        m_problem.clear();
        m_tab = QStringLiteral("due");
        m_words.clear();
        m_lot.setBook(nullptr, {});
        m_lot.forget();
        m_paper.setBook(nullptr, {});
        showRows();
        Q_EMIT forgotten();
    }
    make();
    Q_EMIT changed();
}

void ServiceDesk::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    make();
    Q_EMIT changed();
}

void ServiceDesk::setInInches(bool inInches)
{
    m_units = inInches ? Units::Inch : Units::Metric;
    m_lot.setUnits(m_units);
    m_goingBack.setUnits(m_units);
    m_paper.setUnits(m_units);
    showRows();
}

void ServiceDesk::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || !m_read || m_making.isUnderWay())
        return;
    m_isStale = false;
    m_making.run([this, workshop = m_workshop, read = m_read]() -> Errand::Back {
        using Made = std::shared_ptr<const GarageBook>;
        const auto book =
            std::make_shared<Result<Made>>(readOf<Made>(read, [&workshop](ShopFile &file) {
                return GarageBook::of(workshop, file, dayOf(nowMilliseconds()));
            }));
        return [this, workshop, book] {
            if (workshop == m_workshop) {
                m_problem = *book ? QString() : saidProblem(book->error());
                take(*book ? **book : nullptr);
            }
            make(); // The shop may have gone on meanwhile.
        };
    });
}

void ServiceDesk::take(const std::shared_ptr<const GarageBook> &book)
{
    m_book = book;
    m_lot.setBook(book, m_read);
    m_paper.setBook(book, m_read);
    showRows();
}

Rows &ServiceDesk::shown()
{
    return m_tab == QStringLiteral("due")   ? m_due
           : m_tab == QStringLiteral("lot") ? *m_lot.acts()
                                            : m_positions;
}

void ServiceDesk::showRows()
{
    const int row = shown().rowOf(m_selected);
    if (!m_book) {
        for (Rows *rows : {&m_tabs, &m_positions, &m_due})
            rows->become({});
        return keepInHand(row);
    }
    m_tabs.become(sheetTabRows(*m_book));
    if (m_tabs.rowOf(m_tab) < 0 && m_tab != QStringLiteral("lot"))
        m_tab = QStringLiteral("due");
    m_due.become(dueRows(*m_book, m_words, m_units));
    const bool isCar = m_tab.startsWith(QStringLiteral("car|"));
    m_positions.become(
        isCar ? positionRows(*m_book, {m_tab.mid(4).toStdString(), m_hasRings, m_words, m_units})
              : std::vector<Row>());
    keepInHand(row);
}

/// Where what was in hand is gone, what stands in its row now.
void ServiceDesk::keepInHand(int row)
{
    Rows &rows = shown();
    if (rows.rowOf(m_selected) < 0) {
        const int near = std::clamp(row, 0, std::max(0, rows.count() - 1));
        m_selected = rows.cell(near, QStringLiteral("key")).toString();
    }
    showInHand();
}

void ServiceDesk::showInHand()
{
    holdPiece();
    showPiece();
}

/// What can be done is to be done to it from now on.
void ServiceDesk::holdPiece()
{
    m_form.show({m_book, inHand(), m_units});
    Q_EMIT selectedChanged();
}

/// What is known of it.
void ServiceDesk::showPiece()
{
    const CarPosition at = inHand();
    m_lines.showOther(m_book && !at.position.empty() ? pieceRows({*m_book, at, m_units})
                                                     : std::vector<Row>());
    Q_EMIT changed();
}

void ServiceDesk::setTab(const QString &tab)
{
    if (tab == m_tab || (m_tabs.rowOf(tab) < 0 && tab != QStringLiteral("lot")))
        return;
    const CarPosition before = inHand();
    m_tab = tab;
    m_words.clear();
    m_selected.clear();
    showRows();
    if (!before.position.empty() && tab == QString(QStringLiteral("car|") + said(before.car)))
        select(said(before.position));
    Q_EMIT forgotten();
}

void ServiceDesk::step(int tabs)
{
    QStringList all;
    for (int row = 0; row < m_tabs.count(); ++row)
        all.append(m_tabs.cell(row, QStringLiteral("key")).toString());
    all.append(QStringLiteral("lot"));
    const qsizetype to = all.indexOf(m_tab) + tabs;
    if (to >= 0 && to < all.size())
        setTab(all.at(to));
}

void ServiceDesk::select(const QString &key)
{
    if (key == m_selected || shown().rowOf(key) < 0)
        return;
    m_selected = key;
    holdPiece();
    Pace::instance().later(this, [this] { showPiece(); }); // A key does not wait for it.
}

void ServiceDesk::setRings(bool rings)
{
    if (rings == m_hasRings)
        return;
    m_hasRings = rings;
    showRows();
}

void ServiceDesk::find(const QString &typed)
{
    m_words = m_tab == QStringLiteral("lot") ? QString() : typed.trimmed();
    showRows();
}

void ServiceDesk::seekLot(const QString &what)
{
    m_tab = QStringLiteral("lot");
    m_selected.clear();
    m_lot.seek(what);
    keepInHand(0);
}

CarPosition ServiceDesk::inHand() const
{
    if (m_tab == QStringLiteral("due"))
        return dueAt(m_selected);
    if (m_tab == QStringLiteral("lot"))
        return m_lot.at(m_selected);
    return {m_tab.mid(4).toStdString(), m_selected.toStdString()};
}

/// Its lot first, then its part, then its position; in the car in hand first.
std::vector<CarPosition> ServiceDesk::meantBy(const QString &code) const
{
    const std::string wanted = code.trimmed().toStdString();
    const std::string tag = wanted.substr(wanted.find('=') + 1); // "PART=LOT" is on a label.
    std::array<std::vector<CarPosition>, 3> found;
    for (const auto &[car, life] : m_book->garage.lives) {
        for (const FittedPiece &piece : life.fitted) {
            const CarPosition at{car, piece.position};
            if (!piece.piece.lot.empty() && sameFolded(piece.piece.lot, tag))
                found[0].push_back(at);
            else if (sameFolded(piece.piece.part, wanted))
                found[1].push_back(at);
            else if (sameFolded(piece.position, wanted))
                found[2].push_back(at);
        }
    }
    const std::string car = inHand().car;
    for (auto &some : found) {
        std::stable_partition(some.begin(), some.end(),
                              [&car](const CarPosition &one) { return one.car == car; });
        if (!some.empty())
            return some;
    }
    return {};
}

bool ServiceDesk::scan(const QString &code)
{
    if (!m_book || code.trimmed().isEmpty())
        return false;
    for (const std::string &one : m_book->cars) {
        if (sameFolded(one, code.trimmed().toStdString())) {
            setTab(QString(QStringLiteral("car|") + said(one)));
            return true;
        }
    }
    const auto meant = meantBy(code);
    if (meant.empty() || m_tab == QStringLiteral("lot")) {
        seekLot(code.section(u'=', -1));
        return true;
    }
    m_hasRings = m_hasRings || isPlainRing(*m_book->piece(meant.front()));
    setTab(QString(QStringLiteral("car|") + said(meant.front().car)));
    find({});
    select(said(meant.front().position));
    Q_EMIT explained(meant.size() == 1 ? QString()
                                       : tr("%1 is at %2 positions; this is the first of them.")
                                             .arg(code.trimmed(), QString::number(meant.size())));
    Q_EMIT arrived();
    return true;
}

} // namespace flarestock
