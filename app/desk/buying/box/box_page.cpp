// SPDX-License-Identifier: MIT

#include "app/desk/buying/box/box_page.h"

#include "app/desk/buying/box/box_kept.h"
#include "app/desk/buying/box/box_rows.h"
#include "app/desk/buying/box/came_told.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/scan/label_code.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

QString saidTrouble(const Trouble &one)
{
    const QString much = said(one.quantity);
    const QString part = said(one.part);
    if (one.fault == ClaimFault::WrongPart)
        return BoxPage::tr("%1 of %2 came in place of %3").arg(much, said(one.came), part);
    return one.fault == ClaimFault::Damaged
               ? BoxPage::tr("%1 of %2 came damaged").arg(much, part)
               : BoxPage::tr("%1 of %2 is on the paper and not in the box").arg(much, part);
}

} // namespace

BoxPage::BoxPage(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_rows(boxCells()), m_troubles({QStringLiteral("sentence")}),
      m_came(cameCells()), m_form(pen)
{
    connect(&m_form, &TroubleForm::noted, this, [this](const Trouble &trouble) {
        m_wrong.push_back(trouble);
        showTicks();
        Q_EMIT noted();
    });
    connect(&pen, &Pen::wrote, this,
            [this](const std::shared_ptr<const Wrote> &wrote, const QString &, bool isBack) {
                const bool isOurs = std::exchange(m_isPuttingAway, false) && !isBack;
                if (isOurs && isOfOrder(wrote->action, m_order.toStdString()))
                    told(wrote);
            });
    connect(&pen, &Pen::changed, this,
            [this] { m_isPuttingAway = m_isPuttingAway && m_pen.problem().isEmpty(); });
}

void BoxPage::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_newest = shop.workshop;
    m_history = shop.history;
    if (isOther)
        empty();
}

void BoxPage::setUnits(Units units)
{
    m_units = units;
    showTicks();
}

bool BoxPage::open(const QString &order)
{
    const BookedOrder *booked =
        m_newest ? m_newest->bought.orders.order(order.toStdString()) : nullptr;
    if (booked == nullptr || !booked->isOnItsWay())
        return false;
    if (order == m_order && m_result.isEmpty())
        return true; // It is on the bench already, with what was ticked.
    m_workshop = m_newest;
    m_order = order;
    m_document.clear();
    m_result.clear();
    m_wrong.clear();
    m_came.become({});
    m_ticks = Ticks(*booked, *m_workshop);
    putBackInBox(m_pen.unwritten().takeUp(name()), {m_ticks, m_wrong, m_document});
    showTicks();
    return true;
}

QString BoxPage::name() const
{
    return QStringLiteral("box|") + m_order;
}

void BoxPage::keepTicks()
{
    m_pen.unwritten().keep(name(), heading(),
                           isOnBench() ? keptOfBox({m_ticks, m_wrong, m_document}) : QVariantMap());
}

void BoxPage::close()
{
    m_pen.unwritten().forget(name());
    empty();
}

void BoxPage::empty()
{
    m_order.clear();
    m_result.clear();
    m_document.clear();
    m_wrong.clear();
    m_ticks = Ticks();
    m_came.become({});
    showTicks();
    m_workshop = nullptr;
}

void BoxPage::showTicks()
{
    if (m_workshop)
        leaveOut(m_wrong, *m_workshop, m_ticks);
    m_rows.become(boxRows(m_ticks, m_units));
    std::vector<Row> troubles;
    for (const Trouble &one : m_wrong) {
        troubles.push_back({QString::number(troubles.size()), {saidTrouble(one)}});
    }
    m_troubles.become(std::move(troubles));
    keepTicks();
    Q_EMIT changed();
}

QString BoxPage::heading() const
{
    const BookedOrder *order =
        m_workshop ? m_workshop->bought.orders.order(m_order.toStdString()) : nullptr;
    return order ? tr("Box of %1, %2")
                       .arg(m_order, saidSupplier(order->now().supplier, m_workshop->catalogue))
                 : QString();
}

QString BoxPage::count() const
{
    const auto [there, all] = m_ticks.ticked();
    return tr("%1 of %2 ticked").arg(there).arg(all);
}

