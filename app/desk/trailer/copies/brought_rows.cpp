// SPDX-License-Identifier: MIT

#include "app/desk/trailer/copies/brought_rows.h"

#include "app/desk/stock/stock_rows.h"
#include "app/desk/trailer/copies/copy_words.h"
#include "app/desk/words/condition_words.h"
#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

QString titleOf(const Workshop &shop, const std::string &place)
{
    const Place *found = shop.ledger.place(place);
    const bool isNamed = found != nullptr && !isStock(found->kind) && !found->title.empty();
    return said(isNamed ? found->title : place);
}

QString counted(std::size_t count, const QString &one, const QString &many)
{
    return count == 1 ? one : many.arg(count);
}

bool wantsMore(const Choice &choice)
{
    return choice.word.ends_with(':');
}

/// Without the word that a command line takes for it.
QString saidChoice(const Choice &choice)
{
    const auto at = wantsMore(choice) ? choice.does.rfind(": " + choice.word) : std::string::npos;
    return said(std::string_view(choice.does).substr(0, at));
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
        const Part *part = shop.part(movement.part);
        const QString amount = part ? saidStock(movement.quantity, *part, units)
                                    : QLocale().toString(static_cast<qlonglong>(movement.quantity));
        const QString what = CopySaid::tr("%1 of %2, %3 → %4")
                                 .arg(amount, said(movement.part), titleOf(shop, movement.from),
                                      titleOf(shop, movement.to));
        QStringList detail{saidDeed(movement.deed), saidDate(dayOf(movement.at))};
        for (const std::string &more : {movement.who, movement.document, movement.why}) {
            if (!more.empty())
                detail.append(said(more));
        }
        const QString words = detail.join(QStringLiteral(", "));
        rows.push_back(
            {said(movement.id.text()), {what, words, CopySaid::tr("%1, %2").arg(what, words)}});
    }
    return rows;
}

QStringList questionCells()
{
    return {QStringLiteral("what"), QStringLiteral("choices"),   QStringLiteral("chosen"),
            QStringLiteral("more"), QStringLiteral("wantsMore"), QStringLiteral("isDecided"),
            QStringLiteral("says")};
}

std::vector<Row> questionRows(const std::vector<Disagreement> &all, const DecidedByName &decided)
{
    std::vector<Row> rows;
    for (const Disagreement &one : all) {
        const Decided on = decidedOn(one, decided);
        const Choice *chosen = choiceOf(one, on);
        QStringList choices;
        for (const Choice &choice : one.choices)
            choices.append(saidChoice(choice));
        const bool isDecided = !wordOf(one, on).empty();
        rows.push_back({said(one.name),
                        {said(one.what), choices, on.choice, on.more,
                         chosen != nullptr && wantsMore(*chosen), isDecided,
                         isDecided ? CopySaid::tr("decided: %1").arg(said(one.what))
                                   : CopySaid::tr("to decide: %1").arg(said(one.what))}});
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
