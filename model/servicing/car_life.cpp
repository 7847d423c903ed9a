// SPDX-License-Identifier: MIT

#include "model/servicing/car_life.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What is known of a piece with a lot or serial, wherever it is.
struct Past {
    Use life;
    std::int64_t washed = 0;
    std::string made;
    std::string useBy;
};

using Pasts = std::map<LotKey, Past>;

class Living {
public:
    Living(std::string car, Pasts &past) : m_past(past) { m_life.car = std::move(car); }
    void put(const SeatedPiece &seat);
    void ran(const Outing &outing);
    void done(const Serviced &one);
    [[nodiscard]] CarLife finished();

private:
    void fit(FittedPiece piece);
    void fitNew(const Serviced &one);
    /// What is at the position goes out; `as`: what it is called, and is, from then on.
    void leave(const Serviced &as);
    void washOutside(const Serviced &one);

    Pasts &m_past; ///< Of the whole shop.
    CarLife m_life;
    std::map<std::string, FittedPiece> m_fitted;
};

void Living::fit(FittedPiece piece)
{
    piece.worked = piece.since;
    piece.seen = piece.since;
    if (const auto past = m_past.find(piece.piece); past != m_past.end()) {
        piece.life = past->second.life;
        piece.washed = std::max(piece.washed, past->second.washed);
        if (piece.made.empty())
            piece.made = past->second.made;
        if (piece.useBy.empty())
            piece.useBy = past->second.useBy;
    }
    std::erase_if(m_life.out, [&piece](const PieceOut &out) {
        return !piece.piece.lot.empty() && out.piece == piece.piece;
    });
    const std::string at = piece.position;
    m_fitted.insert_or_assign(at, std::move(piece));
}

void Living::put(const SeatedPiece &seat)
{
    FittedPiece piece;
    piece.position = seat.position;
    piece.build = seat.build;
    piece.piece = seat.piece;
    piece.quantity = seat.quantity;
    piece.since = seat.day;
    piece.made = seat.made;
    piece.useBy = seat.useBy;
    piece.inside = seat.inside;
    fit(std::move(piece));
}

void Living::ran(const Outing &outing)
{
    for (auto &[position, piece] : m_fitted) {
        for (Use *use : {&piece.sinceFitted, &piece.sinceWorked, &piece.sinceSeen, &piece.life})
            use->add(outing);
    }
    m_life.outings.push_back(outing);
}

void Living::leave(const Serviced &as)
{
    const auto at = m_fitted.find(as.position);
    if (at == m_fitted.end())
        return;
    const FittedPiece &was = at->second;
    const LotKey name = as.old.part.empty() ? was.piece : as.old;
    if (!name.lot.empty())
        m_past[name] = {was.life, was.washed, was.made, was.useBy};
    m_life.out.insert(m_life.out.begin(),
                      {name, as.position, as.day, as.oldIs, was.washed, was.life, as.note});
    m_fitted.erase(at);
}

void Living::fitNew(const Serviced &one)
{
    FittedPiece piece;
    piece.position = one.position;
    piece.build = one.build;
    piece.piece = one.piece;
    piece.quantity = one.quantity;
    piece.since = one.day;
    piece.washed = one.washed;
    piece.made = one.made;
    piece.useBy = one.useBy;
    if (one.work == Work::Fitted) // Said when it was replaced, it is of the one that went out.
        piece.note = one.note;
    piece.sinceFitted.runs = piece.sinceWorked.runs = piece.sinceSeen.runs = one.hadRuns;
    piece.sinceFitted.hours = piece.sinceWorked.hours = piece.sinceSeen.hours = one.hadHours;
    piece.life.runs = one.hadRuns;
    piece.life.hours = one.hadHours;
    fit(std::move(piece));
}

/// A piece that is out, washed at the bench: good to go in again.
void Living::washOutside(const Serviced &one)
{
    for (PieceOut &out : m_life.out) {
        if (out.piece != one.piece)
            continue;
        out.washed += 1;
        out.is = PieceCondition::UsedAndGood;
        out.note = one.note;
        if (const auto past = m_past.find(one.piece); past != m_past.end())
            past->second.washed += 1;
        return;
    }
}

void Living::done(const Serviced &one)
{
    m_life.done.push_back(one);
    const auto at = m_fitted.find(one.position);
    // A piece that went out may be washed while another is where it was.
    const bool isThere =
        at != m_fitted.end() && (one.work != Work::Washed || at->second.piece == one.piece);
    switch (one.work) {
    case Work::Fitted:
    case Work::Replaced:
        leave(one);
        return fitNew(one);
    case Work::TakenOut:
        return leave(one);
    case Work::Washed:
        if (!isThere)
            return washOutside(one);
        at->second.washed += 1;
        at->second.worked = one.day;
        at->second.sinceWorked = {};
        [[fallthrough]];
    case Work::Inspected:
        if (!isThere)
            return;
        at->second.seen = one.day;
        at->second.sinceSeen = {};
        at->second.note = one.note;
        return;
    case Work::Damaged:
        if (!isThere)
            return;
        at->second.damaged = true;
        at->second.note = one.note;
    }
}

CarLife Living::finished()
{
    for (auto &[position, piece] : m_fitted)
        m_life.fitted.push_back(std::move(piece));
    return std::move(m_life);
}

/// What happened to a car, on its day.
struct Happening {
    std::string day;
    std::string car;
    const SeatedPiece *seat = nullptr;
    std::optional<Outing> outing;
    std::optional<Serviced> serviced;
};

Result<std::vector<Happening>> happeningsOf(const LifeTold &told)
{
    std::vector<Happening> all;
    for (const SeatedPiece &seat : told.seats)
        all.push_back({seat.day, seat.car, &seat, {}, {}});
    for (const Record &record : told.records) {
        if (record.kind == RecordKind::Outing) {
            auto outing = Outing::read(record);
            if (!outing)
                return tl::unexpected(outing.error());
            all.push_back({outing->day, outing->car, nullptr, std::move(*outing), {}});
        } else if (record.kind == RecordKind::Servicing) {
            auto serviced = Serviced::read(record);
            if (!serviced)
                return tl::unexpected(serviced.error());
            all.push_back({serviced->day, serviced->car, nullptr, {}, std::move(*serviced)});
        }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Happening &a, const Happening &b) { return a.day < b.day; });
    return all;
}

} // namespace

void Use::add(const Outing &outing)
{
    runs += outing.runs;
    hours += outing.hours;
    events.insert(outing.event);
}

Result<CarLives> carLives(const LifeTold &told)
{
    const auto all = happeningsOf(told);
    if (!all)
        return tl::unexpected(all.error());
    Pasts past;
    std::map<std::string, Living> living;
    for (const Happening &one : *all) {
        Living &car = living.try_emplace(one.car, one.car, past).first->second;
        if (one.seat)
            car.put(*one.seat);
        else if (one.outing)
            car.ran(*one.outing);
        else
            car.done(*one.serviced);
    }
    CarLives lives;
    for (auto &[car, one] : living)
        lives.emplace(car, one.finished());
    return lives;
}

const FittedPiece *CarLife::at(std::string_view position) const noexcept
{
    const auto found = std::find_if(fitted.begin(), fitted.end(), [position](const auto &one) {
        return one.position == position;
    });
    return found == fitted.end() ? nullptr : &*found;
}

Use CarLife::use() const
{
    Use all;
    for (const Outing &outing : outings)
        all.add(outing);
    return all;
}

} // namespace flarestock
