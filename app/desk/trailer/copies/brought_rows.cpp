// SPDX-License-Identifier: MIT

#include "app/desk/trailer/copies/brought_rows.h"

#include "app/desk/language/sentences.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/trailer/copies/copy_words.h"
#include "app/desk/words/condition_words.h"
#include "app/workshop/made_up.h"
#include "model/journal/notes/build_log.h"
#include "model/journal/notes/count.h"
#include "model/servicing/outing.h"

#include <QRegularExpression>

namespace flarestock {

namespace {

QString titleOf(const Workshop &shop, const std::string &place)
{
    const Place *found = shop.ledger.place(place);
    const bool isNamed = found != nullptr && !isStock(found->kind) && !found->title.empty();
    return said(isNamed ? found->title : place);
}

/// What was done to a car with it; nullptr: none of the copy's was.
const Record *workOf(const Movement &movement, const BroughtBack &back)
{
    const std::string action = movement.action.value_or(movement.id).text();
    for (const Record &record : back.records) {
        if (record.kind == RecordKind::Servicing && record.field("action") == action)
            return &record;
    }
    return nullptr;
}

/// What came inside another piece comes off the bench in the book, and out of the car for a hand.
QString cameFrom(const Movement &movement, const BroughtBack &back, const Workshop &shop)
{
    const Place *from = shop.ledger.place(movement.from);
    const Record *work = workOf(movement, back);
    const bool isBench = from != nullptr && from->kind == PlaceKind::Bench;
    return titleOf(shop, work != nullptr && isBench ? work->subject : movement.from);
}

/// With the cars' titles, and days as people say them.
QString inPersonsWords(std::string_view text, const Workshop &shop)
{
    QString words = withSaidDays(inWords(text));
    for (const Place &place : shop.ledger.places()) {
        const QString id = QRegularExpression::escape(said(place.id));
        if (place.kind == PlaceKind::Car && !place.title.empty())
            words.replace(QRegularExpression(QStringLiteral("\\b%1\\b").arg(id)),
                          said(place.title));
    }
    return words;
}

QString pieceOf(const std::string &part, const std::string &lot)
{
    return lot.empty() ? said(part) : CopySaid::tr("%1, %2").arg(said(part), said(lot));
}

QString saidAmount(const std::string &number, std::int64_t quantity, const SaidBy &by)
{
    const Part *part = by.shop.part(number);
    return part ? saidStock(quantity, *part, by.units)
                : QLocale().toString(static_cast<qlonglong>(quantity));
}

QString titleOfBuild(const std::string &id, const Workshop &shop)
{
    const BuildPlan *plan = shop.build(id);
    return said(plan == nullptr || plan->title.empty() ? id : plan->title);
}

/// What the copy has written down of a build; nothing: it is of something else.
std::optional<QString> saidOfBuild(const Record &record, const SaidBy &by)
{
    if (const auto done = BuildDone::read(record)) {
        const QString build = titleOfBuild(done->build, by.shop);
        return done->open ? CopySaid::tr("%1 is open again").arg(build)
                          : CopySaid::tr("%1 is done").arg(build);
    }
    const auto promise = Promise::read(record);
    if (!promise)
        return {};
    const QString quantity = saidAmount(promise->part, std::abs(promise->quantity), by);
    const QString build = titleOfBuild(promise->build, by.shop);
    return (promise->quantity < 0 ? CopySaid::tr("no more promised to %1: %2 of %3")
                                  : CopySaid::tr("promised to %1: %2 of %3"))
        .arg(build, quantity, said(promise->part));
}

/// What was done to a car, or another word that the copy has written down.
QString saidRecord(const Record &record, const SaidBy &by)
{
    if (const auto ofBuild = saidOfBuild(record, by))
        return *ofBuild;
    const Workshop &shop = by.shop;
    if (record.kind == RecordKind::Servicing)
        return CopySaid::tr("%1, %2: %3 %4")
            .arg(titleOf(shop, record.subject), said(record.field("position")),
                 pieceOf(record.field("part"), record.field("lot")), inWords(record.field("work")));
    if (record.kind == RecordKind::Outing)
        return CopySaid::tr("%1 ran at %2")
            .arg(titleOf(shop, record.subject), said(record.field("event")));
    const QString kind = inWords(text(record.kind));
    const QString piece = pieceOf(record.subject, record.field("lot"));
    const std::string place = record.field("place");
    return place.empty() ? CopySaid::tr("%1: %2").arg(kind, piece)
                         : CopySaid::tr("%1: %2 at %3").arg(kind, piece, titleOf(shop, place));
}

Row rowOf(const MovementId &id, const QString &what, const QStringList &detail)
{
    const QString words = detail.join(QStringLiteral(", "));
    return {said(id.text()), {what, words, CopySaid::tr("%1, %2").arg(what, words)}};
}

Row rowOf(const Record &record, const SaidBy &by)
{
    QStringList detail{saidDate(dayOf(record.at))};
    if (const auto count = Count::read(record))
        detail.prepend(CopySaid::tr("found %1").arg(saidAmount(record.subject, count->found, by)));
    if (!record.who.empty())
        detail.append(said(record.who));
    if (!record.field("note").empty())
        detail.append(said(record.field("note")));
    QString what = saidRecord(record, by);
    if (!record.field(TakesBackField).empty())
        what = CopySaid::tr("taken back: %1").arg(what);
    return rowOf(record.id, what, detail);
}

QString counted(std::size_t count, const QString &one, const QString &many)
{
    return count == 1 ? one : many.arg(count);
}

bool wantsMore(const Choice &choice)
{
    return choice.word.ends_with(':');
}

/// Without the word that a command line takes for it; with what lies there then.
QString saidChoice(const Choice &choice, const SaidBy &by)
{
    const auto at = wantsMore(choice) ? choice.does.rfind(": " + choice.word) : std::string::npos;
    const QString does = inPersonsWords(std::string_view(choice.does).substr(0, at), by.shop);
    if (choice.has)
        return CopySaid::tr("%1 (there are: %2)")
            .arg(does, saidAmount(choice.has->part, choice.has->quantity, by));
    return choice.lies ? CopySaid::tr("%1 (there then: %2)")
                             .arg(does, saidAmount(choice.lies->part, choice.lies->quantity, by))
                       : does;
}

/// With how much was taken, lay there and lacks.
QString saidWhat(const Disagreement &one, const SaidBy &by)
{
    QString what = inPersonsWords(one.what, by.shop);
    if (!one.tooMuch)
        return what;
    const auto amount = [&](std::int64_t some) { return saidAmount(one.tooMuch->part, some, by); };
    const auto &[part, lacking, taken] = *one.tooMuch;
    return taken == 0 ? CopySaid::tr("%1: %2 lack").arg(what, amount(lacking))
                      : CopySaid::tr("%1: taken %2, there %3")
                            .arg(what, amount(taken), amount(taken - lacking));
}

const Choice *choiceOf(const Disagreement &one, const Decided &decided)
{
    const auto at = static_cast<std::size_t>(decided.choice);
    return decided.choice >= 0 && at < one.choices.size() ? &one.choices[at] : nullptr;
}

Decided decidedOn(const Disagreement &one, const DecidedByName &decided)
{
    const auto found = decided.find(one.name);
    return found == decided.end() ? Decided() : found->second;
}

std::string wordOf(const Disagreement &one, const Decided &decided)
{
    const Choice *choice = choiceOf(one, decided);
    if (choice == nullptr)
        return {};
    const std::string more = decided.more.trimmed().toStdString();
    if (!wantsMore(*choice))
        return choice->word;
    return more.empty() ? std::string() : choice->word + more;
}

} // namespace

QStringList broughtCells()
{
    return {QStringLiteral("what"), QStringLiteral("detail"), QStringLiteral("says")};
}

std::vector<Row> broughtRows(const BroughtBack &back, const Workshop &shop, Units units)
{
    std::vector<Row> rows;
    for (const Movement &movement : back.movements) {
        const QString amount = saidAmount(movement.part, movement.quantity, {shop, units});
        const QString what = CopySaid::tr("%1 of %2, %3 → %4")
                                 .arg(amount, pieceOf(movement.part, movement.lot),
                                      cameFrom(movement, back, shop), titleOf(shop, movement.to));
        QStringList detail{saidDeed(movement.deed), saidDate(dayOf(movement.at))};
        if (movement.newLot && !movement.newLot->empty())
            detail.prepend(CopySaid::tr("called %1 from then on").arg(said(*movement.newLot)));
        for (const std::string &more : {movement.who, movement.document, movement.why}) {
            if (!more.empty())
                detail.append(said(more));
        }
        rows.push_back(rowOf(movement.id, what, detail));
    }
    for (const Record &record : back.records)
        rows.push_back(rowOf(record, {shop, units}));
    return rows;
}

QStringList questionCells()
{
    return {QStringLiteral("what"), QStringLiteral("choices"),   QStringLiteral("chosen"),
            QStringLiteral("more"), QStringLiteral("wantsMore"), QStringLiteral("isDecided"),
            QStringLiteral("says")};
}

std::vector<Row> questionRows(const std::vector<Disagreement> &all, const DecidedByName &decided,
                              const SaidBy &by)
{
    std::vector<Row> rows;
    for (const Disagreement &one : all) {
        const Decided on = decidedOn(one, decided);
        const Choice *chosen = choiceOf(one, on);
        QStringList choices;
        for (const Choice &choice : one.choices)
            choices.append(saidChoice(choice, by));
        const QString what = saidWhat(one, by);
        const bool isDecided = !wordOf(one, on).empty();
        rows.push_back(
            {said(one.name),
             {what, choices, on.choice, on.more, chosen != nullptr && wantsMore(*chosen), isDecided,
              isDecided ? CopySaid::tr("decided: %1").arg(what)
                        : CopySaid::tr("to decide: %1").arg(what)}});
    }
    return rows;
}

std::map<std::string, std::string> wordsOf(const std::vector<Disagreement> &all,
                                           const DecidedByName &decided)
{
    std::map<std::string, std::string> words;
    for (const Disagreement &one : all) {
        std::string word = wordOf(one, decidedOn(one, decided));
        if (!word.empty())
            words.emplace(one.name, std::move(word));
    }
    return words;
}

QString saidCame(const BroughtBack &back)
{
    QStringList all;
    if (!back.movements.empty())
        all.append(counted(back.movements.size(), CopySaid::tr("1 movement"),
                           CopySaid::tr("%1 movements")));
    if (!back.records.empty())
        all.append(
            counted(back.records.size(), CopySaid::tr("1 record"), CopySaid::tr("%1 records")));
    for (const std::string &name : back.documents)
        all.append(said(name));
    for (const std::string &place : back.places)
        all.append(CopySaid::tr("new place %1").arg(said(place)));
    if (back.looks > 0)
        all.append(counted(back.looks, CopySaid::tr("1 look into a box"),
                           CopySaid::tr("%1 looks into boxes")));
    return all.isEmpty() ? CopySaid::tr("nothing new") : all.join(QStringLiteral(", "));
}

} // namespace flarestock
