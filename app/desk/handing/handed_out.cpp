// SPDX-License-Identifier: MIT

#include "app/desk/handing/handed_out.h"

#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct HandingWords {
    Q_DECLARE_TR_FUNCTIONS(HandingOut)
};

std::vector<HandedOut::InCar> inCarOf(const Workshop &workshop, const BuildPlan &plan)
{
    std::vector<HandedOut::InCar> inCar;
    for (const Claims::value_type *one : workshop.claimsOf(plan.id)) {
        const auto &[key, claim] = *one;
        const Part *part = workshop.catalogue.find(key.part);
        if (claim.issued <= 0 || !part)
            continue;
        std::int64_t left = claim.issued; // Another build of the car may have some of it there too.
        for (const auto &[at, held] : workshop.ledger.balancesOf(key.part)) {
            const std::int64_t quantity = std::min(left, held.quantity);
            if (at.place != plan.car || quantity <= 0)
                continue;
            inCar.push_back({part, at, quantity});
            left -= quantity;
        }
    }
    return inCar;
}

QString amount(std::int64_t smallest, const Part &part, Units units)
{
    return saidAmount(Quantity::ofSmallest(smallest, part.unit), units);
}

QString lengthsOf(const Pick &pick, Units units)
{
    QStringList lengths;
    for (const std::int64_t length : pick.lengths)
        lengths.append(amount(length, *pick.part, units));
    return lengths.join(QStringLiteral(" + "));
}

/// Where a hand would put it: where it came from; else where more of it lies, the nearest first;
/// else the first place.
QString homeOf(const HandedOut::InCar &one, const Origins &origins, const Workshop &workshop)
{
    if (const auto origin = origins.find(one.key); origin != origins.end())
        return said(origin->second);
    const auto places = workshop.ledger.places();
    for (const Place &place : places) {
        if (!isStock(place.kind))
            continue;
        for (const auto &[key, held] : workshop.ledger.balancesOf(one.part->number)) {
            if (key.place == place.id && held.quantity > 0)
                return said(place.id);
        }
    }
    const auto first = std::find_if(places.begin(), places.end(),
                                    [](const Place &place) { return isStock(place.kind); });
    return first == places.end() ? QString() : said(first->id);
}

struct Step {
    const char *key;
    QString label;
    bool ready;
    QString detail;
};

QString counted(const QString &label, std::size_t count)
{
    return count == 0 ? label : HandingWords::tr("%1 %2").arg(label, QString::number(count));
}

Step reserveStep(const HandedOut &handed)
{
    const auto count = handed.toPromise.size();
    const QString label = counted(HandingWords::tr("Reserve"), count);
    if (handed.standing.isDone())
        return {"reserve", label, false,
                HandingWords::tr("The build is done; open it again first.")};
    if (count == 0)
        return {"reserve", label, false,
                HandingWords::tr("Nothing to reserve: what is free for the build, it has.")};
    return {"reserve", label, true,
            HandingWords::tr("Promises to the build what is free for it, %1 lines.").arg(count)};
}

Step pickStep(const HandedOut &handed)
{
    const auto count = handed.picks.picks.size();
    const QString label = counted(HandingWords::tr("Pick"), count);
    const bool ready = count > 0 || !handed.picks.lacking.empty();
    return {"pick", label, ready,
            ready ? HandingWords::tr("The walk past the bins: %1 to take.").arg(count)
                  : HandingWords::tr("Nothing to pick: reserve first what the build shall have.")};
}

Step giveStep(const HandedOut &handed)
{
    const auto count = handed.inCar.size();
    return {"give", counted(HandingWords::tr("Give back"), count), count > 0,
            count > 0 ? HandingWords::tr("What was issued and not used goes back to its place.")
                      : HandingWords::tr("Nothing to give back: nothing was issued to the build.")};
}

Step doneStep(const HandedOut &handed)
{
    if (handed.standing.isDone())
        return {"done", HandingWords::tr("Open again"), true,
                HandingWords::tr("The build is done; this opens it again.")};
    return {"done", HandingWords::tr("Build done"), true,
            HandingWords::tr("Asks for the leak test, then the build is done.")};
}

} // namespace

bool takesStock(const WorkedOut &worked, const BuildPlan &plan)
{
    return worked.workshop != nullptr && worked.built != nullptr && !plan.id.empty();
}

HandedOut handedOut(const WorkedOut &worked, const BuildPlan &plan)
{
    HandedOut handed;
    if (!takesStock(worked, plan))
        return handed;
    const Workshop &workshop = *worked.workshop;
    handed.standing = workshop.notes.build(plan.id);
    handed.toPromise = promisesLacking(*worked.built, workshop, plan);
    handed.picks = pickList(*worked.built, workshop, plan);
    handed.left = leftUndone(*worked.built, handed.toPromise, handed.picks);
    handed.inCar = inCarOf(workshop, plan);
    handed.brakes = worked.expansion->system == "brakes";
    handed.whyNotDone = notDoneBecause(handed.standing.testsNow(), handed.brakes);
    return handed;
}

QStringList stepCells()
{
    return {QStringLiteral("label"), QStringLiteral("ready"), QStringLiteral("detail"),
            QStringLiteral("says")};
}

