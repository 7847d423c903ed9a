// SPDX-License-Identifier: MIT
//
// The fields of what is done at the bench, each with what is most likely meant.

#include "app/desk/form/form.h"
#include "app/desk/stock/bench/bench_deed.h"
#include "app/desk/stock/bench/bench_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/stockroom/bench/hose_materials.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Where it lies, or where anything does.
QString nearestPlace(const DeedSubject &subject)
{
    if (subject.place() != nullptr && isStock(subject.place()->kind))
        return said(subject.pieces->place);
    if (!subject.entry->places.empty())
        return said(subject.book->places.at(subject.entry->places.front()));
    return subject.book->places.empty() ? QString() : said(subject.book->places.front());
}

std::int64_t inStock(const std::string &number, const StockBook &book)
{
    const StockEntry *entry = book.find(number);
    return entry == nullptr ? 0 : entry->free;
}

/// Hose ends that fit, those that are free here first.
std::vector<std::string> endsOf(const DeedSubject &subject)
{
    std::vector<std::string> ends;
    const Workshop &shop = *subject.book->workshop;
    for (const Part &part : shop.catalogue.parts()) {
        if (part.as<HoseEndFacts>() && hoseEndAsked(part.number, *subject.entry->part, shop))
            ends.push_back(part.number);
    }
    std::stable_sort(ends.begin(), ends.end(), [&](const std::string &a, const std::string &b) {
        return (inStock(a, *subject.book) > 0) > (inStock(b, *subject.book) > 0);
    });
    return ends;
}

QString saidEnd(const std::string &number, const DeedSubject &subject)
{
    const auto *end = subject.book->workshop->part(number)->as<HoseEndFacts>();
    const QString angle = end->angleDegrees == 0 ? BenchWords::tr("straight")
                                                 : BenchWords::tr("%1°").arg(end->angleDegrees);
    return BenchWords::tr("%1, %2 (%3 free)")
        .arg(said(number), angle, QLocale().toString(inStock(number, *subject.book)));
}

QString saidChoice(const QString &field, const std::string &id, const DeedSubject &subject)
{
    if (field == QStringLiteral("start") || field == QStringLiteral("far"))
        return saidEnd(id, subject);
    if (field == QStringLiteral("only"))
        return id.empty() ? BenchWords::tr("all that is in it") : said(id);
    if (field == QStringLiteral("lot"))
        return id.empty() ? BenchWords::tr("the shortest that gives it") : said(id);
    if (field == QStringLiteral("build")) {
        const BuildPlan *plan = subject.book->workshop->build(id);
        return plan == nullptr ? BenchWords::tr("no build: to a place")
                               : said(plan->title.empty() ? plan->id : plan->title);
    }
    if (id.rfind("lot|", 0) == 0)
        return BenchWords::tr("%1, the piece in hand").arg(said(id.substr(4)));
    return id == text(CutAim::RemnantsFirst) ? BenchWords::tr("remnants first")
                                             : BenchWords::tr("the least waste");
}

Row oneOf(const char *key, const QString &title, const DeedSubject &subject)
{
    const QString field = QString::fromLatin1(key);
    QStringList titles;
    for (const std::string &id : benchChoices(field, subject))
        titles.append(saidChoice(field, id, subject));
    return choiceField(key, title, titles);
}

Row placeField(const QString &title, const DeedSubject &subject)
{
    return typedField("to", title, nearestPlace(subject),
                      BenchWords::tr("type or scan the bin: C4"));
}

std::vector<Row> cutFields(const DeedSubject &subject)
{
    return {
        figureField("lengths", BenchWords::tr("which lengths"), {},
                    BenchWords::tr("24 in + 2 x 2 ft 4 in; none: the build's")),
        oneOf("build", BenchWords::tr("for which build"), subject),
        oneOf("plan", BenchWords::tr("off which piece"), subject),
        placeField(BenchWords::tr("to which place"), subject),
        figureField("kerf", BenchWords::tr("what each cut takes"), QStringLiteral("1/16 in"), {}),
        figureField("least", BenchWords::tr("a shorter rest goes to scrap"), QStringLiteral("4 in"),
                    {})};
}

