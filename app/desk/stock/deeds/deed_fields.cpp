// SPDX-License-Identifier: MIT
//
// The fields of a deed's form, each with what is most likely meant. What only the person knows
// comes first, since there the keyboard is.

#include "app/desk/form/form.h"
#include "app/desk/stock/deeds/deed_words.h"
#include "app/desk/stock/deeds/stock_deed.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/stockroom/asked.h"

#include <algorithm>

namespace flarestock {

namespace {

class Fields {
public:
    Fields(StockDeed deed, const DeedSubject &subject) : m_deed(deed), m_subject(subject) {}

    void typed(const char *key, const QString &title, const QString &value, const QString &hint)
    {
        m_rows.push_back(typedField(key, title, value, hint));
    }
    void figure(const char *key, const QString &title, const QString &value, const QString &hint)
    {
        m_rows.push_back(figureField(key, title, value, hint));
    }
    void choice(const char *key, const QString &title, const QStringList &choices, int value = 0)
    {
        m_rows.push_back(choiceField(key, title, choices, value));
    }
    /// One of the ids of choicesOf(), by their titles.
    void oneOf(const char *key, const QString &title)
    {
        QStringList titles;
        for (const std::string &id : choicesOf(m_deed, key, m_subject))
            titles.append(titleOf(id));
        choice(key, title, titles);
    }
    void quantity(const QString &value)
    {
        const bool isLength = flarestock::isLength(m_subject.entry->part->unit);
        figure("quantity", isLength ? DeedWords::tr("how much") : DeedWords::tr("how many"), value,
               isLength ? DeedWords::tr("5 ft 6 in, 1.2 m") : QString());
    }
    void place(const QString &value)
    {
        typed("to", DeedWords::tr("to which place"), value,
              DeedWords::tr("type or scan the bin: C4"));
    }
    void condition()
    {
        choice("now", DeedWords::tr("from now on"),
               QStringList{DeedWords::tr("as it was")} + allConditions());
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    [[nodiscard]] QString titleOf(const std::string &id) const
    {
        const Workshop &shop = *m_subject.book->workshop;
        if (id.empty())
            return DeedWords::tr("whoever comes");
        if (id.rfind("build|", 0) == 0) {
            const BuildPlan *plan = shop.build(id.substr(6));
            return DeedWords::tr("build: %1")
                .arg(said(plan->title.empty() ? plan->id : plan->title));
        }
        const Place *place = shop.ledger.place(id);
        return said(place ? place->title : id);
    }

    StockDeed m_deed;
    const DeedSubject &m_subject;
    std::vector<Row> m_rows;
};

/// As the person can type it back: no grouping, nothing rounded.
QString asTyped(std::int64_t smallest, const DeedSubject &subject)
{
    return typedAmount(Quantity::ofSmallest(smallest, subject.entry->part->unit), subject.units);
}

QString allThere(const DeedSubject &subject)
{
    return asTyped(subject.there(), subject);
}

/// One piece of what is counted; of a length all that lies there.
QString someThere(const DeedSubject &subject)
{
    return isLength(subject.entry->part->unit) ? allThere(subject) : QStringLiteral("1");
}

/// Where it lies or is kept, the nearest first.
QString homeOf(const DeedSubject &subject)
{
    if (subject.pieces && subject.place() && isStock(subject.place()->kind))
        return said(subject.pieces->place);
    if (!subject.entry->places.empty())
        return said(subject.book->places.at(subject.entry->places.front()));
    return subject.book->places.empty() ? QString() : said(subject.book->places.front());
}

void addKeeping(Fields &fields, const DeedSubject &subject)
{
    const QString home = homeOf(subject);
    const auto &keepings = subject.book->workshop->notes.keepings;
    const auto kept = keepings.find({subject.entry->number, home.toStdString()});
    fields.figure("least", DeedWords::tr("at least"),
                  kept == keepings.end() ? QStringLiteral("1")
                                         : asTyped(kept->second.least, subject),
                  DeedWords::tr("0: it is kept there no more"));
    fields.figure("most", DeedWords::tr("filled up to"),
                  kept == keepings.end() ? QString() : asTyped(kept->second.most, subject),
                  DeedWords::tr("the same, where nothing is written"));
    fields.typed("place", DeedWords::tr("which place"), home, DeedWords::tr("type or scan it: C4"));
}

void addReceiving(Fields &fields, const DeedSubject &subject)
{
    fields.oneOf("from", DeedWords::tr("from whom"));
    fields.quantity({});
    fields.figure("cost", DeedWords::tr("what all of it cost"), {},
                  said(subject.book->workshop->settings.currency.code()));
    fields.place(homeOf(subject));
    fields.typed("lot", DeedWords::tr("lot, serial or name of the piece"), {},
                 isLength(subject.entry->part->unit) ? DeedWords::tr("a piece needs one: COIL-17")
                                                     : DeedWords::tr("where it has one"));
    fields.typed("document", DeedWords::tr("delivery note"), {}, {});
    fields.typed("useBy", DeedWords::tr("may be used until"), {},
                 DeedWords::tr("%1, where it ages").arg(dayAsTyped("2027-03-31")));
    fields.oneOf("owner", DeedWords::tr("for which car alone"));
}

void addLevel(Fields &fields, const DeedSubject &subject)
{
    const QString home = homeOf(subject);
    const auto &levels = subject.book->workshop->notes.levels;
    const auto seen = levels.find({subject.entry->number, home.toStdString()});
    fields.choice(
        "level", DeedWords::tr("how much is there"),
        {saidLevel(StockLevel::Plenty), saidLevel(StockLevel::Low), saidLevel(StockLevel::Out)},
        seen == levels.end() ? 0 : 2 - static_cast<int>(seen->second.level));
    fields.typed("place", DeedWords::tr("which place"), home, DeedWords::tr("type or scan it: C4"));
    fields.typed("holds", DeedWords::tr("what lies in it"),
                 seen == levels.end() ? QString() : said(seen->second.holds),
                 DeedWords::tr("of a tin of odds: M5 to M8, stainless"));
}

} // namespace

std::vector<Row> fieldRows(StockDeed deed, const DeedSubject &subject)
{
    Fields fields(deed, subject);
    switch (deed) {
    case StockDeed::Take:
        fields.quantity(someThere(subject));
        fields.oneOf("for", DeedWords::tr("for what"));
        break;
    case StockDeed::PutBack:
        fields.quantity(allThere(subject));
        fields.place(homeOf(subject));
        fields.condition();
        break;
    case StockDeed::Move:
        fields.quantity(someThere(subject));
        fields.place({});
        fields.condition();
        break;
    case StockDeed::Count:
        fields.figure("found", DeedWords::tr("how many lie there"), {},
                      DeedWords::tr("what you have counted"));
        fields.typed("place", DeedWords::tr("which place"), homeOf(subject),
                     DeedWords::tr("type or scan it: C4"));
        break;
    case StockDeed::Receive:
        addReceiving(fields, subject);
        break;
    case StockDeed::Lend:
        fields.quantity(someThere(subject));
        fields.oneOf("whom", DeedWords::tr("to whom"));
        fields.typed("until", DeedWords::tr("until which day"), {}, dayAsTyped("2026-12-31"));
        break;
    case StockDeed::Scrap:
        fields.quantity(someThere(subject));
        fields.typed("why", DeedWords::tr("why"), {}, DeedWords::tr("thread torn"));
        break;
    case StockDeed::Judge:
        fields.quantity(allThere(subject));
        fields.choice("is", DeedWords::tr("from now on"), allConditions());
        break;
    case StockDeed::Keep:
        addKeeping(fields, subject);
        break;
    case StockDeed::Level:
        addLevel(fields, subject);
        break;
    }
    return fields.take();
}

std::vector<std::string> choicesOf(StockDeed deed, const char *field, const DeedSubject &subject)
{
    std::vector<std::string> ids;
    const Workshop &shop = *subject.book->workshop;
    const auto add = [&](PlaceKind kind) {
        for (const Place &place : shop.ledger.places()) {
            if (place.kind == kind)
                ids.push_back(place.id);
        }
    };
    if (deed == StockDeed::Take) {
        for (const BuildPlan &plan : shop.builds) {
            if (!shop.notes.build(plan.id).isDone())
                ids.push_back("build|" + plan.id);
        }
        add(PlaceKind::Car);
        add(PlaceKind::UsedUp);
    } else if (deed == StockDeed::Lend) {
        add(PlaceKind::Borrower);
        add(PlaceKind::Repair);
    } else if (deed == StockDeed::Receive && std::string_view(field) == "from") {
        add(PlaceKind::Supplier);
    } else if (deed == StockDeed::Receive && std::string_view(field) == "owner") {
        ids.emplace_back();
        add(PlaceKind::Car);
    }
    return ids;
}

QString saidTooMuch(const FilledIn &filled)
{
    const DeedSubject &subject = filled.subject;
    const Place *place = subject.place();
    const bool takes = filled.deed == StockDeed::Take || filled.deed == StockDeed::PutBack ||
                       filled.deed == StockDeed::Move || filled.deed == StockDeed::Lend ||
                       filled.deed == StockDeed::Scrap || filled.deed == StockDeed::Judge;
    if (!takes || place == nullptr || subject.entry->part == nullptr)
        return {};
    const Part &part = *subject.entry->part;
    const auto asked = quantityAsked(filled.figures("quantity"), part);
    if (!asked || *asked <= subject.there())
        return {};
    return DeedWords::tr("%3 holds %1 of %2, and %4 would go. If more lies there, count it first.")
        .arg(saidAmount(Quantity::ofSmallest(subject.there(), part.unit), subject.units),
             said(part.number), said(place->id),
             saidAmount(Quantity::ofSmallest(*asked, part.unit), subject.units));
}

} // namespace flarestock