std::vector<Row> stepRows(const HandedOut &handed, const QString &barrier)
{
    std::vector<Row> rows;
    for (const Step &step :
         {reserveStep(handed), pickStep(handed), giveStep(handed), doneStep(handed)}) {
        const QString detail = barrier.isEmpty() ? step.detail : barrier;
        rows.push_back({QString::fromLatin1(step.key),
                        {step.label, step.ready && barrier.isEmpty(), detail,
                         QString(step.label + QStringLiteral(". ") + detail)}});
    }
    return rows;
}

QStringList pickCells()
{
    return {QStringLiteral("place"),  QStringLiteral("part"), QStringLiteral("what"),
            QStringLiteral("take"),   QStringLiteral("cut"),  QStringLiteral("lot"),
            QStringLiteral("ticked"), QStringLiteral("says")};
}

QString pickKey(const BalanceKey &key)
{
    return QStringList{said(key.part), said(key.place), said(key.lot), said(text(key.condition))}
        .join(u'|');
}

std::vector<Row> pickRows(const HandedOut &handed, const std::set<QString> &ticked, Units units)
{
    std::vector<Row> rows;
    for (const Pick &pick : handed.picks.picks) {
        const QString key = pickKey(pick.key);
        const QString number = said(pick.part->number);
        const QString take = amount(pick.quantity, *pick.part, units);
        const QString cut = pick.lengths.size() > 1
                                ? HandingWords::tr("cut %1").arg(lengthsOf(pick, units))
                                : QString();
        const bool isTicked = ticked.contains(key);
        QStringList says{
            HandingWords::tr("%1: take %2 of %3").arg(said(pick.key.place), take, number),
            said(pick.part->description), cut, said(pick.key.lot),
            isTicked ? HandingWords::tr("taken") : HandingWords::tr("not taken yet")};
        says.removeAll(QString());
        rows.push_back({key,
                        {said(pick.key.place), number, said(pick.part->description), take, cut,
                         said(pick.key.lot), isTicked, says.join(QStringLiteral(", "))}});
    }
    return rows;
}

QString saidLacking(const PickList &picks, Units units)
{
    QStringList lacking;
    for (const auto &[part, quantity] : picks.lacking)
        lacking.append(
            HandingWords::tr("%1 of %2").arg(amount(quantity, *part, units), said(part->number)));
    return lacking.isEmpty()
               ? QString()
               : HandingWords::tr("Not found: %1.").arg(lacking.join(QStringLiteral(", ")));
}

QStringList inCarCells()
{
    return {QStringLiteral("part"),  QStringLiteral("what"), QStringLiteral("quantity"),
            QStringLiteral("typed"), QStringLiteral("lot"),  QStringLiteral("condition"),
            QStringLiteral("to"),    QStringLiteral("says")};
}

std::vector<Row> inCarRows(const HandedOut &handed, const Workshop &workshop, Units units)
{
    std::vector<Row> rows;
    for (const HandedOut::InCar &one : handed.inCar) {
        const QString number = said(one.part->number);
        const QString quantity = amount(one.quantity, *one.part, units);
        const QString lot = said(one.key.lot);
        const QString condition = saidCondition(one.key.condition);
        rows.push_back(
            {pickKey(one.key),
             {number, said(one.part->description), quantity,
              typedAmount(Quantity::ofSmallest(one.quantity, one.part->unit), units), lot,
              condition, homeOf(one, handed.origins, workshop),
              QStringList{number, quantity, condition, lot}.join(QStringLiteral(", "))}});
    }
    return rows;
}

QString saidAgainst(const HandedOut &handed)
{
    QStringList all;
    const auto add = [&all](auto count, const QString &one, const QString &many) {
        if (count > 0)
            all.append(count == 1 ? one : many.arg(count));
    };
    add(handed.left.stops, HandingWords::tr("1 finding stops it"),
        HandingWords::tr("%1 findings stop it"));
    add(handed.left.shortLines, HandingWords::tr("1 line is short"),
        HandingWords::tr("%1 lines are short"));
    add(handed.left.notReserved, HandingWords::tr("1 line is not reserved"),
        HandingWords::tr("%1 lines are not reserved"));
    add(handed.left.notPicked, HandingWords::tr("1 is to be picked yet"),
        HandingWords::tr("%1 are to be picked yet"));
    return all.isEmpty() ? QString()
                         : HandingWords::tr("Not as it should be when a build is done: %1.")
                               .arg(all.join(QStringLiteral(", ")));
}

QString saidTest(const std::vector<LeakTest> &tests)
{
    if (tests.empty())
        return HandingWords::tr("No leak test is written down yet.");
    const LeakTest &test = tests.back();
    const QString who = test.second.empty()
                            ? said(test.who)
                            : HandingWords::tr("%1 and %2").arg(said(test.who), said(test.second));
    return HandingWords::tr("The newest leak test: %1, %2 held %3, %4, by %5.")
        .arg(said(test.medium), localised(said(test.pressure)), said(test.held),
             test.passed ? HandingWords::tr("passed") : HandingWords::tr("failed"), who);
}

} // namespace flarestock
