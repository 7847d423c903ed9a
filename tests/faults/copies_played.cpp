// SPDX-License-Identifier: MIT
//
// Copies played: a shop and its travelling copies, played through from a seed with the real writer
// and the real merge: random actions on all sides, copies brought in random orders, twice, stopped
// half-way, gone on with and brought again. What has to hold is asked of the files alone:
//
//   - all that was acknowledged anywhere is in the shop, each once; nothing else came
//   - brought twice is brought once: not a row more
//   - A and then B comes to the same as B and then A: same entries; same stock and claims where
//     nothing disagreed, else but for the differences that were named; no value lost
//   - of what both have counted as much lies there as the word on it says; no word is wanted where
//     both found the same
//   - nothing is written before a word is said on all that disagrees, nor where it was stopped
//   - the shop is whole: chains, balances, layers and claims are the fold of its journal
//   - the clock changes nothing of it
//
//   copies_played FOLDER FIRST COUNT      seeds FIRST, FIRST + 1 …, twenty of them a play; exit
//   status
//   1
//                                         where one fails

#include "played_counts.h"
#include "played_hands.h"

#include <algorithm>
#include <array>
#include <iostream>
#include <random>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

class Play : private Hands {
public:
    Play(std::filesystem::path folder, unsigned seed, Clock clock)
        : Hands(seed, clock), m_folder(std::move(folder))
    {
    }

    /// A shop and its copies, from the first seed of the play.
    void begin(const std::filesystem::path &begun)
    {
        const bool average = below(2) == 0;
        m_scarce = below(2) == 0;
        std::filesystem::copy_file(begun / (average ? "begun-average" : "begun-fifo"), shopPath());
        m_shop.emplace(good(ShopFile::open(shopPath(), OpenMode::ReadWrite), "open"));
        fill();
        const unsigned copies = 1 + below(3);
        for (unsigned i = 0; i < copies; ++i) {
            act(*m_shop, below(3));
            takeOne();
        }
    }

    /// One seed: all do something, some are brought, some twice, some are stopped half-way.
    void round(unsigned seed)
    {
        m_dice.seed(seed);
        act(*m_shop, below(3));
        for (const Away &copy : m_away)
            act(*copy.file, below(3));
        const Away &copy = m_away[below(static_cast<unsigned>(m_away.size()))];
        if (below(6) == 0)
            countOnBothSides(*copy.file);
        bring(copy, *m_shop, below(2) == 0);
        if (below(8) == 0)
            bringAgain(copy);
        if (below(8) == 0)
            lookThrough();
    }

    /// The last of a play: whatever is left is brought in one order and in the other.
    Seen end(unsigned seed)
    {
        m_dice.seed(seed);
        act(*m_shop, below(4));
        for (const Away &copy : m_away)
            act(*copy.file, 1 + below(4));
        m_shop.reset();
        const auto other = m_folder / "other";
        std::filesystem::copy_file(shopPath(), other);
        auto order = inAnyOrder();
        const bool disagreed = bringAll(shopPath(), order);
        m_shop.emplace(good(ShopFile::open(shopPath(), OpenMode::ReadWrite), "open again"));
        const Seen one = lookThrough();
        if (one.ids != m_acknowledged)
            wrong("what was acknowledged is not what is there: " +
                  std::to_string(m_acknowledged.size()) + " and " + std::to_string(one.ids.size()));
        if (order.size() > 1) {
            std::reverse(order.begin(), order.end());
            compare(one, other, bringAll(other, order) || disagreed);
        }
        return one;
    }

private:
    struct Away {
        std::filesystem::path path;
        std::shared_ptr<ShopFile> file;
    };

    void fill()
    {
        std::vector<Movement> first;
        for (const char *part : {"P0", "P1", "P2"}) {
            for (const char *place : {"A1", "T1"}) {
                first.push_back(movement(m_scarce ? 1 + below(3) : 60, "opening", place));
                first.back().part = part;
                first.back().value = 1 + below(9'000'000);
            }
        }
        if (!m_shop->append(first))
            wrong("the opening is refused");
        for (const Movement &one : first)
            note(one.id);
        m_past = first;
    }

