// SPDX-License-Identifier: MIT
//
// Played hands: what is done in a shop or a copy while it is played, by dice. What was refused
// never was; what was acknowledged has to be there in the end.

#pragma once

#include "played_shop.h"

#include <array>
#include <random>

namespace flarestock::tests {

enum class Clock : std::uint8_t { Right, Wild };

class Hands {
protected:
    Hands(unsigned seed, Clock clock)
        : m_dice(seed), m_hands(seed * 2654435761U + 17), m_clock(clock)
    {
    }

    unsigned below(unsigned end) { return static_cast<unsigned>(m_dice() % end); }

    /// Right: it goes on. Wild: a year back, ten years on, a jump in the middle, an hour to and
    /// fro. The dice that it takes are its own, so that all else stays the same.
    std::int64_t now()
    {
        m_at += 60'000;
        if (m_clock == Clock::Right)
            return m_at;
        static const std::array<std::int64_t, 6> Off = {-Year,      10 * Year,  3'600'000,
                                                        -3'600'000, 400 * 1000, 0};
        return m_at + Off[m_hands() % Off.size()];
    }

    MovementId freshId(std::int64_t begins = FirstDay)
    {
        std::array<std::uint8_t, 10> bytes{};
        ++m_ids;
        for (std::size_t i = 0; i < 4; ++i) // Room behind it, as those of an action count on.
            bytes[i + 2] = static_cast<std::uint8_t>(m_ids >> (24 - 8 * i));
        return MovementId::make(begins, bytes);
    }

    Movement movement(std::int64_t quantity, const std::string &from, const std::string &to)
    {
        Movement one;
        one.id = freshId();
        one.part = "P" + std::to_string(below(3));
        one.quantity = quantity;
        one.from = from;
        one.to = to;
        one.who = "player";
        one.at = now();
        return one;
    }

    void note(const MovementId &id) { m_acknowledged.insert(id.text()); }

    void act(ShopFile &file, unsigned actions)
    {
        for (unsigned i = 0; i < actions; ++i)
            actOnce(file);
    }

    const std::string &somePlace()
    {
        static const std::array<std::string, 4> Places = {"A1", "B1", "T1", "T2"};
        return Places[below(4)];
    }

    void append(ShopFile &file, Movement one)
    {
        if (!file.append({one}))
            return; // Refused: it never was.
        note(one.id);
        m_past.push_back(std::move(one));
    }

    void actOnce(ShopFile &file)
    {
        switch (below(10)) {
        case 0:
        case 1:
            return receive(file);
        case 2:
        case 3:
            return append(file, movement(1 + below(2), somePlace(), "car"));
        case 4:
            return issue(file);
        case 5:
            return takeBack(file);
        case 6:
            return count(file);
        case 7:
            return promise(file);
        case 8:
            return say(file);
        default:
            return append(file, movement(1 + below(3), somePlace(), somePlace()));
        }
    }

    void receive(ShopFile &file)
    {
        Movement one = movement(1 + below(4), "supplier", somePlace());
        one.value = below(9'000'000);
        append(file, std::move(one));
    }

    void issue(ShopFile &file)
    {
        Movement one = movement(1, somePlace(), "car");
        one.deed = Deed::Issue;
        one.document = "build-" + std::to_string(below(2));
        append(file, std::move(one));
    }

    void takeBack(ShopFile &file)
    {
        const Movement &past = m_past[below(static_cast<unsigned>(m_past.size()))];
        Movement back = movement(past.quantity, past.to, past.from);
        back.part = past.part;
        back.reverses = past.id;
        append(file, std::move(back));
    }

    void count(ShopFile &file)
    {
        const std::string part = "P" + std::to_string(below(3));
        countAt(file, {part, somePlace(), {}, PieceCondition::New});
    }

    void countAt(ShopFile &file, const BalanceKey &key)
    {
        Count one;
        one.id = freshId();
        one.key = key;
        one.found = below(4);
        one.who = "player";
        one.at = now();
        const MovementId difference = freshId();
        const auto done = file.append(one, difference);
        if (!done)
            return;
        note(one.id);
        if (done->difference)
            note(*done->difference);
    }

    void append(ShopFile &file, const Record &record)
    {
        if (file.append(Action{{record}, {}}))
            note(record.id);
    }

    void promise(ShopFile &file)
    {
        Promise one;
        one.id = freshId();
        one.build = "build-" + std::to_string(below(2));
        one.part = "P" + std::to_string(below(3));
        one.quantity = below(3) == 0 ? -1 : 1 + static_cast<std::int64_t>(below(2));
        one.who = "player";
        one.at = now();
        append(file, one.asRecord());
    }

    void say(ShopFile &file)
    {
        if (below(4) == 0) {
            static_cast<void>(file.putDocument("notes.txt", "word " + std::to_string(++m_words),
                                               "player", now()));
            return;
        }
        const Record record{freshId(),
                            RecordKind::Keeping,
                            "P" + std::to_string(below(3)),
                            {{"place", somePlace()},
                             {"min", std::to_string(below(3))},
                             {"max", std::to_string(3 + below(3))}},
                            "player",
                            now()};
        append(file, record);
    }

    std::mt19937 m_dice;
    std::mt19937 m_hands; ///< The clock's.
    Clock m_clock;
    std::vector<Movement> m_past;
    std::set<std::string> m_acknowledged;
    std::int64_t m_at = FirstDay;
    std::uint32_t m_ids = 0;
    int m_words = 0;
};

} // namespace flarestock::tests
