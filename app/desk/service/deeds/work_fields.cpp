// SPDX-License-Identifier: MIT
//
// The fields of a work's form, each with what is most likely meant.

#include "app/desk/form/form.h"
#include "app/desk/service/deeds/work_deed.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/stockroom/picking.h"

#include <algorithm>

namespace flarestock {

namespace {

class WorkFields {
public:
    explicit WorkFields(const WorkSubject &subject) : m_subject(subject) {}

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
    void day(const QString &title, const std::string &day)
    {
        typed("day", title, dayAsTyped(day), dayAsTyped("2026-12-12"));
    }
    void note()
    {
        typed("note", ServiceWords::tr("what was found"), {},
              ServiceWords::tr("clean, fibres, rust, metal"));
    }
    /// Where joints with rings are opened for it. `fresh`: they are renewed unless one says no.
    void rings(bool fresh)
    {
        const auto words = m_subject.book->garage.words.find(m_subject.at.position);
        if (words == m_subject.book->garage.words.end() || words->second.joints.empty())
            return;
        const QStringList choices{ServiceWords::tr("fresh ones go in"),
                                  ServiceWords::tr("the old ones stay")};
        choice("rings", ServiceWords::tr("rings of its joints"), choices, fresh ? 0 : 1);
    }
    void old(bool mayBeUsual)
    {
        const QString home = mayBeUsual ? QString() : homeOf();
        typed("oldTo", ServiceWords::tr("where the old one goes"), home,
              mayBeUsual ? ServiceWords::tr("empty: scrap, or to be checked")
                         : ServiceWords::tr("type or scan the bin: C4"));
        QStringList conditions = allConditions();
        if (mayBeUsual)
            conditions.prepend(ServiceWords::tr("as usual"));
        choice("oldIs", ServiceWords::tr("what the old one is then"), conditions,
               mayBeUsual ? 0 : static_cast<int>(PieceCondition::ToBeChecked));
        typed("tag", ServiceWords::tr("its tag from then on"), {},
              ServiceWords::tr("so that its washes stay known"));
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    /// Where such parts lie, the nearest first; else the first place of all.
    [[nodiscard]] QString homeOf() const
    {
        const Ledger &ledger = m_subject.book->workshop->ledger;
        std::string first;
        for (const Place &place : ledger.places()) {
            if (!isStock(place.kind))
                continue;
            first = first.empty() ? place.id : first;
            for (const auto &[key, held] : ledger.balancesOf(m_subject.piece()->piece.part)) {
                if (key.place == place.id && held.quantity > 0)
                    return said(place.id);
            }
        }
        return said(first);
    }

    const WorkSubject &m_subject;
    std::vector<Row> m_rows;
};

void addReplacing(WorkFields &fields, const WorkSubject &subject)
{
    const FittedPiece &piece = *subject.piece();
    const Part *part = subject.book->workshop->part(piece.piece.part);
    fields.note(); // First: Enter there does it.
    QStringList from;
    for (const TakenFrom &one : takenFromChoices(subject))
        from.append(one.label);
    if (part)
        fields.choice("from", ServiceWords::tr("what goes in, from"), from);
    else
        fields.typed("lot", ServiceWords::tr("bottle or lot of what goes in"), {}, {});
    fields.typed("with", ServiceWords::tr("part"), said(piece.piece.part),
                 ServiceWords::tr("its number"));
    if (part && isLength(part->unit))
        fields.figure("length", ServiceWords::tr("length"),
                      typedAmount(Quantity::ofSmallest(piece.quantity, part->unit), subject.units),
                      {});
    if (part)
        fields.old(true);
    else
        fields.typed("made", ServiceWords::tr("its bottle was opened on"),
                     dayAsTyped(subject.book->today), dayAsTyped("2026-12-12"));
    fields.rings(true);
    fields.day(ServiceWords::tr("done on"), subject.book->today);
}

/// What was there last, where the position is empty.
std::string partBefore(const WorkSubject &subject)
{
    for (const PieceOut &out : subject.book->garage.life(subject.at.car).out) {
        if (out.position == subject.at.position && !subject.piece())
            return out.piece.part;
    }
    return {};
}

void addFitting(WorkFields &fields, const WorkSubject &subject)
{
    const PieceOut *out = subject.out();
    const bool isEmpty = !subject.at.position.empty() && !subject.piece();
    const std::string position = out ? out->position : isEmpty ? subject.at.position : "";
    fields.typed("part", ServiceWords::tr("part or fluid"),
                 said(out ? out->piece.part : partBefore(subject)),
                 ServiceWords::tr("type or scan its number"));
    fields.typed("position", ServiceWords::tr("where in the car"), said(position),
                 ServiceWords::tr("may be a new name"));
    fields.choice("from", ServiceWords::tr("it comes from"),
                  {ServiceWords::tr("it was in the car already"),
                   ServiceWords::tr("the stock, nearest first"),
                   ServiceWords::tr("a spare in the car")},
                  isEmpty ? 1 : 0);
    fields.typed("lot", ServiceWords::tr("lot, serial or tag"),
                 out ? said(out->piece.lot) : QString(), {});
    fields.day(ServiceWords::tr("in since"), subject.book->today);
    fields.figure("washed", ServiceWords::tr("washed before"), QStringLiteral("0"), {});
    fields.figure("hadRuns", ServiceWords::tr("runs before"), QStringLiteral("0"), {});
    fields.figure("hadHours", ServiceWords::tr("hours before"), QStringLiteral("0"), {});
    fields.typed("made", ServiceWords::tr("made, cured or opened on"), {},
                 dayAsTyped("2026-12-12"));
    fields.typed("useBy", ServiceWords::tr("may be used until"), {}, dayAsTyped("2026-12-12"));
}

void addRunning(WorkFields &fields, const WorkSubject &subject)
{
    const auto events = ranChoices(subject);
    QStringList titles;
    for (const Event *one : events)
        titles.append(said(one->title));
    titles.append(ServiceWords::tr("something else, written below"));
    // What is only to come it can hardly have run at.
    const bool isLikely = !events.empty() && events.front()->firstDay <= subject.book->today;
    const auto expected = [&](const std::optional<Decimal> Event::*number) {
        return isLikely && events.front()->*number
                   ? localised(said((*(events.front()->*number)).stripped().text()))
                   : QString();
    };
    fields.figure("runs", ServiceWords::tr("runs"), expected(&Event::runs), QStringLiteral("6"));
    fields.figure("hours", ServiceWords::tr("hours of the engine"), expected(&Event::hours),
                  localised(QStringLiteral("2.5")));
    fields.choice("event", ServiceWords::tr("at"), titles,
                  isLikely ? 0 : static_cast<int>(titles.size()) - 1);
    fields.typed("other", ServiceWords::tr("or at something else"), {},
                 ServiceWords::tr("a test day"));
    const std::string last = isLikely ? events.front()->lastDay : subject.book->today;
    fields.day(ServiceWords::tr("on"), std::min(last, subject.book->today));
}

} // namespace

std::vector<Row> workFields(CarDeed deed, const WorkSubject &subject)
{
    WorkFields fields(subject);
    switch (deed) {
    case CarDeed::Replace:
        addReplacing(fields, subject);
        return fields.take();
    case CarDeed::Fit:
        addFitting(fields, subject);
        return fields.take();
    case CarDeed::Ran:
        addRunning(fields, subject);
        return fields.take();
    case CarDeed::TakeOut:
        fields.old(false);
        fields.rings(true);
        break;
    case CarDeed::Wash:
        fields.note();
        fields.rings(false);
        fields.day(ServiceWords::tr("done on"), subject.book->today);
        return fields.take();
    case CarDeed::Inspect:
    case CarDeed::Damaged:
        break;
    }
    fields.note();
    fields.day(ServiceWords::tr("done on"), subject.book->today);
    return fields.take();
}

std::vector<TakenFrom> takenFromChoices(const WorkSubject &subject)
{
    std::vector<TakenFrom> all;
    const Workshop &shop = *subject.book->workshop;
    const Part *part = subject.piece() ? shop.part(subject.piece()->piece.part) : nullptr;
    if (!part)
        return all;
    const auto free = freePieces(*part, shop, {{}, subject.at.car, subject.book->today});
    for (const Place &place : shop.ledger.places()) {
        for (const auto &[key, some] : free) {
            if (key.place != place.id || some < 1)
                continue;
            const QString amount =
                saidAmount(Quantity::ofSmallest(some, part->unit), subject.units);
            const QString where =
                key.lot.empty() ? said(place.id)
                                : ServiceWords::tr("%1, %2").arg(said(place.id), said(key.lot));
            all.push_back({place.id, key.lot, ServiceWords::tr("%1: %2 free").arg(where, amount)});
        }
    }
    // A shop that travels has its own places at hand, whatever is nearer to the shop at home.
    const auto &along = subject.book->along;
    std::stable_partition(all.begin(), all.end(), [&along](const TakenFrom &one) {
        return std::find(along.begin(), along.end(), one.place) != along.end();
    });
    if (all.empty())
        all.push_back({{}, {}, ServiceWords::tr("none is free in the stock")});
    all.push_back({subject.at.car, {}, ServiceWords::tr("a spare that lies in the car")});
    return all;
}

std::vector<const Event *> ranChoices(const WorkSubject &subject)
{
    std::vector<const Event *> past;
    std::vector<const Event *> others;
    const auto &outings = subject.book->garage.life(subject.at.car).outings;
    for (const Event &event : subject.book->workshop->season.events()) {
        if (!event.takes(subject.at.car))
            continue;
        const bool isTold = std::any_of(outings.begin(), outings.end(),
                                        [&](const Outing &one) { return one.event == event.id; });
        if (event.firstDay <= subject.book->today && !isTold)
            past.insert(past.begin(), &event); // The last one first.
        else
            others.push_back(&event);
    }
    // Then those that are to come, the next first; then those that are told already.
    std::stable_sort(others.begin(), others.end(), [&](const Event *a, const Event *b) {
        return (a->lastDay >= subject.book->today) > (b->lastDay >= subject.book->today);
    });
    past.insert(past.end(), others.begin(), others.end());
    return past;
}

} // namespace flarestock
