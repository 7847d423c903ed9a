// SPDX-License-Identifier: MIT
//
// Work deed: what a hand can do to a position of a car, and that the car ran, as a form of a few
// fields and as an action of the journal, which the garage makes as it does for the commands.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/service/piece_words.h"
#include "app/desk/shop/pen.h"
#include "app/garage/at_work.h"

#include <QVariantMap>

namespace flarestock {

enum class CarDeed : std::uint8_t { Wash, Replace, Inspect, Damaged, TakeOut, Fit, Ran };

/// What a deed is done to: a position of a car, which may be empty; the car alone where its
/// position is.
struct WorkSubject {
    std::shared_ptr<const GarageBook> book;
    CarPosition at;
    Units units = Units::Metric;

    [[nodiscard]] const FittedPiece *piece() const { return book ? book->piece(at) : nullptr; }
    /// The piece that is out of the car, where that is in hand.
    [[nodiscard]] const PieceOut *out() const { return book ? book->out(at) : nullptr; }
    [[nodiscard]] bool hasCar() const { return book && book->car(at.car) != nullptr; }
};

/// label letter detail says; the key is the deed's name ("wash" …), `letter` the key that begins
/// it. Only what can be done stands there.
[[nodiscard]] QStringList workCells();
[[nodiscard]] std::vector<Row> workRows(const WorkSubject &subject);
/// By its name or its letter.
[[nodiscard]] std::optional<CarDeed> carDeedNamed(const QString &name);
/// Why it is not offered, as a sentence; empty where it is.
[[nodiscard]] QString whyNotDone(CarDeed deed, const WorkSubject &subject);
[[nodiscard]] QString saidWorkTitle(CarDeed deed, const WorkSubject &subject);
[[nodiscard]] QString saidWorkButton(CarDeed deed);

/// The fields of its form, each with what is likely.
[[nodiscard]] std::vector<Row> workFields(CarDeed deed, const WorkSubject &subject);

/// Where what goes in could be taken.
struct TakenFrom {
    std::string place; ///< The car itself: a spare that lies in it.
    std::string lot;
    QString label;
};
/// The nearest first, a spare in the car last.
[[nodiscard]] std::vector<TakenFrom> takenFromChoices(const WorkSubject &subject);
/// The events that a car can have run at, the likeliest first.
[[nodiscard]] std::vector<const Event *> ranChoices(const WorkSubject &subject);

/// What was filled in, by the keys of the fields.
struct FilledWork {
    CarDeed deed;
    WorkSubject subject;
    QVariantMap values;

    [[nodiscard]] std::string typed(const char *field) const;   ///< Without blanks at its ends.
    [[nodiscard]] std::string figures(const char *field) const; ///< As the model reads them.
    [[nodiscard]] int choice(const char *field) const;          ///< -1 where it is not asked for.
};
/// Why it cannot be done as it was filled in; empty where it can.
[[nodiscard]] QString whyNotFilled(const FilledWork &filled);
/// The work on a garage as it is then. Not of Ran.
[[nodiscard]] Result<WorkDone> workDone(const FilledWork &filled, const Garage &garage, By by);
[[nodiscard]] Result<Outing> outingOf(const FilledWork &filled, const Workshop &shop, const By &by);
/// What it did, as a sentence, with the rings that it took and what is to follow.
[[nodiscard]] QString saidWork(const WorkDone &done, const GarageBook &book);
[[nodiscard]] QString saidOuting(const Outing &outing, const GarageBook &book);
/// The action out of the newest state of the shop.
[[nodiscard]] Pen::MadeBy madeOf(const FilledWork &filled);

} // namespace flarestock