QString BoxPage::lacking() const
{
    return saidLacking(m_ticks, m_units);
}

void BoxPage::setDocument(const QString &document)
{
    if (std::exchange(m_document, document) == document)
        return;
    keepTicks();
    Q_EMIT changed();
}

void BoxPage::toggle(int row)
{
    if (row < 0 || row >= m_rows.count())
        return;
    m_ticks.toggle(static_cast<std::size_t>(row));
    showTicks();
}

void BoxPage::step(int row, int by)
{
    if (row < 0 || row >= m_rows.count())
        return;
    const auto at = static_cast<std::size_t>(row);
    m_ticks.setCame(at, m_ticks.at(at).came + by);
    showTicks();
}

void BoxPage::tickAll()
{
    for (std::size_t at = 0; at < m_ticks.all().size(); ++at)
        m_ticks.setCame(at, std::max(m_ticks.at(at).came, m_ticks.at(at).count));
    showTicks();
}

void BoxPage::setAmount(int row, const QString &typed)
{
    if (row < 0 || row >= m_rows.count())
        return;
    const auto at = static_cast<std::size_t>(row);
    const auto amount = figuresTyped(typed.trimmed()).and_then([&](const std::string &figures) {
        return quantityAsked(figures, *m_ticks.at(at).part);
    });
    if (!amount)
        return m_pen.refuse(saidProblem(amount.error()));
    m_pen.hear();
    m_ticks.setCame(at, *amount);
    showTicks();
}

void BoxPage::setMark(int row, const QString &mark)
{
    if (row < 0 || row >= m_rows.count())
        return;
    m_ticks.at(static_cast<std::size_t>(row)).mark = mark.trimmed().toStdString();
    showTicks();
}

void BoxPage::setPlace(int row, const QString &place)
{
    if (row < 0 || row >= m_rows.count())
        return;
    m_ticks.at(static_cast<std::size_t>(row)).to = place.trimmed().toStdString();
    showTicks();
}

std::optional<std::size_t> BoxPage::take(const QString &code)
{
    const BookedOrder *order = m_workshop->bought.orders.order(m_order.toStdString());
    std::string wanted = code.trimmed().toStdString();
    for (const OrderLine &line : order->now().lines)
        if (!line.supplierNumber.empty() && sameFolded(line.supplierNumber, wanted))
            wanted = line.part;
    if (const auto row = m_ticks.scanned(wanted))
        return row;
    const LabelCode label = LabelCode::of(code);
    std::optional<std::size_t> row;
    if (!label.lot.isEmpty())
        row = m_ticks.scanned(label.part.toStdString());
    else if (m_row >= 0 && m_workshop->part(wanted) == nullptr)
        row = static_cast<std::size_t>(m_row);
    const auto marked = row ? m_ticks.wantsMark(*row) : std::nullopt;
    const QString mark = label.lot.isEmpty() ? code.trimmed() : label.lot;
    if (marked)
        m_ticks.setMark(*marked, mark.toStdString());
    return marked || label.lot.isEmpty() ? marked : row;
}

int BoxPage::scan(const QString &code)
{
    if (!isOnBench() || !m_workshop || code.trimmed().isEmpty())
        return -1;
    const auto taken = take(code);
    showTicks();
    const int row = taken ? static_cast<int>(*taken) : -1;
    if (taken) {
        m_pen.hear();
        Q_EMIT ticked(row);
    }
    return row;
}

void BoxPage::isNoneOfIt(const QString &code)
{
    m_pen.refuse(tr("%1 is nothing of this box, and no piece in hand waits for its number.")
                     .arg(code.trimmed()));
}

void BoxPage::beginTrouble(int row)
{
    if (row >= 0 && row < m_rows.count())
        m_form.begin(m_workshop, m_ticks.at(static_cast<std::size_t>(row)).part->number);
}

void BoxPage::dropTrouble(int trouble)
{
    if (trouble < 0 || trouble >= static_cast<int>(m_wrong.size()))
        return;
    m_wrong.erase(m_wrong.begin() + trouble);
    showTicks();
}

} // namespace flarestock
