// SPDX-License-Identifier: MIT

#include "app/garage/garage.h"

#include "app/garage/standing_moves.h"
#include "app/stockroom/asked.h"
#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/exchange/servicing/intervals_csv.h"

#include <algorithm>

namespace flarestock {

namespace {

/// The movements of each build that stand, without those that belong to a servicing.
std::map<std::string, std::vector<Movement>> movedByBuilds(const std::vector<Movement> &movements,
                                                           const std::vector<Record> &standing,
                                                           const Ledger &ledger)
{
    std::set<std::string> servicings;
    for (const Record &record : standing) {
        if (record.kind == RecordKind::Servicing && !record.field("action").empty())
            servicings.insert(record.field("action"));
    }
    std::map<std::string, std::vector<Movement>> moved;
    for (const auto &[one, first] : standingMoves(movements, ledger)) {
        if (one->document.empty() || servicings.contains(first->action.value_or(first->id).text()))
            continue;
        Movement &kept = moved[one->document].emplace_back(*one);
        kept.at = first->at;
    }
    return moved;
}

/// What the builds put into the cars, and how their positions are said.
Result<std::vector<SeatedPiece>> seatsOfAll(Garage &garage, const ShopFile &file,
                                            const std::vector<Record> &standing)
{
    const Workshop &workshop = *garage.workshop;
    std::vector<std::string> builds;
    for (const BuildPlan &plan : workshop.builds)
        builds.push_back(plan.id);
    const auto movements = file.movementsOfDocuments(builds);
    if (!movements)
        return tl::unexpected(movements.error());
    const auto moved = movedByBuilds(*movements, standing, workshop.ledger);
    std::vector<SeatedPiece> seats;
    for (const BuildPlan &plan : workshop.builds) {
        const auto of = moved.find(plan.id);
        if (of == moved.end())
            continue;
        const auto worked = workBuild(workshop, plan);
        if (!worked)
            return tl::unexpected(worked.error());
        auto built = seatsOf(*worked, plan, workshop, of->second);
        std::move(built.seats.begin(), built.seats.end(), std::back_inserter(seats));
        garage.words.merge(built.words);
    }
    return seats;
}

Result<void> readIntervalsOf(Garage &garage, const TextFiles &documents)
{
    garage.intervals = usualIntervals();
    const auto own = documents.find("intervals.csv");
    if (own == documents.end())
        return {};
    auto read = readIntervals(own->second, "intervals.csv");
    if (!read)
        return tl::unexpected(read.error());
    garage.intervals = std::move(*read);
    garage.ownIntervals = true;
    return {};
}

bool endsWith(const std::string &position, const std::string &typed)
{
    if (position.size() <= typed.size())
        return false;
    const std::size_t at = position.size() - typed.size();
    return (position[at - 1] == '/' || position[at - 1] == '.') &&
           sameFolded(std::string_view(position).substr(at), typed);
}

} // namespace

Result<Garage> Garage::of(const Workshop &workshop, const ShopFile &file)
{
    Garage garage;
    garage.workshop = &workshop;
    const auto records = file.records();
    if (!records)
        return tl::unexpected(records.error());
    garage.decided = decidedWhenBrought(*records);
    LifeTold told{{}, standingOf(*records)};
    auto seats = seatsOfAll(garage, file, told.records);
    if (!seats)
        return tl::unexpected(seats.error());
    told.seats = std::move(*seats);
    auto lives = carLives(told);
    if (!lives)
        return tl::unexpected(lives.error());
    garage.lives = std::move(*lives);
    const auto documents = file.documents();
    if (!documents)
        return tl::unexpected(documents.error());
    if (auto read = readIntervalsOf(garage, *documents); !read)
        return tl::unexpected(read.error());
    return garage;
}

const CarLife &Garage::life(std::string_view car) const
{
    static const CarLife nothing;
    const auto at = lives.find(car);
    return at == lives.end() ? nothing : at->second;
}

PieceKind Garage::kindOf(const FittedPiece &piece) const
{
    const Part *part = workshop->part(piece.piece.part);
    if (!part)
        return {};
    PieceKind kind{part->kind, {}, true, false};
    if (const auto *element = part->as<ElementFacts>()) {
        kind.medium = element->medium;
        kind.washable = element->washable;
    } else if (const auto *filter = part->as<FilterFacts>()) {
        kind.medium = filter->element.empty() ? filter->medium : std::string();
        kind.isSealed = !filter->serviceable;
    } else if (const auto *pump = part->as<PumpFacts>()) {
        kind.isSealed = !pump->serviceable;
    } else if (const auto *hose = part->as<HoseFacts>()) {
        kind.medium = hose->liner;
        kind.washable = false;
    } else if (part->kind == Kind::Tank) {
        kind.medium = part->says("cell") ? "cell" : part->material;
    }
    // A made-up hose is of its hose's liner.
    if (const auto made = workshop->notes.hoses.find(piece.piece.part);
        made != workshop->notes.hoses.end()) {
        const Part *hose = workshop->catalogue.find(made->second.hose);
        kind = {Kind::Hose, hose && hose->as<HoseFacts>() ? hose->as<HoseFacts>()->liner : "",
                false, false};
    }
    if (part->kind == Kind::Ring || part->kind == Kind::Washer || isUsedByMeasure(part->kind))
        kind.washable = false;
    return kind;
}

std::vector<const Interval *> Garage::intervalsOf(const FittedPiece &piece,
                                                  std::string_view car) const
{
    return intervalsFor(intervals, piece, kindOf(piece), car);
}

const FittedPiece *Garage::protecting(const FittedPiece &piece, const CarLife &life) const
{
    const auto at = words.find(piece.position);
    if (!kindOf(piece).isSealed || at == words.end() || at->second.filter.empty())
        return nullptr;
    const FittedPiece *element = life.at(at->second.filter + ".element");
    return element ? element : life.at(at->second.filter);
}

std::string Garage::said(const FittedPiece &piece) const
{
    const auto at = words.find(piece.position);
    return at == words.end() || at->second.said.empty() ? piece.position : at->second.said;
}

std::vector<ComingEvent> Garage::eventsOf(std::string_view car, std::string_view today) const
{
    std::vector<ComingEvent> events;
    for (const Event *one : workshop->season.from(today)) {
        if (one->takes(car))
            events.push_back(
                {one->id, one->title, one->firstDay, one->lastDay, one->runs, one->hours});
    }
    return events;
}

std::string pieceText(const LotKey &piece)
{
    return piece.lot.empty() ? piece.part : piece.part + " " + piece.lot;
}

std::string stateOf(const FittedPiece &piece, const Garage &garage, const std::string &car)
{
    return spentBecause(piece, garage.intervalsOf(piece, car)).empty() ? "in" : "spent";
}

bool isPlainRing(const FittedPiece &piece)
{
    return (piece.position.ends_with(".ring") || piece.position.ends_with(".washer")) &&
           piece.useBy.empty() && piece.made.empty() && !piece.damaged;
}

Result<const Place *> carAsked(const std::string &typed, const Ledger &ledger)
{
    auto place = placeAsked(typed, ledger);
    if (!place || (*place)->kind == PlaceKind::Car)
        return place;
    std::string cars;
    for (const Place &one : ledger.places()) {
        if (one.kind == PlaceKind::Car)
            cars += (cars.empty() ? "" : ", ") + one.id;
    }
    return problem(typed, "is no car", "Cars are: " + cars + ".");
}

Result<const FittedPiece *> positionAsked(const std::string &typed, const Garage &garage,
                                          const CarLife &life)
{
    std::vector<const FittedPiece *> meant;
    const auto collect = [&](const auto &isMeant) {
        if (!meant.empty())
            return;
        for (const FittedPiece &piece : life.fitted) {
            if (isMeant(piece))
                meant.push_back(&piece);
        }
    };
    collect([&](const FittedPiece &one) { return sameFolded(one.position, typed); });
    collect([&](const FittedPiece &one) { return endsWith(one.position, typed); });
    collect([&](const FittedPiece &one) { return sameFolded(garage.said(one), typed); });
    collect([&](const FittedPiece &one) {
        return sameFolded(one.piece.part, typed) || (!typed.empty() && one.piece.lot == typed);
    });
    if (meant.size() == 1)
        return meant.front();
    std::string all;
    for (const FittedPiece *one : meant)
        all += (all.empty() ? "" : ", ") + one->position;
    if (!meant.empty())
        return problem(typed, "may be several positions", "Name one: " + all + ".");
    std::vector<std::string_view> known;
    for (const FittedPiece &one : life.fitted)
        known.push_back(one.position);
    const std::string_view near = nearestWord(typed, known);
    return problem(typed, "is no position of " + life.car,
                   near.empty() ? "Look at what is in it: flarestock service " + life.car + "."
                                : "Perhaps " + std::string(near) + " is meant.");
}

} // namespace flarestock
