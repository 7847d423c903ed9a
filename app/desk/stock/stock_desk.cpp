// SPDX-License-Identifier: MIT

#include "app/desk/stock/stock_desk.h"

#include "app/desk/stock/found_by.h"
#include "app/desk/stock/narrow_fields.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

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
    m_isStale = true;
    if (isOther) {
        forget();
        m_book = nullptr;
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
    m_below = static_cast<int>(std::count_if(book->entries.begin(), book->entries.end(),
                                             [](const StockEntry &one) { return one.isBelow; }));
    m_what.setBook(book);
    showFields();
    m_panel.show(book, m_panel.number());
    sift();
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
            m_rows.become(book, std::move(*lines));
            if (m_rows.rowOf(m_panel.number()) < 0)
                m_panel.show(book, m_rows.numberAt(0));
            Q_EMIT changed();
        };
    });
}

void StockDesk::showSelected()
{
    const DeedSubject inHand{m_book, m_book ? m_panel.entry() : nullptr, m_panel.key(), m_units};
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

bool StockDesk::isNarrowed() const
{
    Narrowing any;
    any.order = m_asked.order;
    any.downwards = m_asked.downwards;
    return !(m_asked == any);
}

void StockDesk::find(const QString &typed)
{
    m_asked.words.clear();
    m_asked.ports.clear();
    if (m_what.read(typed))
        m_asked.ports = m_what.portsOf(-1);
    else
        m_asked.words = wordsTyped(unlocalised(typed).toStdString());
    sift();
}

void StockDesk::narrow(const QString &field, int choice)
{
    if (!m_book)
        return;
    m_asked = narrowed(*m_book, m_asked, {field, choice});
    showFields();
    sift();
}

void StockDesk::forget()
{
    const Narrowing before = m_asked;
    m_asked = {};
    m_asked.order = before.order;
    m_asked.downwards = before.downwards;
    Q_EMIT forgotten();
}

void StockDesk::clear()
{
    forget();
    showFields();
    sift();
}

void StockDesk::showBelow()
{
    forget();
    m_asked.below = true;
    showFields();
    sift();
}

void StockDesk::sortBy(int order)
{
    const auto wanted = static_cast<StockOrder>(std::clamp(order, 0, 5));
    m_asked.downwards = wanted == m_asked.order && !m_asked.downwards;
    m_asked.order = wanted;
    sift();
    Q_EMIT changed();
}

void StockDesk::showCandidate(int candidate)
{
    forget();
    m_asked.ports = m_what.portsOf(candidate);
    showFields();
    sift();
}

bool StockDesk::scan(const QString &code)
{
    if (!m_book)
        return false;
    const std::string wanted = code.trimmed().toStdString();
    const auto place = std::find_if(m_book->places.begin(), m_book->places.end(),
                                    [&](const std::string &id) { return sameFolded(id, wanted); });
    forget();
    if (place != m_book->places.end()) {
        m_asked.where = *place;
        showFields();
        sift();
        return true;
    }
    std::string number = wanted;
    for (const auto &[key, held] : m_workshop->ledger.balances()) {
        if (!key.lot.empty() && sameFolded(key.lot, wanted))
            number = key.part; // A lot or a serial leads to its part.
    }
    const Part *part = m_workshop->part(number);
    if (part == nullptr)
        return false;
    if (const StockEntry *entry = m_book->find(part->number); entry && !entry->isOurs())
        m_asked.where = Narrowing::Catalogue;
    m_panel.show(m_book, said(part->number));
    showFields();
    sift();
    Q_EMIT arrived();
    return true;
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
    if (!m_book)
        return {};
    const int parts = m_rows.count();
    const QString count = parts == 1 ? tr("1 part") : tr("%1 parts").arg(QLocale().toString(parts));
    return tr("%1  ·  free is what lies in stock, is good, and is promised to no build").arg(count);
}

QString StockDesk::nothing() const
{
    if (!m_workshop)
        return tr("Nothing is known here of what this shop has in stock.");
    if (!m_book)
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
    return m_below == 0   ? tr("nothing is below")
           : m_below == 1 ? tr("1 part is below")
                          : tr("%1 parts are below").arg(m_below);
}

} // namespace flarestock