    void countOnBothSides(ShopFile &copy)
    {
        const BalanceKey key{"P" + std::to_string(below(3)), somePlace(), {}, PieceCondition::New};
        countAt(*m_shop, key);
        act(copy, below(2));
        countAt(copy, key);
    }

    void takeOne()
    {
        const auto path = m_folder / ("copy-" + std::to_string(m_away.size()));
        static const std::array<std::vector<std::string>, 3> Places = {{{"T1"}, {"T2"}, {"B1"}}};
        good(Travelling::take(*m_shop, path, {{}, "player", Places[m_away.size()]},
                              {freshId(OwnIds), "player", {}, now()}),
             "take");
        m_away.push_back({path, std::make_shared<ShopFile>(good(
                                    ShopFile::open(path, OpenMode::ReadWrite), "open a copy"))});
    }

    /// Words that leave both sides' entries as they are, so that the order of bringing tells
    /// nothing.
    static std::map<std::string, std::string> neutral(const std::vector<Disagreement> &all)
    {
        static const std::array<std::string, 8> Words = {"difference", "both", "stands", "once",
                                                         "copy",       "keep", "seen",   "shop"};
        std::map<std::string, std::string> words;
        for (const Disagreement &one : all) {
            for (const std::string &word : Words) {
                if (std::any_of(one.choices.begin(), one.choices.end(),
                                [&word](const Choice &choice) { return choice.word == word; })) {
                    words.emplace(one.name, word);
                    break;
                }
            }
        }
        return words;
    }

    std::map<std::string, std::string> drawn(const std::vector<Disagreement> &all)
    {
        std::map<std::string, std::string> words;
        for (const Disagreement &one : all) {
            const Choice &choice = one.choices[below(static_cast<unsigned>(one.choices.size()))];
            words.emplace(one.name,
                          choice.word.ends_with(':') ? one.choices.front().word : choice.word);
        }
        return words;
    }

    Result<BroughtBack> tried(const Away &copy, ShopFile &shop, const Bringing &bringing)
    {
        return Travelling::bring(shop, *copy.file, bringing,
                                 {freshId(OwnIds), "player", {}, now()});
    }

    std::size_t entriesOf(const ShopFile &shop)
    {
        return good(shop.movements(), "movements").size() + good(shop.records(), "records").size();
    }

    std::filesystem::path shopPath() const { return m_folder / "shop"; }

