// SPDX-License-Identifier: MIT

#include "app/desk/stock/card/part_card.h"

#include "app/buyer/costing/still_here.h"
#include "app/desk/language/sentences.h"
#include "app/desk/stock/card/card_words.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "app/stockroom/away.h"
#include "app/workshop/made_up.h"
#include "app/workshop/suppliers.h"
#include "model/exact/case_fold.h"
#include "model/ports/size_table.h"

#include <QDateTime>

#include <set>

namespace flarestock {

namespace {

class Card {
public:
    explicit Card(const CardAsked &asked)
        : m_asked(asked), m_shop(*asked.book.workshop), m_entry(asked.entry)
    {
    }

    void addMadeUp()
    {
        const auto hose = m_shop.notes.hoses.find(m_entry.number);
        if (hose == m_shop.notes.hoses.end() || m_entry.part == nullptr)
            return;
        add(CardWords::tr("made up"),
            {said(describe(hose->second, m_entry.part->unit)),
             CardWords::tr("made %1 by %2")
                 .arg(saidDate(hose->second.madeOn), said(hose->second.who)),
             {},
             false});
        if (!hose->second.useBy.empty())
            add(CardWords::tr("made up"),
                {CardWords::tr("to be used until %1").arg(saidDate(hose->second.useBy)),
                 {},
                 {},
                 hose->second.useBy < m_asked.book.day});
    }
    void addPromised()
    {
        const Claims &claims = m_shop.ledger.claims();
        for (auto at = claims.lower_bound({m_entry.number, {}});
             at != claims.end() && at->first.part == m_entry.number; ++at) {
            const auto &[key, claim] = *at;
            if (claim.outstanding() <= 0 || m_entry.part == nullptr)
                continue;
            const BuildPlan *plan = m_shop.build(key.build);
            add(CardWords::tr("promised"),
                {said(plan && !plan->title.empty() ? plan->title : key.build),
                 plan && !plan->by.empty() ? CardWords::tr("by %1").arg(saidDate(plan->by))
                                           : QString(),
                 amount(claim.outstanding()), false});
        }
    }
    void addAway()
    {
        if (m_asked.movements == nullptr || m_entry.part == nullptr)
            return;
        for (const Away &away : awayNow(*m_asked.movements, m_shop)) {
            if (away.part->number != m_entry.number)
                continue;
            const bool isLate = away.isOverdue(m_asked.book.day);
            QString until = away.until.empty()
                                ? CardWords::tr("nobody has said until when")
                                : CardWords::tr("until %1").arg(saidDate(away.until));
            if (isLate)
                until = CardWords::tr("overdue since %1").arg(saidDate(away.until));
            add(CardWords::tr("away"),
                {CardWords::tr("%1: %2").arg(saidAs(away.as), titleOf(away.at)), until,
                 amount(away.quantity), isLate});
        }
    }
    void addKept()
    {
        for (const auto &[at, keeping] : m_shop.notes.keepings) {
            if (keeping.part != m_entry.number || m_entry.part == nullptr)
                continue;
            const QString most = keeping.most == keeping.least
                                     ? QString()
                                     : CardWords::tr("filled up to %1").arg(amount(keeping.most));
            add(CardWords::tr("kept"),
                {titleOf(keeping.place), most,
                 CardWords::tr("at least %1").arg(amount(keeping.least)), false});
        }
    }
    void addEvents()
    {
        const QString head = CardWords::tr("what happened");
        if (m_asked.movements == nullptr || m_entry.part == nullptr)
            return;
        for (const Movement &one : *m_asked.movements) {
            if (one.reverses)
                m_reversed.insert(*one.reverses);
        }
        std::size_t shown = 0;
        for (auto at = m_asked.movements->rbegin();
             at != m_asked.movements->rend() && shown < m_asked.events; ++at, ++shown)
            add(head, eventOf(*at));
        if (m_asked.movements->size() > shown)
            add(head, {CardWords::tr("and %1 older").arg(m_asked.movements->size() - shown),
                       {},
                       {},
                       false});
    }
    void addOffers()
    {
        if (m_entry.part == nullptr || m_shop.madeUp.contains(folded(m_entry.number)))
            return;
        for (const Offer &offer : m_shop.catalogue.offers(*m_entry.part)) {
            QStringList more;
            if (offer.pack != Decimal(1))
                more.append(CardWords::tr("in packs of %1").arg(saidNumber(offer.pack)));
            for (std::size_t at = 1; at < offer.breaks.size(); ++at)
                more.append(CardWords::tr("from %1: %2")
                                .arg(saidNumber(offer.breaks[at].from),
                                     saidNumber(offer.breaks[at].priceEach)));
            if (offer.leadDays > 0)
                more.append(CardWords::tr("%1 days").arg(offer.leadDays));
            add(CardWords::tr("who sells it"),
                {said(supplierName(offer.supplier, m_shop.catalogue)),
                 more.join(QStringLiteral(", ")),
                 saidMoney({offer.breaks.front().priceEach, offer.currency}), false});
        }
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    struct Line {
        QString title;
        QString detail;
        QString figure;
        bool flagged;
        QString back = {}; ///< The movement that can be taken back.
    };
    void add(const QString &head, const Line &line)
    {
        const bool isFirst = head != m_head;
        m_head = head;
        QStringList says{line.title, line.detail, line.figure};
        says.removeAll(QString());
        m_rows.push_back({QString::number(m_rows.size()),
                          {isFirst ? head : QString(), line.title, line.detail, line.figure,
                           line.flagged, says.join(QStringLiteral(", ")), line.back}});
    }
    Line eventOf(const Movement &one) const
    {
        const QDateTime at = QDateTime::fromMSecsSinceEpoch(one.at);
        QString title =
            CardWords::tr("%1  %2 → %3").arg(saidDeed(one.deed), said(one.from), said(one.to));
        if (one.from == one.to)
            title = CardWords::tr("%1 at %2").arg(saidDeed(one.deed), said(one.to));
        if (one.reverses)
            title = CardWords::tr("taken back: %1").arg(title);
        QStringList detail{saidDate(at.date())};
        const auto besides = onlyCostIsAnother(one.document);
        const auto add = [&detail](const std::string &some) {
            if (!some.empty())
                detail.append(said(some));
        };
        add(one.newLot.value_or(one.lot));
        add(besides.value_or(one.document));
        if (besides)
            detail.append(CardWords::tr("only its cost is another"));
        add(one.who);
        add(one.why);
        if (one.newCondition)
            detail.append(CardWords::tr("%1 from then on").arg(saidCondition(*one.newCondition)));
        const bool isOver = one.reverses || m_reversed.contains(one.id);
        return {title, detail.join(QStringLiteral(", ")), amount(one.quantity), false,
                isOver ? QString() : said(one.id.text())};
    }
    static QString saidAs(AwayAs as)
    {
        switch (as) {
        case AwayAs::Lent:
            return CardWords::tr("lent");
        case AwayAs::Borrowed:
            return CardWords::tr("borrowed");
        case AwayAs::Repair:
            break;
        }
        return CardWords::tr("out for repair");
    }
    QString amount(std::int64_t smallest) const
    {
        return saidStock(smallest, *m_entry.part, m_asked.units);
    }
    QString titleOf(const std::string &place) const
    {
        const Place *found = m_shop.ledger.place(place);
        return said(found ? found->title : place);
    }
    const CardAsked &m_asked;
    const Workshop &m_shop;
    const StockEntry &m_entry;
    std::vector<Row> m_rows;
    QString m_head;
    std::set<MovementId> m_reversed; ///< What was taken back already.
};

} // namespace

QStringList portCells()
{
    return {QStringLiteral("name"), QStringLiteral("port"), QStringLiteral("thread"),
            QStringLiteral("says")};
}

std::vector<Row> portRows(const Part &part)
{
    std::vector<Row> rows;
    for (const PartPort &port : part.ports) {
        const SizeRow *size = sizeOf(port.port);
        QStringList more;
        if (size && size->thread)
            more.append(said(size->thread->name));
        if (size && !size->ring.empty() && port.port.gender == Gender::Male)
            more.append(CardWords::tr("ring %1").arg(said(size->ring)));
        const QString words = said(port.port.text());
        const QString thread = more.join(QStringLiteral(", "));
        rows.push_back({said(port.name),
                        {said(port.name), words, thread,
                         CardWords::tr("%1: %2, %3").arg(said(port.name), words, thread)}});
    }
    return rows;
}

QStringList cardCells()
{
    return {QStringLiteral("head"),   QStringLiteral("title"),   QStringLiteral("detail"),
            QStringLiteral("figure"), QStringLiteral("flagged"), QStringLiteral("says"),
            QStringLiteral("back")};
}

std::vector<Row> cardRows(const CardAsked &asked)
{
    Card card(asked);
    card.addMadeUp();
    card.addPromised();
    card.addAway();
    card.addKept();
    card.addEvents();
    card.addOffers();
    return card.take();
}

QString cardAbout(const StockEntry &entry)
{
    if (entry.part == nullptr)
        return CardWords::tr("a tin of odds");
    QStringList about{inWords(text(entry.part->kind))};
    for (const std::string &some : {entry.part->material, entry.part->seal}) {
        if (!some.empty())
            about.append(said(some));
    }
    return about.join(QStringLiteral(", "));
}

} // namespace flarestock
