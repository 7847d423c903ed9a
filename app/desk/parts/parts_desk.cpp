// SPDX-License-Identifier: MIT

#include "app/desk/parts/parts_desk.h"

#include "app/desk/parts/card/card_facts.h"
#include "app/desk/parts/card/card_ports.h"
#include "app/desk/stock/found_by.h"
#include "app/desk/stock/narrow_fields.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// By what cards are narrowed, of all by which stock is.
bool isOfCards(const Row &field)
{
    static const QStringList ofCards{QStringLiteral("kind"), QStringLiteral("dash"),
                                     QStringLiteral("thread"), QStringLiteral("micron")};
    return ofCards.contains(field.key);
}

} // namespace

PartsDesk::PartsDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_fields(narrowCells()), m_ports(cardPortCells()), m_facts(factCells()),
      m_links(cardCells()), m_trade(cardCells()), m_meetings(meetingCells()), m_editor(pen),
      m_importing(pen), m_tradeForm(pen),
      m_offers({QStringLiteral("label"), QStringLiteral("says")})
{
    connect(&m_panel, &PartPanel::changed, this, &PartsDesk::showCard);
}

PartsDesk::~PartsDesk()
{
    if (m_stopUses)
        *m_stopUses = true;
}

void PartsDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_editor.setShop(shop);
    m_importing.setShop(shop);
    m_tradeForm.setShop(shop);
    m_isStale = true;
    if (m_stopUses)
        *m_stopUses = true; // They would be those of a shop of before.
    if (isOther) {
        forget();
        m_book = nullptr;
        m_used = nullptr;
        m_wanted.clear();
        m_rows.become(nullptr, {});
        m_fields.become({});
        m_panel.show(nullptr, {});
        m_editor.close();
        m_importing.empty();
        m_editor.setBook(nullptr);
    }
    make();
    Q_EMIT changed();
}

void PartsDesk::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    make();
    Q_EMIT changed();
}

void PartsDesk::setInInches(bool inInches)
{
    m_units = inInches ? Units::Inch : Units::Metric;
    m_rows.setUnits(m_units);
    m_panel.setUnits(m_units);
    showCard();
}

void PartsDesk::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || m_making.isUnderWay())
        return;
    m_isStale = false;
    m_making.run([this, workshop = m_workshop]() -> Errand::Back {
        const auto book = CardBook::of(workshop);
        return [this, book] {
            if (book->book->workshop == m_workshop)
                take(book);
            make(); // The shop may have gone on meanwhile.
        };
    });
}

void PartsDesk::take(const std::shared_ptr<const CardBook> &book)
{
    m_book = book;
    m_editor.setBook(book);
    showFields();
    m_panel.show(book->book, m_wanted.isEmpty() ? m_panel.number() : m_wanted);
    m_wanted.clear();
    sift();
    workOutUses();
}

void PartsDesk::workOutUses()
{
    if (!m_book || m_working.isUnderWay() || (m_used && m_used->workshop == m_workshop))
        return;
    m_stopUses = std::make_shared<std::atomic<bool>>(false);
    m_working.run([this, workshop = m_workshop, stop = m_stopUses]() -> Errand::Back {
        const auto used = WhereUsed::of(workshop, *stop);
        return [this, used] {
            if (used && used->workshop == m_workshop) {
                m_used = used;
                return showCard();
            }
            if (m_isLooking && !m_isStale)
                workOutUses();
        };
    });
}

void PartsDesk::showFields()
{
    std::vector<Row> fields;
    if (m_book) {
        fields = narrowRows(*m_book->book, m_asked);
        std::erase_if(fields, [](const Row &field) { return !isOfCards(field); });
    }
    m_fields.become(std::move(fields));
    Q_EMIT changed();
}

void PartsDesk::sift()
{
    if (!m_book)
        return;
    if (m_sifting.isUnderWay()) {
        m_siftAgain = true;
        return;
    }
    Narrowing asked = m_asked;
    asked.where = Narrowing::Catalogue;
    m_sifting.run([this, book = m_book, asked]() -> Errand::Back {
        const auto lines = std::make_shared<std::vector<std::uint32_t>>(sifted(*book->book, asked));
        const auto cards = book->book->workshop->catalogue.parts().size();
        std::erase_if(*lines, [cards](std::uint32_t line) { return line >= cards; });
        return [this, book, lines] {
            if (std::exchange(m_siftAgain, false) || book != m_book)
                return sift();
            m_rows.become(book->book, std::move(*lines));
            if (m_rows.rowOf(m_panel.number()) < 0)
                m_panel.show(book->book, m_rows.numberAt(0));
            Q_EMIT changed();
        };
    });
}

void PartsDesk::select(const QString &number)
{
    if (m_book && number != m_panel.number())
        m_panel.show(m_book->book, number);
}

bool PartsDesk::isNarrowed() const
{
    return !(m_asked == Narrowing());
}

void PartsDesk::find(const QString &typed)
{
    m_asked.words = wordsTyped(unlocalised(typed).toStdString());
    sift();
}

void PartsDesk::narrow(const QString &field, int choice)
{
    if (!m_book)
        return;
    m_asked = narrowed(*m_book->book, m_asked, {field, choice});
    showFields();
    sift();
}

void PartsDesk::forget()
{
    m_asked = {};
    Q_EMIT forgotten();
}

void PartsDesk::clear()
{
    forget();
    showFields();
    sift();
}

bool PartsDesk::scan(const QString &code)
{
    const Part *found =
        m_book ? m_book->book->workshop->catalogue.find(code.trimmed().toStdString()) : nullptr;
    if (found == nullptr)
        return false;
    goTo(said(found->number));
    Q_EMIT arrived();
    return true;
}

void PartsDesk::goTo(const QString &number)
{
    if (!m_book)
        return;
    forget();
    showFields();
    if (m_book->book->workshop->catalogue.find(number.toStdString()))
        m_panel.show(m_book->book, number);
    else
        m_wanted = number; // It comes with the next book.
    sift();
}

QString PartsDesk::heading() const
{
    const QString asked = m_book ? saidNarrowing(*m_book->book, m_asked) : QString();
    return asked.isEmpty() ? tr("Parts") : tr("Parts: %1").arg(asked);
}

QString PartsDesk::about() const
{
    if (!m_book)
        return {};
    const int all = static_cast<int>(m_book->book->workshop->catalogue.parts().size());
    const QString cards =
        tr("%1 of %2 cards").arg(QLocale().toString(m_rows.count()), QLocale().toString(all));
    const int row = m_rows.rowOf(m_panel.number());
    return row < 0 ? cards
                   : tr("card %1 of %2  ·  %3 in the index")
                         .arg(QLocale().toString(row + 1), QLocale().toString(m_rows.count()),
                              QLocale().toString(all));
}

QString PartsDesk::nothing() const
{
    if (!m_workshop)
        return tr("Nothing is known here of this shop's parts.");
    if (!m_book)
        return tr("Looking through the cards …");
    if (m_rows.count() > 0)
        return {};
    return m_book->book->workshop->catalogue.parts().empty()
               ? tr("There is no card yet. Write the first one, or import a supplier's list.")
               : tr("No card is like that. Clear what you asked for.");
}

} // namespace flarestock
