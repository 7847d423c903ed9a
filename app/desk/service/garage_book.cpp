// SPDX-License-Identifier: MIT

#include "app/desk/service/garage_book.h"

#include "model/storage/trailer/travelling.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isRingPosition(const std::string &position)
{
    return position.ends_with(".ring") || position.ends_with(".washer");
}

/// Of positions that no line says the place of: as liquids mostly flow, then hoses, then fluids.
int rankOf(const PieceKind &kind)
{
    if (!kind.kind)
        return 6;
    switch (*kind.kind) {
    case Kind::Tank:
        return 0;
    case Kind::Filter:
    case Kind::Element:
        return 1;
    case Kind::Pump:
        return 2;
    case Kind::Regulator:
        return 3;
    case Kind::Hose:
        return 5;
    default:
        return 4;
    }
}

} // namespace

Result<std::shared_ptr<const GarageBook>>
GarageBook::of(const std::shared_ptr<const Workshop> &workshop, const ShopFile &file,
               const std::string &today)
{
    auto garage = Garage::of(*workshop, file);
    if (!garage)
        return tl::unexpected(garage.error());
    const auto book = std::make_shared<GarageBook>();
    book->workshop = workshop;
    book->garage = std::move(*garage);
    book->today = today;
    const auto trip = Travelling::ownTrip(file);
    if (!trip)
        return tl::unexpected(trip.error());
    if (*trip)
        book->along = (*trip)->places;
    for (const Place &place : workshop->ledger.places()) {
        if (place.kind == PlaceKind::Car)
            book->cars.push_back(place.id);
    }
    auto works = dueList(book->garage, {{}, {}, {}, today, true});
    if (!works)
        return tl::unexpected(works.error());
    book->works = std::move(*works);
    for (std::size_t at = 0; at < book->works.size(); ++at)
        book->m_worksOf[book->works[at].work.piece].push_back(at);
    return std::shared_ptr<const GarageBook>(book);
}

const FittedPiece *GarageBook::piece(const CarPosition &at) const
{
    return garage.life(at.car).at(at.position);
}

std::string outPosition(const PieceOut &out)
{
    return "out|" + out.piece.part + "|" + out.piece.lot;
}

std::vector<const PieceOut *> GarageBook::outOf(const std::string &carId) const
{
    std::vector<const PieceOut *> all;
    std::set<LotKey> seen;
    for (const PieceOut &out : garage.life(carId).out) {
        const auto balances = workshop->ledger.balancesOf(out.piece.part);
        const bool lies = std::any_of(balances.begin(), balances.end(), [&](const auto &one) {
            const Place *place = workshop->ledger.place(one.first.place);
            return one.first.lot == out.piece.lot && one.second.quantity > 0 && place &&
                   isStock(place->kind) && one.first.condition == PieceCondition::ToBeChecked;
        });
        if (lies && seen.insert(out.piece).second)
            all.push_back(&out);
    }
    return all;
}

bool GarageBook::isToldApart(const PieceOut &out, const std::string &carId) const
{
    const auto &fitted = garage.life(carId).fitted;
    return !out.piece.lot.empty() &&
           std::none_of(fitted.begin(), fitted.end(),
                        [&out](const FittedPiece &one) { return one.piece.lot == out.piece.lot; });
}

const PieceOut *GarageBook::out(const CarPosition &at) const
{
    if (!at.position.starts_with("out|"))
        return nullptr;
    const auto all = outOf(at.car);
    const auto found = std::find_if(all.begin(), all.end(), [&at](const PieceOut *one) {
        return outPosition(*one) == at.position;
    });
    return found == all.end() ? nullptr : *found;
}

std::vector<const DueLine *> GarageBook::worksOf(const FittedPiece &piece) const
{
    std::vector<const DueLine *> lines;
    const auto of = m_worksOf.find(&piece);
    for (const std::size_t at : of == m_worksOf.end() ? std::vector<std::size_t>() : of->second)
        lines.push_back(&works[at]);
    return lines;
}

const Place *GarageBook::car(const std::string &id) const
{
    const Place *place = workshop->ledger.place(id);
    return place && place->kind == PlaceKind::Car ? place : nullptr;
}

std::vector<std::string> GarageBook::positionsOf(const std::string &carId, bool rings) const
{
    const CarLife &life = garage.life(carId);
    std::vector<std::string> positions;
    for (const BuildPlan &plan : workshop->builds) {
        if (plan.car != carId)
            continue;
        std::vector<std::pair<int, std::string>> line;
        const std::string start = plan.id + "/";
        for (auto at = garage.words.lower_bound(start);
             at != garage.words.end() && at->first.starts_with(start); ++at) {
            const FittedPiece *there = life.at(at->first);
            if (!there ? !isRingPosition(at->first) : rings || !isPlainRing(*there))
                line.emplace_back(at->second.flow, at->first);
        }
        std::sort(line.begin(), line.end());
        for (auto &[flow, position] : line)
            positions.push_back(std::move(position));
    }
    std::vector<std::pair<int, std::string>> own;
    for (const FittedPiece &there : life.fitted) {
        if (!garage.words.contains(there.position))
            own.emplace_back(rankOf(garage.kindOf(there)), there.position);
    }
    std::stable_sort(own.begin(), own.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    for (auto &[rank, position] : own)
        positions.push_back(std::move(position));
    return positions;
}

const BuildPlan *GarageBook::buildOf(const std::string &position) const
{
    return workshop->build(position.substr(0, position.find('/')));
}

std::string GarageBook::systemOf(const std::string &position) const
{
    const BuildPlan *plan = buildOf(position);
    const auto form =
        plan ? workshop->templates->find(plan->templateId) : workshop->templates->end();
    return form == workshop->templates->end() ? std::string() : form->second->system;
}

std::string GarageBook::saidPosition(const CarPosition &at) const
{
    if (const PieceOut *gone = out(at))
        return gone->piece.part + (gone->piece.lot.empty() ? "" : ", " + gone->piece.lot);
    const auto words = garage.words.find(at.position);
    if (words != garage.words.end() && !words->second.said.empty())
        return words->second.said;
    return at.position;
}

} // namespace flarestock
