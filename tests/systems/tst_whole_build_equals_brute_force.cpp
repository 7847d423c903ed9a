// SPDX-License-Identifier: MIT
//
// The joints of whole builds against brute force: every chain of pieces for every joint, grown port
// by port here, and every combination of them, counted part by part. Random small catalogues,
// shelves and prices, for each preference.

#include "tests/systems/bench.h"

#include <QTest>

#include <functional>

using namespace flarestock;

namespace {

/// What one way takes, rings too, and what it counts by itself.
struct Chain {
    std::map<const Part *, int> taken;
    std::vector<const Part *> pieces;
    int narrow = 0;
    int cautions = 0;
};

const Part *ringOf(const Bench &made, const Port &port)
{
    if (port.family != Family::Orb)
        return nullptr;
    const std::string size = dash(port) < 10 ? "90" : "9";
    return made.catalogue->find("OR-" + size + std::to_string(dash(port)));
}

/// All chains from a joint's port to its hose, of at most so many pieces.
class Chains {
public:
    Chains(const Bench &made, const PlacedJoint &joint, std::size_t most)
        : m_made(made), m_joint(joint), m_most(most)
    {
        grow(joint.from, {});
    }

    [[nodiscard]] const std::vector<Chain> &all() const { return m_all; }

private:
    /// Adds the link; false where it does not fit.
    bool meet(const Port &a, const Port &b, Chain &chain) const
    {
        const Mating mating = flarestock::mating(a, b);
        if (!fits(mating.verdict))
            return false;
        chain.cautions += mating.verdict == Verdict::FitsWithCaution ? 1 : 0;
        if (const Part *ring = ringOf(m_made, a))
            ++chain.taken[ring];
        return true;
    }

    void grow(const Port &at, const Chain &chain)
    {
        if (at.family == Family::Hose && dash(at) == dash(m_joint.to))
            m_all.push_back(chain);
        if (at.family == Family::Hose || chain.pieces.size() == m_most)
            return;
        for (const Kind kind : {Kind::Adapter, Kind::HoseEnd})
            for (const Part *part : m_made.catalogue->ofKind(kind))
                for (const std::size_t in : {std::size_t{0}, std::size_t{1}}) {
                    const Port &enters = part->ports[in].port;
                    const Port &leaves = part->ports[1 - in].port;
                    Chain longer = chain;
                    if (enters.family == Family::Hose || !meet(at, enters, longer))
                        continue;
                    ++longer.taken[part];
                    longer.pieces.push_back(part);
                    const int least = std::min(dash(m_joint.from), dash(m_joint.to));
                    for (const Port &port : {enters, leaves})
                        longer.narrow += dash(port) < least ? 1 : 0;
                    grow(leaves, longer);
                }
    }

