// SPDX-License-Identifier: MIT
//
// A work's form that was filled in, as an action of the journal and as a sentence.

#include "app/desk/language/sentences.h"
#include "app/desk/service/deeds/work_deed.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/desk/words/typed_figures.h"
#include "model/journal/notes/lot_facts.h"

namespace flarestock {

namespace {

std::int64_t countTyped(const FilledWork &filled, const char *field)
{
    return QString::fromStdString(filled.figures(field)).toLongLong();
}

bool isCount(const std::string &typed)
{
    bool isNumber = false;
    const qlonglong count = QString::fromStdString(typed).toLongLong(&isNumber);
    return typed.empty() || (isNumber && count >= 0);
}

/// Where what goes in is taken. What was chosen lies there for the part that is in now.
void readFrom(const FilledWork &filled, WorkWords &words)
{
    const int choice = filled.choice("from");
    if (filled.deed == CarDeed::Fit && choice == 2)
        words.from = filled.subject.at.car;
    if (filled.deed != CarDeed::Replace)
        return;
    const auto from = takenFromChoices(filled.subject);
    if (choice < 0 || choice >= static_cast<int>(from.size()))
        return;
    const TakenFrom &taken = from[static_cast<std::size_t>(choice)];
    const bool isSame = words.part == filled.subject.piece()->piece.part;
    if (!isSame && taken.place != filled.subject.at.car)
        return; // Another part lies elsewhere: the nearest.
    words.from = taken.place;
    words.lot = isSame ? taken.lot : std::string();
}

void readOld(const FilledWork &filled, WorkWords &words)
{
    words.oldTo = filled.typed("oldTo");
    words.tag = filled.typed("tag");
    const int is = filled.choice("oldIs") - (filled.deed == CarDeed::Replace ? 1 : 0);
    if (is >= 0)
        words.oldIs = text(static_cast<PieceCondition>(is));
}

WorkWords wordsOf(const FilledWork &filled, const Garage &garage)
{
    WorkWords words;
    words.car = filled.subject.at.car;
    const bool isFit = filled.deed == CarDeed::Fit;
    words.position = isFit ? filled.typed("position") : filled.subject.at.position;
    if (const PieceOut *out = filled.subject.out(); out && !isFit)
        words.position = out->piece.lot.empty() ? out->piece.part : out->piece.lot;
    words.part = filled.typed(isFit ? "part" : "with");
    words.lot = filled.typed("lot");
    words.day = dayTyped(filled.values, "day");
    words.made = dayTyped(filled.values, "made");
    words.useBy = dayTyped(filled.values, "useBy");
    words.length = filled.figures("length");
    words.washed = countTyped(filled, "washed");
    words.hadRuns = countTyped(filled, "hadRuns");
    words.hadHours = filled.figures("hadHours");
    readFrom(filled, words);
    readOld(filled, words);
    words.keepRings = filled.choice("rings") != 0;
    const auto at = garage.words.find(words.position);
    if (filled.deed == CarDeed::Wash && !words.keepRings && at != garage.words.end())
        words.joints = at->second.joints;
    return words;
}

/// The nearest place of the stock that has it.
Result<WorkDone> fittedFromStock(WorkWords words, const Garage &garage, const By &by)
{
    for (const Place &place : garage.workshop->ledger.places()) {
        if (!isStock(place.kind))
            continue;
        words.from = place.id;
        if (auto done = fitted(words, garage, by))
            return done;
    }
    return problem(words.part, "is not free in the stock", "Look under Stock what there is.");
}

} // namespace

std::string FilledWork::typed(const char *field) const
{
    return wordsIn(values, field);
}

std::string FilledWork::figures(const char *field) const
{
    return figuresTyped(values, field);
}

int FilledWork::choice(const char *field) const
{
    return values.value(QString::fromLatin1(field), -1).toInt();
}

QString whyNotFilled(const FilledWork &filled)
{
    for (const char *field : {"day", "made", "useBy"}) {
        const std::string typed = dayTyped(filled.values, field);
        if (!typed.empty() && !isDay(typed))
            return ServiceWords::tr("%1 is no day. Write it like %2.")
                .arg(said(typed), dayAsTyped("2026-12-12"));
    }
    for (const char *field : {"runs", "washed", "hadRuns"}) {
        if (!isCount(filled.figures(field)))
            return ServiceWords::tr("%1 is no number of them. Write 0 or more.")
                .arg(said(filled.typed(field)));
    }
    if (filled.deed == CarDeed::Fit && filled.typed("part").empty())
        return ServiceWords::tr("Say which part it is.");
    return {};
}

Result<WorkDone> workDone(const FilledWork &filled, const Garage &garage, By by)
{
    by.why = filled.typed("note");
    const WorkWords words = wordsOf(filled, garage);
    switch (filled.deed) {
    case CarDeed::Wash:
        return washed(words, garage, by);
    case CarDeed::Replace:
        return replaced(words, garage, by);
    case CarDeed::Inspect:
        return lookedAt(Work::Inspected, words, garage, by);
    case CarDeed::Damaged:
        return lookedAt(Work::Damaged, words, garage, by);
    case CarDeed::TakeOut:
        return takenOut(words, garage, by);
    case CarDeed::Fit:
    case CarDeed::Ran:
        break;
    }
    return filled.choice("from") == 1 ? fittedFromStock(words, garage, by)
                                      : fitted(words, garage, by);
}

Result<Outing> outingOf(const FilledWork &filled, const Workshop &shop, const By &by)
{
    OutingWords words{filled.subject.at.car, filled.typed("other"), dayTyped(filled.values, "day"),
                      countTyped(filled, "runs"), filled.figures("hours")};
    const auto events = ranChoices(filled.subject);
    const int choice = filled.choice("event");
    if (words.event.empty() && choice >= 0 && choice < static_cast<int>(events.size()))
        words.event = events[static_cast<std::size_t>(choice)]->id;
    return ran(words, shop, by);
}

QString saidWork(const WorkDone &done, const GarageBook &book)
{
    const Place *car = book.car(done.serviced.car);
    QStringList said{ServiceWords::tr("%1 of %2 %3, %4.")
                         .arg(inWords(done.said),
                              flarestock::said(car ? car->title : done.serviced.car),
                              saidWorkDone(done.serviced.work), saidPiece(done.serviced.piece))};
    for (const Renewed &ring : done.rings) {
        const QString number = flarestock::said(ring.part->number);
        const QString taken = QString::number(ring.taken);
        if (ring.shortBy() > 0)
            said.append(ServiceWords::tr("%1: %2 fresh, %3 short.")
                            .arg(number, taken, QString::number(ring.shortBy())));
        else if (ring.taken > 0)
            said.append(ServiceWords::tr("%1: %2 fresh.").arg(number, taken));
    }
    if (done.isOpen)
        said.append(ServiceWords::tr("Leak-test it."));
    return said.join(u' ');
}

QString saidOuting(const Outing &outing, const GarageBook &book)
{
    const Place *car = book.car(outing.car);
    Use use;
    use.add(outing);
    return ServiceWords::tr("%1 ran at %2: %3.")
        .arg(said(car ? car->title : outing.car), saidEvent(outing.event, *book.workshop),
             saidUse(use));
}

Pen::MadeBy madeOf(const FilledWork &filled)
{
    return [filled](const ShopFile &file, const Workshop &shop, const By &by) -> Result<ToWrite> {
        if (filled.deed == CarDeed::Ran) {
            const auto outing = outingOf(filled, shop, by);
            if (!outing)
                return tl::unexpected(outing.error());
            return ToWrite(Action{{outing->asRecord()}, {}});
        }
        const auto garage = Garage::of(shop, file);
        if (!garage)
            return tl::unexpected(garage.error());
        auto done = workDone(filled, *garage, by);
        if (!done)
            return tl::unexpected(done.error());
        return ToWrite(std::move(done->action));
    };
}

} // namespace flarestock
