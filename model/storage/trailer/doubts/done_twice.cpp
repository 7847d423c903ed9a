// SPDX-License-Identifier: MIT

#include "model/storage/trailer/doubts/done_twice.h"

#include "model/servicing/outing.h"

namespace flarestock {

WorksBySeat worksBySeat(const std::vector<NewsEntry> &news, bool byShop,
                        const std::function<bool(Work)> &isMeant)
{
    std::vector<Record> records;
    for (const NewsEntry &entry : news) {
        if (entry.record)
            records.push_back(*entry.record);
    }
    WorksBySeat all;
    for (const Record &record : standingOf(records)) {
        if (record.kind != RecordKind::Servicing)
            continue;
        auto done = Serviced::read(record);
        if (!done)
            throw StorageFailure{done.error()};
        if (isMeant(done->work))
            all[{done->car, done->position}].push_back({std::move(*done), record, byShop});
    }
    return all;
}

std::vector<Movement> DoneTwice::movementsOf(const OneWork &one) const
{
    std::vector<Movement> all;
    eachMovement(one.byShop ? m_sides.shop : m_sides.copy, [&](const Movement &movement) {
        if (movement.action.value_or(movement.id).text() == one.done.action)
            all.push_back(movement);
    });
    return all;
}

void DoneTwice::giveBack(const Movement &past)
{
    Movement back =
        m_into.own.movement(target(past), past.quantity, past.from, "was written down twice");
    back.reverses = past.id;
    back.deed = past.deed;
    if (back.lot != past.lot)
        back.newLot = past.lot;
    if (back.condition != past.condition)
        back.newCondition = past.condition;
    back.document = past.document;
    m_entries.append(std::move(back));
}

void DoneTwice::takeBack(const OneWork &one)
{
    Record back = takingBack(one.record);
    back.id = m_into.own.nextId();
    back.who = m_into.own.who;
    back.at = m_into.own.at;
    static_cast<void>(m_into.writer.append(back));
}

void DoneTwice::holdsNot(const std::vector<OneWork> &works)
{
    for (auto one = works.rbegin(); one != works.rend(); ++one) {
        const auto movements = movementsOf(*one);
        for (auto past = movements.rbegin(); past != movements.rend(); ++past) {
            if (!past->reverses && past->quantity > 0 && !isTakenBack(m_into.connection, past->id))
                giveBack(*past);
        }
        takeBack(*one);
    }
}

} // namespace flarestock