/// The next of L-1, L-2 … that nothing is called.
QString nextTag(const Workshop &shop)
{
    int next = 1;
    while (shop.part("L-" + std::to_string(next)) != nullptr)
        ++next;
    return QStringLiteral("L-%1").arg(next);
}

std::vector<Row> makeUpFields(const DeedSubject &subject)
{
    return {figureField("cut", BenchWords::tr("length, as it is cut"), {},
                        BenchWords::tr("22 1/2 in, 570 mm")),
            oneOf("start", BenchWords::tr("end at its start"), subject),
            oneOf("far", BenchWords::tr("end at its far end"), subject),
            typedField("tag", BenchWords::tr("tag"), nextTag(*subject.book->workshop), {}),
            placeField(BenchWords::tr("to which place"), subject),
            oneOf("lot", BenchWords::tr("off which piece"), subject),
            figureField("clocking", BenchWords::tr("clocking, degrees"), {},
                        BenchWords::tr("90, where the ends are bent")),
            typedField("useBy", BenchWords::tr("may be used until"), {},
                       BenchWords::tr("%1, where it ages").arg(dayAsTyped("2031-11-30"))),
            choiceField("result", BenchWords::tr("proof test"),
                        {BenchWords::tr("not made yet"), BenchWords::tr("passed"),
                         BenchWords::tr("failed")}),
            figureField("pressure", BenchWords::tr("held at"), {}, QStringLiteral("2000 psi")),
            typedField("medium", BenchWords::tr("with what"), {}, BenchWords::tr("water")),
            typedField("testedBy", BenchWords::tr("tested by"), {},
                       BenchWords::tr("whoever is at the desk"))};
}

std::vector<Row> openFields(const DeedSubject &subject)
{
    const Part &part = *subject.entry->part;
    return {placeField(BenchWords::tr("its contents go to"), subject),
            oneOf("only", BenchWords::tr("what comes out"), subject),
            choiceField("left", BenchWords::tr("without its contents"),
                        {BenchWords::tr("it is still a piece"),
                         BenchWords::tr("nothing is left of it: a pack, a kit")},
                        part.says("kit") || part.says("pack") ? 1 : 0),
            figureField("costs", BenchWords::tr("what one of them cost, if not by its offer"), {},
                        localised(QStringLiteral("BK-460=12.50; CL-T60=4.00")))};
}

} // namespace

std::vector<std::string> benchChoices(const QString &field, const DeedSubject &subject)
{
    std::vector<std::string> ids;
    const Workshop &shop = *subject.book->workshop;
    const bool hasLot = subject.pieces && !subject.pieces->lot.empty() && subject.there() > 0;
    if (field == QStringLiteral("start") || field == QStringLiteral("far"))
        return endsOf(subject);
    if (field == QStringLiteral("plan")) {
        ids = {std::string(text(CutAim::RemnantsFirst)), std::string(text(CutAim::LeastWaste))};
        if (hasLot)
            ids.push_back("lot|" + subject.pieces->lot);
    } else if (field == QStringLiteral("lot")) {
        ids.emplace_back();
        if (hasLot)
            ids.push_back(subject.pieces->lot);
    } else if (field == QStringLiteral("build")) {
        ids.emplace_back();
        for (const BuildPlan &plan : shop.builds) {
            if (!shop.notes.build(plan.id).isDone())
                ids.push_back(plan.id);
        }
    } else if (field == QStringLiteral("only")) {
        ids.emplace_back();
        for (const PartCount &inside : subject.entry->part->box)
            ids.push_back(inside.part);
    } else if (field == QStringLiteral("result")) {
        ids = {{}, "passed", "failed"};
    }
    return ids;
}

std::vector<Row> benchFields(BenchDeed deed, const DeedSubject &subject)
{
    switch (deed) {
    case BenchDeed::Cut:
        return cutFields(subject);
    case BenchDeed::MakeUp:
        return makeUpFields(subject);
    case BenchDeed::Open:
        break;
    }
    return openFields(subject);
}

} // namespace flarestock
