// SPDX-License-Identifier: MIT
//
// A shop with a long journal, as one has it after years: parts that come with what they cost, go
// from bin to drawer and onto cars, batches of them by lot, hose that is cut off coils. All of it
// from a seed: what is drawn is the same in every run.

#pragma once

#include "model/storage/shop_file.h"

#include <map>
#include <random>

namespace flarestock::tests {

struct LongShop {
    std::uint32_t parts = 20'000; ///< Every hundredth is a hose, at least one.
    Costing costing = Costing::MovingAverage;
    std::uint32_t seed = 1;
};

/// What such a shop begins with: sixty places and a catalogue.
inline NewShop newLongShop(const LongShop &size);

/// Its journal, action by action; of one seed the next movements are the same in every run.
class LongJournal {
public:
    explicit LongJournal(const LongShop &size) : m_size(size), m_random(size.seed) {}

    /// The next movements, at least so many: whole actions of one to three.
    [[nodiscard]] Action next(std::size_t movements)
    {
        Action action;
        while (action.movements.size() < movements)
            addAction(action.movements);
        return action;
    }
    /// One movement of a part that has been received before; of it there is enough.
    [[nodiscard]] Movement oneMore() { return received(drawnPart(), drawn(5) + 1); }

private:
    struct Lying {
        std::string place;
        std::string lot;
        std::int64_t quantity = 0;
    };

    std::uint32_t drawn(std::uint32_t below)
    {
        return static_cast<std::uint32_t>(m_random() % below); // The same on every library.
    }
    /// Half of all movements are of a tenth of the parts.
    std::uint32_t drawnPart()
    {
        return drawn(2) == 0 ? drawn(std::max(m_size.parts / 10, 1U)) : drawn(m_size.parts);
    }
    [[nodiscard]] bool isHose(std::uint32_t part) const { return part % 100 == 0; }
    [[nodiscard]] std::int64_t unitOf(std::uint32_t part) const
    {
        return isHose(part) ? 2'438'400 : 1; // One foot in lengths of 125 nm, or one piece.
    }
    std::string drawnBin() { return "bin-" + std::to_string(drawn(30)); }
    std::string drawnCar() { return "car-" + std::to_string(drawn(4)); }

    Movement movement(std::uint32_t part, std::int64_t quantity)
    {
        ++m_count;
        std::array<std::uint8_t, 10> bytes{};
        for (std::size_t i = 0; i < 4; ++i)
            bytes[i + 2] = static_cast<std::uint8_t>(m_count >> (24 - 8 * i));
        Movement made;
        made.at = 1'500'000'000'000 + m_count * 30'000; // One every half minute.
        made.id = MovementId::make(made.at, bytes);
        made.part = partName(part, isHose(part));
        made.quantity = quantity;
        made.who = "workshop";
        return made;
    }

    Movement received(std::uint32_t part, std::uint32_t units)
    {
        auto made = movement(part, units * unitOf(part));
        made.value = static_cast<std::int64_t>(units) * (3'000'000 + drawn(9'000'000)) + drawn(7);
        made.from = "supplier-" + std::to_string(drawn(5));
        made.to = drawnBin();
        made.deed = Deed::Receive;
        made.document = "note " + std::to_string(m_count);
        if (isHose(part) || part % 4 == 1)
            made.lot = "L" + std::to_string(m_count);
        put(part, made);
        return made;
    }

    Movement taken(std::uint32_t part, Lying &lying, std::string to)
    {
        const std::int64_t unit = unitOf(part);
        const auto most = static_cast<std::uint32_t>(lying.quantity / unit);
        auto made = movement(part, unit * (drawn(std::min(most, 3U)) + 1));
        made.from = lying.place;
        made.to = std::move(to);
        made.lot = lying.lot;
        lying.quantity -= made.quantity;
        return made;
    }

    void put(std::uint32_t part, const Movement &made)
    {
        m_lying[part].push_back({made.to, made.lot, made.quantity});
    }

    void addAction(std::vector<Movement> &movements)
    {
        const auto part = drawnPart();
        auto &here = m_lying[part];
        std::erase_if(here, [](const Lying &one) { return one.quantity == 0; });
        if (here.size() < 2) {
            movements.push_back(received(part, 10 + drawn(20)));
            return;
        }
        const auto which = drawn(static_cast<std::uint32_t>(here.size()));
        if (drawn(3) == 0) { // Into a drawer of the trailer.
            auto moved = taken(part, here[which], "drawer-" + std::to_string(drawn(10)));
            if (moved.from != moved.to)
                movements.push_back(moved);
            put(part, moved);
            return;
        }
        auto issued = taken(part, here[which], drawnCar());
        issued.deed = isHose(part) ? Deed::Cut : Deed::Issue;
        issued.document = "build-" + std::to_string(drawn(500));
        movements.push_back(issued);
        if (drawn(4) == 0) {
            auto used = movement(part, issued.quantity);
            used.from = issued.to;
            used.to = "used-up";
            used.lot = issued.lot;
            used.action = issued.id;
            movements.push_back(std::move(used));
        }
    }

public:
    static std::string partName(std::uint32_t part, bool isHose)
    {
        std::string name = std::to_string(part);
        name.insert(0, 6 - std::min<std::size_t>(name.size(), 6), '0');
        return (isHose ? "H" : "P") + name;
    }

private:
    LongShop m_size;
    std::mt19937 m_random;
    std::int64_t m_count = 0;
    std::map<std::uint32_t, std::vector<Lying>> m_lying;
};

inline NewShop newLongShop(const LongShop &size)
{
    NewShop shop{{"A shop of years", Currency::parse("USD").value(), size.costing},
                 {},
                 {{"shop.toml", "title = \"A shop of years\"\n"}},
                 {},
                 {},
                 "workshop",
                 1'500'000'000'000};
    const auto add = [&shop](const std::string &name, int count, PlaceKind kind) {
        for (int i = 0; i < count; ++i)
            shop.places.push_back(
                {name + "-" + std::to_string(i), name + " " + std::to_string(i), kind});
    };
    add("bin", 30, PlaceKind::Bin);
    add("drawer", 10, PlaceKind::Drawer);
    add("shelf", 5, PlaceKind::Shelf);
    add("car", 4, PlaceKind::Car);
    add("supplier", 5, PlaceKind::Supplier);
    for (const auto &[id, kind] :
         std::map<std::string, PlaceKind>{{"used-up", PlaceKind::UsedUp},
                                          {"opening", PlaceKind::Opening},
                                          {"bench", PlaceKind::Bench},
                                          {"scrap", PlaceKind::Scrap},
                                          {"difference", PlaceKind::Difference},
                                          {"repair", PlaceKind::Repair}})
        shop.places.push_back({id, id, kind});
    std::string pieces = "part,kind,description\n";
    std::string hoses = "part,kind,description,unit,ports,suits,rated,lowest,highest,construction,"
                        "dash,bore,liner,conductive,clamped,bend radius\n";
    for (std::uint32_t part = 0; part < size.parts; ++part) {
        if (part % 100 == 0)
            hoses += LongJournal::partName(part, true) +
                     ",hose,\"hose -6, coolant\",in,cut: HOSE EP -6,water-glycol,150 psi,-40 C,"
                     "130 C,EP,6,0.375 in,EPDM,no,yes,1.5 in\n";
        else
            pieces += LongJournal::partName(part, false) + ",bracket,one of many\n";
    }
    shop.documents["parts/hoses.csv"] = hoses;
    shop.documents["parts/brackets.csv"] = pieces;
    return shop;
}

} // namespace flarestock::tests
