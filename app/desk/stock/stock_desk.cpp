// SPDX-License-Identifier: MIT

#include "app/desk/stock/stock_desk.h"

#include "app/desk/rows/pace.h"
#include "app/desk/stock/narrow_fields.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"

#include <algorithm>

namespace flarestock {

StockDesk::StockDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_fields(narrowCells()), m_form(pen), m_bench(pen), m_goingBack(pen),
      m_labels(pen), m_photo(pen), m_place(pen), m_more(deedCells())
{
    connect(&m_panel, &PartPanel::changed, this, &StockDesk::showSelected);
    connect(&m_panel, &PartPanel::taken, this, &StockDesk::showSelected);
}

void StockDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_panel.setHistory(shop.history);
    m_goingBack.setShop(shop.read);
    m_place.setShop(shop);
    m_along = shop.copy.empty() ? std::nullopt : std::optional(shop.along);
    m_isStale = true;
    if (isOther) {
        forget();
        m_book = nullptr;
        m_isSought = false;
        m_rows.become(nullptr, {});
        m_fields.become({});
        m_panel.show(nullptr, {});
        m_what.setBook(nullptr);
    }
    make();
    Q_EMIT changed();
}

void StockDesk::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    make();
    Q_EMIT changed();
}

void StockDesk::setInInches(bool inInches)
{
    m_units = inInches ? Units::Inch : Units::Metric;
    m_rows.setUnits(m_units);
    m_panel.setUnits(m_units);
    m_goingBack.setUnits(m_units);
    showSelected();
    Q_EMIT changed();
}

void StockDesk::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || m_making.isUnderWay())
        return;
    m_isStale = false;
    m_making.run([this, workshop = m_workshop]() -> Errand::Back {
        const auto book = StockBook::of(workshop, dayOf(nowMilliseconds()));
        return [this, book] {
            if (book->workshop == m_workshop)
                take(book);
            make(); // The shop may have gone on meanwhile.
        };
    });
}

void StockDesk::take(const std::shared_ptr<const StockBook> &book)
{
    m_book = book;
    sift();
    Pace &pace = Pace::instance(); // What it shows is of the book that is there by then.
    pace.later(this, [this] { m_what.setBook(m_book); });
    pace.later(this, [this] { showFields(); });
    pace.later(this, [this] { m_panel.show(m_book, m_panel.number()); });
}

void StockDesk::showFields()
{
    m_fields.become(m_book ? narrowRows(*m_book, m_asked) : std::vector<Row>());
    Q_EMIT changed();
}

void StockDesk::sift()
{
    if (!m_book)
        return;
    if (m_sifting.isUnderWay()) {
        m_siftAgain = true;
        return;
    }
    m_sifting.run([this, book = m_book, asked = m_asked]() -> Errand::Back {
        const auto lines = std::make_shared<std::vector<std::uint32_t>>(sifted(*book, asked));
        return [this, book, lines] {
            const bool isPast = std::exchange(m_siftAgain, false) || book != m_book;
            if (isPast)
                return sift();
            m_isSought = true;
            m_rows.become(book, std::move(*lines));
            if (m_rows.rowOf(m_panel.number()) < 0)
                m_panel.show(book, m_rows.numberAt(0));
            Q_EMIT changed();
            reached();
        };
    });
}

void StockDesk::showSelected()
{
    const DeedSubject inHand{m_book, m_book ? m_panel.entry() : nullptr, m_panel.key(), m_units,
                             m_along};
    m_form.show(inHand);
    m_bench.show(inHand);
    m_labels.show(inHand);
    m_photo.show(inHand);
    std::vector<Row> more = benchRows(inHand);
    if (inHand.entry) {
        more.insert(more.end(), {labelRow(), placeRow()});
        const std::vector<Row> photo = m_photo.deeds();
        more.insert(more.end(), photo.begin(), photo.end());
    }
    m_more.become(std::move(more));
    Q_EMIT selectedChanged();
}

void StockDesk::select(const QString &number)
{
    if (m_book && number != m_panel.number())
        m_panel.show(m_book, number);
}

QString StockDesk::heading() const
{
    if (!m_book)
        return tr("Stock");
    const QString asked = saidNarrowing(*m_book, m_asked);
    if (!m_asked.ports.empty())
        return asked.isEmpty() ? tr("Stock: what it can be")
                               : tr("Stock: what it can be, %1").arg(asked);
    return asked.isEmpty() ? tr("Stock") : tr("Stock: %1").arg(asked);
}

QString StockDesk::about() const
{
    if (!m_isSought)
        return {};
    const int parts = m_rows.count();
    const QString count = parts == 1 ? tr("1 part") : tr("%1 parts").arg(QLocale().toString(parts));
    return tr("%1  ·  free is what lies in stock, is good, and is promised to no build").arg(count);
}

QString StockDesk::nothing() const
{
    if (!m_workshop)
        return tr("Nothing is known here of what this shop has in stock.");
    if (!m_isSought)
        return tr("Looking through the shop …");
    if (m_rows.count() > 0)
        return {};
    return isNarrowed()
               ? tr("Nothing in stock is like that. Clear what you asked for, or look also "
                    "at what we have none of.")
               : tr("Nothing is in stock yet. Receive what a supplier brought: choose a "
                    "part under \"also what we have none of\".");
}

QString StockDesk::belowWords() const
{
    return !m_book             ? tr("not known yet")
           : belowCount() == 0 ? tr("nothing is below")
           : belowCount() == 1 ? tr("1 part is below")
                               : tr("%1 parts are below").arg(belowCount());
}

} // namespace flarestock