    std::vector<std::size_t> inAnyOrder()
    {
        std::vector<std::size_t> order(m_away.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = i;
        std::shuffle(order.begin(), order.end(), m_dice);
        return order;
    }

    /// All of the shop as it is now.
    Seen lookThrough()
    {
        proveWhole(shopPath());
        return seenIn(*m_shop);
    }

    void bringAgain(const Away &copy)
    {
        const auto before = entriesOf(*m_shop);
        const auto back = good(tried(copy, *m_shop, {{}, true}), "bring again");
        if (!back.already || !back.movements.empty() || entriesOf(*m_shop) != before)
            wrong("brought twice, there is more");
    }

    /// Brings one; returns whether anything disagreed.
    bool bring(const Away &copy, ShopFile &shop, bool anyWord)
    {
        const bool stops = below(16) == 0;
        if (stops) {
            const auto before = entriesOf(shop);
            Bringing bringing;
            const std::size_t last = below(4);
            bringing.step = [last](std::size_t done, std::size_t) { return done < last; };
            const auto back = tried(copy, shop, bringing);
            if (!back && entriesOf(shop) != before)
                wrong("what was stopped left something behind");
        }
        const auto counted = onlyCounted(shop, *copy.file);
        auto back = good(tried(copy, shop, {{}, true}), "bring");
        const auto open = back.disagreements;
        std::map<std::string, std::string> words;
        for (int again = 0; !back.written && !back.already; ++again) {
            if (back.disagreements.empty() || again > 8)
                wrong("nothing is open, and it is not brought");
            for (const auto &[name, word] :
                 anyWord ? drawn(back.disagreements) : neutral(back.disagreements))
                words.emplace(name, word);
            const auto before = again == 0 && below(8) == 0 ? entriesOf(shop) : 0;
            if (before > 0) {
                good(tried(copy, shop, {words, true, true}), "look");
                if (entriesOf(shop) != before)
                    wrong("a look has written something");
            }
            back = good(tried(copy, shop, {words, true}), "bring decided");
        }
        if (!open.empty() && back.already)
            wrong("it was there before a word was said");
        if (back.written && !open.empty() &&
            std::any_of(back.disagreements.begin(), back.disagreements.end(),
                        [](const Disagreement &one) { return one.decided.empty(); }))
            wrong("it was brought before all was decided");
        for (const Disagreement &one : back.disagreements) {
            if (one.decided.empty())
                wrong("it was brought with nothing said on " + one.name);
        }
        const Ledger ledger = good(shop.ledger(), "ledger");
        proveCounted(counted, back.disagreements, ledger);
        proveWords(back.disagreements, ledger);
        return !back.disagreements.empty();
    }

    bool bringAll(const std::filesystem::path &path, const std::vector<std::size_t> &order)
    {
        auto shop = good(ShopFile::open(path, OpenMode::ReadWrite), "open to bring");
        bool disagreed = false;
        for (const std::size_t which : order)
            disagreed = bring(m_away[which], shop, false) || disagreed;
        return disagreed;
    }

    static void compare(const Seen &one, const std::filesystem::path &path, bool disagreed)
    {
        const Seen other = seenIn(good(ShopFile::open(path, OpenMode::ReadOnly), "open to see"));
        proveWhole(path);
        if (one.ids != other.ids)
            wrong("the other way round other entries are there");
        if (one.quantities != other.quantities)
            wrong("the other way round other pieces went");
        if (disagreed)
            return;
        if (one.claims != other.claims || one.values != other.values)
            wrong("the other way round there is another stock");
        for (const auto &[key, held] : one.balances) {
            const auto there = other.balances.find(key);
            if (held.quantity != (there == other.balances.end() ? 0 : there->second.quantity))
                wrong("the other way round another quantity lies at " + key.place);
        }
    }

    std::filesystem::path m_folder;
    bool m_scarce = false;
    std::optional<ShopFile> m_shop;
    std::vector<Away> m_away;
};

/// So many seeds are one play: the shop and its copies go on from one to the next.
constexpr unsigned SeedsOfPlay = 20;

Seen playedIn(const std::filesystem::path &folder, unsigned first, Clock clock)
{
    const auto here = folder / "play";
    std::filesystem::remove_all(here);
    std::filesystem::create_directory(here);
    Play play(here, first, clock);
    play.begin(folder);
    for (unsigned seed = first; seed + 1 < first + SeedsOfPlay; ++seed)
        play.round(seed);
    return play.end(first + SeedsOfPlay - 1);
}

void play(const std::filesystem::path &folder, unsigned first)
{
    const Seen right = playedIn(folder, first, Clock::Right);
    if (first / SeedsOfPlay % 10 != 0)
        return;
    const Seen wild = playedIn(folder, first, Clock::Wild);
    if (right.ids != wild.ids || right.balances != wild.balances || right.claims != wild.claims)
        wrong("by a wrong clock there is another stock");
}

/// Whether the play of these seeds held what it should.
bool holds(const std::filesystem::path &folder, unsigned first)
{
    try {
        play(folder, first);
        return true;
    } catch (const std::runtime_error &error) {
        std::cout << "FLARESTOCK_SEED=" << first << " (to " << first + SeedsOfPlay - 1
                  << "): " << error.what() << std::endl;
        return false;
    }
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 4)
        return 2;
    const std::filesystem::path folder(argv[1]);
    const auto first = static_cast<unsigned>(std::stoul(argv[2]));
    const auto count = static_cast<unsigned>(std::stoul(argv[3]));
    for (const Costing costing : {Costing::MovingAverage, Costing::FirstInFirstOut}) {
        const auto path =
            folder / (costing == Costing::MovingAverage ? "begun-average" : "begun-fifo");
        if (!std::filesystem::exists(path) && !ShopFile::create(path, playedShop(costing)))
            return 2;
    }
    unsigned failed = 0;
    unsigned played = 0;
    for (; played < count && failed < 20; played += SeedsOfPlay)
        failed += holds(folder, first + played) ? 0 : 1;
    std::cout << "played " << played << " seeds, " << failed << " plays failed" << std::endl;
    return failed == 0 ? 0 : 1;
}