    const Bench &m_made;
    const PlacedJoint &m_joint;
    std::size_t m_most;
    std::vector<Chain> m_all;
};

/// What the chains come to together, in the order of WayRank as way.h has it for the preference.
std::array<std::int64_t, 7> comeTo(const Bench &made, const std::vector<const Chain *> &chains,
                                   Preference preference)
{
    std::map<const Part *, int> taken;
    WayRank rank;
    for (const Chain *chain : chains) {
        for (const auto &[part, count] : chain->taken)
            taken[part] += count;
        rank.pieces += static_cast<int>(chain->pieces.size());
        rank.narrow += chain->narrow;
        rank.cautions += chain->cautions;
    }
    for (const auto &[part, count] : taken) {
        const auto on = made.shelf.find(part->number);
        const int free =
            on == made.shelf.end() ? 0 : static_cast<int>(on->second.free.amount.toInt64().value());
        const int here = std::min(free, count);
        Decimal cost;
        if (here > 0)
            cost = on->second.value * Decimal(here) * (free == 2 ? Decimal::scaled(5, 1) : 1);
        const int toBuy = count - here;
        const Offer *offer = toBuy > 0 ? made.catalogue->bestOffer(*part, toBuy) : nullptr;
        if (offer)
            cost += offer->priceEach(toBuy) * Decimal(toBuy);
        rank.toBuy += toBuy;
        rank.unpriced += toBuy > 0 && !offer ? toBuy : 0;
        rank.costMicro += (cost * Decimal(1'000'000)).toInt64().value();
    }
    if (preference == Preference::Joints)
        return {
            0, rank.narrow, rank.pieces, rank.toBuy, rank.cautions, rank.unpriced, rank.costMicro};
    if (preference == Preference::Money)
        return {0,          rank.narrow, rank.unpriced, rank.costMicro, rank.cautions,
                rank.toBuy, rank.pieces};
    return {0, rank.narrow, rank.toBuy, rank.pieces, rank.cautions, rank.unpriced, rank.costMicro};
}

using ChainsByJoint = std::vector<std::vector<Chain>>;

ChainsByJoint chainsOf(const Bench &made, const Expansion &build, Preference preference)
{
    ChainsByJoint all;
    for (const PlacedJoint &joint : build.joints) {
        auto &of = all.emplace_back(Chains(made, joint, 4).all());
        const auto shortest =
            std::min_element(of.begin(), of.end(), [](const Chain &a, const Chain &b) {
                return a.pieces.size() < b.pieces.size();
            });
        const std::size_t most = shortest == of.end() ? 0 : shortest->pieces.size() + 1;
        if (preference == Preference::Shelf) // No chain is more than one piece longer.
            std::erase_if(of, [most](const Chain &one) { return one.pieces.size() > most; });
    }
    return all;
}

std::size_t choicesOf(const ChainsByJoint &chains)
{
    std::size_t choices = 1;
    for (const auto &of : chains)
        choices *= of.size();
    return choices;
}

/// Of all combinations.
std::array<std::int64_t, 7> lowest(const Bench &made, const ChainsByJoint &chains,
                                   Preference preference)
{
    std::optional<std::array<std::int64_t, 7>> best;
    for (std::size_t choice = 0; choice < choicesOf(chains); ++choice) {
        std::vector<const Chain *> all;
        std::size_t rest = choice;
        for (const auto &of : chains) {
            all.push_back(&of[rest % of.size()]);
            rest /= of.size();
        }
        const auto sum = comeTo(made, all, preference);
        if (!best || sum < *best)
            best = sum;
    }
    return best.value();
}

/// What the build's own ways come to.
std::array<std::int64_t, 7> chosen(const Bench &made, const Expansion &build,
                                   const ChainsByJoint &chains, Preference preference)
{
    std::vector<const Chain *> all;
    for (std::size_t i = 0; i < build.joints.size(); ++i) {
        const auto &pieces = build.joints[i].way.value().pieces;
        const auto isIt = [&pieces](const Chain &chain) {
            return std::equal(chain.pieces.begin(), chain.pieces.end(), pieces.begin(),
                              pieces.end(),
                              [](const Part *a, const Piece &b) { return a == b.part; });
        };
        const auto found = std::find_if(chains[i].begin(), chains[i].end(), isIt);
        assert(found != chains[i].end() && "a chain that can be grown");
        all.push_back(&*found);
    }
    return comeTo(made, all, preference);
}

/// A cell, a pump and a regulator; some of the adapters and hose ends that could join them.
Bench drawn(const std::function<int(int)> &pick)
{
    Bench made;
    made.hose("PT");
    made.part("FC-1", Kind::Tank, "out: ORB -6 female");
    made.part("EP-1", Kind::Pump, "in: AN -6 male; out: ORB -8 female");
    made.part("RG-1", Kind::Regulator, "in: AN -6 male");
    made.part("OR-906", Kind::Ring).facts = RingFacts{"AS568-906"};
    made.part("OR-908", Kind::Ring).facts = RingFacts{"AS568-908"};
    const std::array<const char *, 8> kinds{
        "a: ORB -6 male; b: AN -6 male",          "a: ORB -8 male; b: AN -6 male",
        "a: ORB -8 male; b: AN -8 male",          "a: ORB -6 male; b: AN -8 male",
        "a: AN -8 female swivel; b: AN -6 male",  "a: AN -6 female swivel; b: AN -6 male",
        "a: AN -6 female swivel; b: ORB -6 male", "a: ORB -8 male; b: ORB -6 female"};
    for (std::size_t i = 0; i < 6; ++i) // With the first five both can take the same reducer.
        made.part("A" + std::to_string(i), Kind::Adapter,
                  kinds[i < 5 ? i : static_cast<std::size_t>(pick(8))]);
    for (const Part &part : made.parts) {
        if (part.kind != Kind::Adapter && part.kind != Kind::HoseEnd && part.kind != Kind::Ring)
            continue;
        if (part.kind == Kind::Adapter && pick(6) > 0)
            made.offer(part.number, std::to_string(1 + pick(9)));
        if (!made.offers.empty() && made.offers.back().part == part.number && pick(3) == 0)
            made.offers.back().breaks.push_back({2, Decimal::scaled(5, 1)});
        if (const int free = std::max(0, pick(5) - 2); free > 0)
            made.stock(part.number, free, std::to_string(1 + pick(20)));
    }
    Template form;
    form.id = "feed";
    form.stations = {station("cell", Kind::Tank), station("pump", Kind::Pump),
                     station("regulator", Kind::Regulator)};
    form.runs = {run("supply", "cell.out", "pump.in", "-6", "3 ft"),
                 run("pressure", "pump.out", "regulator.in", "-6", "2 ft")};
    made.add(form);
    return made;
}

} // namespace

class WholeBuild : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void equalsBruteForce();
};

void WholeBuild::equalsBruteForce()
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 2209u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    const auto pick = [&random](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    int compared = 0;
    int searched = 0;
    int better = 0;
    for (int round = 0; round < 250; ++round) {
        const Bench made = drawn(pick);
        ExpandRequest request = made.request("feed");
        for (const auto preference : {Preference::Shelf, Preference::Joints, Preference::Money}) {
            request.preference = preference;
            request.together = false;
            const auto single = expand(request);
            request.together = true;
            const auto build = expand(request);
            QVERIFY(single && build && build->together);
            const auto chains = chainsOf(made, *build, preference);
            if (choicesOf(chains) > 20'000)
                continue;
            const auto best = lowest(made, chains, preference);
            QVERIFY(!build->together->bound);
            QCOMPARE(chosen(made, *build, chains, preference), best);
            QVERIFY(chosen(made, *single, chains, preference) >= best);
            ++compared;
            searched += build->together->isSearched ? 1 : 0;
            better += chosen(made, *single, chains, preference) > best ? 1 : 0;
        }
    }
    qInfo("%d compared, %d searched, %d better than one after the other", compared, searched,
          better);
    QVERIFY(compared > 300);
    QVERIFY(better > 10);
}

QTEST_APPLESS_MAIN(WholeBuild)
#include "tst_whole_build_equals_brute_force.moc"
