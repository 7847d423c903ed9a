// SPDX-License-Identifier: MIT
//
// Joints of several builds by date, against brute force: of every choice for the earliest build
// those that are best for it are kept, with each of what they leave every choice for the next, and
// so on; counted part by part by hand.

#include "model/joints/sharing/dated/by_date.h"
#include "tests/joints/sharing_by_hand.h"

#include <QTest>

#include <random>

using namespace flarestock;

namespace {

using Left = std::map<const Part *, int>;
using Pick = std::function<int(int)>;

int countIn(const Left &left, const Part *part)
{
    const auto found = left.find(part);
    return found == left.end() ? 0 : found->second;
}

/// Of like pieces each costs as much, on the shelf and at the supplier's: so many ways are as good.
Catalogue drawnAlike()
{
    return drawn([](int below) { return below - 1; });
}

Shelf stockedAlike(const Catalogue &catalogue, const Pick &pick)
{
    Shelf shelf = stocked(catalogue, pick);
    for (auto &[number, stock] : shelf)
        if (const Offer *offer = catalogue.bestOffer(*catalogue.find(number), Decimal(1)))
            stock.value = offer->priceEach(Decimal(1)) * stock.onHand.amount;
    return shelf;
}

/// A few builds of one shelf, each with pieces of its own.
struct Builds {
    Builds(const Pick &pick, bool isAlike)
        : catalogue(isAlike ? drawnAlike() : drawn(pick)),
          shelf(isAlike ? stockedAlike(catalogue, pick) : stocked(catalogue, pick))
    {
        for (const Part &part : catalogue.parts())
            if (const auto on = shelf.find(part.number); on != shelf.end())
                left[&part] = static_cast<int>(on->second.free.amount.toInt64().value());
        request.left = [this](const Part &part) { return Decimal(countIn(left, &part)); };
        const int builds = 2 + pick(2);
        own.resize(static_cast<std::size_t>(builds));
        for (Left &ofIt : own)
            for (auto &[part, count] : left)
                if (count > 0 && pick(8) == 0) {
                    --count;
                    ++ofIt[part];
                }
        const JointCloser closer(catalogue);
        for (const Left &ofIt : own)
            addBuild(pick, closer, ofIt);
    }

    Catalogue catalogue;
    Shelf shelf; ///< What pieces cost.
    Left left;
    std::vector<Left> own; ///< By build.
    ByDateRequest request;

    /// What the choice comes to where so much is left; that is less afterwards.
    [[nodiscard]] std::vector<std::int64_t> comesTo(std::size_t build, const Chosen &chosen,
                                                    Left &then) const
    {
        const DatedJoints &of = request.builds[build];
        Shelf here = shelf;
        for (auto &[number, stock] : here) {
            const Part *part = catalogue.find(number);
            stock.free.amount = countIn(own[build], part) + countIn(then, part);
        }
        const ShareRequest asked{catalogue, here, allOf(here), of.order, of.joints};
        for (const auto &[part, count] : takenOf(of, chosen)) {
            const int shared = std::max(0, count - countIn(own[build], part));
            if (const auto found = then.find(part); found != then.end())
                found->second = std::max(0, found->second - shared);
        }
        return inOrder(counted(asked, chosen, 0), of.order);
    }

    [[nodiscard]] std::vector<std::int64_t> comeTo(const std::vector<Chosen> &chosen) const
    {
        std::vector<std::int64_t> all;
        Left then = left;
        for (std::size_t build = 0; build < chosen.size(); ++build)
            for (const auto value : comesTo(build, chosen[build], then))
                all.push_back(value);
        return all;
    }

    [[nodiscard]] std::vector<std::int64_t> byBruteForce() const
    {
        std::vector<std::int64_t> all;
        std::set<Left> lefts{left};
        for (std::size_t build = 0; build < request.builds.size(); ++build) {
            std::optional<std::vector<std::int64_t>> lowest;
            std::set<Left> kept;
            for (const Left &before : lefts)
                forEach(request.builds[build], {}, [&](const Chosen &chosen) {
                    Left then = before;
                    const auto values = comesTo(build, chosen, then);
                    if (!lowest || values < *lowest)
                        kept.clear();
                    if (!lowest || values <= *lowest) {
                        lowest = values;
                        kept.insert(std::move(then));
                    }
                });
            lefts = std::move(kept);
            all.insert(all.end(), lowest->begin(), lowest->end());
        }
        return all;
    }

private:
    void addBuild(const Pick &pick, const JointCloser &closer, const Left &ofIt)
    {
        const auto preference = static_cast<Preference>(pick(3));
        DatedJoints joints{{catalogue, shelf, allOf(shelf), wantOrder(preference), {}}, {}};
        joints.own = [&ofIt](const Part &part) { return Decimal(countIn(ofIt, &part)); };
        joints.left = [this, &ofIt](const Part &part) {
            return Decimal(countIn(ofIt, &part) + countIn(left, &part));
        };
        joints.pricesFallTo = closer.pricesFallTo();
        for (int joint = 1 + pick(3); joint > 0; --joint) {
            JointRequest asked = anyJoint(pick);
            asked.preference = preference;
            asked.best = 7;
            joints.joints.push_back({asked.from, asked.to, closer.ways(asked, shelf, joints.left)});
        }
        request.builds.push_back(std::move(joints));
    }

    static Left takenOf(const DatedJoints &of, const Chosen &chosen)
    {
        Left taken;
        for (std::size_t joint = 0; joint < chosen.size(); ++joint) {
            if (!chosen[joint])
                continue;
            const Way &way = of.joints[joint].ways[*chosen[joint]];
            for (const Piece &piece : way.pieces)
                ++taken[piece.part];
            for (const WayAid &aid : way.aids)
                if (aid.part && aid.part->kind == Kind::Sealant)
                    taken[aid.part] = 1;
                else if (aid.part)
                    taken[aid.part] += aid.need.count;
        }
        return taken;
    }

    static void forEach(const DatedJoints &of, const Chosen &chosen,
                        const std::function<void(const Chosen &)> &tell)
    {
        if (chosen.size() == of.joints.size())
            return tell(chosen);
        const auto &ways = of.joints[chosen.size()].ways;
        for (std::size_t way = 0; way < std::max<std::size_t>(1, ways.size()); ++way) {
            Chosen more = chosen;
            more.push_back(ways.empty() ? std::nullopt : std::optional(way));
            forEach(of, more, tell);
        }
    }
};

/// Values of the builds one behind the other, as criteria() has them: whether it holds what is said
/// of the best of them.
void holds(const Builds &builds, const ByDate &by, const std::vector<std::int64_t> &lowest)
{
    const auto reached = builds.comeTo(by.chosen);
    std::size_t at = 0;
    for (std::size_t build = 0; build < by.ranks.size(); ++build) {
        const auto order = criteria(builds.request.builds[build].order);
        for (const Criterion criterion : order) {
            QCOMPARE(valueOf(by.ranks[build], criterion), reached[at]);
            if (by.bound && by.bound->build == build && by.bound->of == criterion) {
                QVERIFY(by.bound->atLeast <= lowest[at]);
                QVERIFY(reached >= lowest);
                return;
            }
            QCOMPARE(reached[at], lowest[at]); // Whatever is said to be proven is.
            ++at;
        }
    }
}

} // namespace

class BuildsShare : public QObject {
    Q_OBJECT

private:
    std::mt19937 m_random;
    [[nodiscard]] Pick picked(unsigned seed);

private Q_SLOTS:
    void equalsBruteForce();
    void saysWhatWasCutOff();
    void allowsForWaysThatAreNotGiven();
};

Pick BuildsShare::picked(unsigned seed)
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    seed = given != 0 ? static_cast<unsigned>(given) : seed;
    qInfo("seed %u", seed);
    m_random.seed(seed);
    return
        [this](int below) { return static_cast<int>(m_random() % static_cast<unsigned>(below)); };
}

void BuildsShare::equalsBruteForce()
{
    const Pick pick = picked(1128);
    int better = 0;
    for (int round = 0; round < 120; ++round) {
        const Builds builds(pick, round % 3 > 0);
        const ByDate by = shareByDate(builds.request);
        QVERIFY(!by.bound);
        const auto lowest = builds.byBruteForce();
        holds(builds, by, lowest);
        if (QTest::currentTestFailed())
            return;
        std::vector<Chosen> firsts;
        for (const DatedJoints &build : builds.request.builds) {
            firsts.emplace_back();
            for (const SharedJoint &joint : build.joints)
                firsts.back().push_back(joint.ways.empty() ? std::nullopt
                                                           : std::optional<std::size_t>(0));
        }
        better += builds.comeTo(firsts) > lowest ? 1 : 0;
    }
    qInfo("%d times the first ways were not the best", better);
    QVERIFY(better > 30); // Else nothing was shared.
}

void BuildsShare::saysWhatWasCutOff()
{
    const Pick pick = picked(1129);
    int open = 0;
    for (int round = 0; round < 60; ++round) {
        Builds builds(pick, round % 3 > 0);
        builds.request.statesMost = 1;
        const ByDate by = shareByDate(builds.request);
        holds(builds, by, builds.byBruteForce());
        if (QTest::currentTestFailed())
            return;
        open += by.bound ? 1 : 0;
    }
    qInfo("%d open", open);
    QVERIFY(open > 5);
}

void BuildsShare::allowsForWaysThatAreNotGiven()
{
    const Pick pick = picked(1130);
    int proven = 0;
    int open = 0;
    for (int round = 0; round < 120; ++round) {
        Builds builds(pick, round % 3 > 0);
        const auto lowest = builds.byBruteForce();
        for (DatedJoints &build : builds.request.builds)
            for (SharedJoint &joint : build.joints) {
                const auto most = static_cast<std::size_t>(4 + pick(3));
                if (joint.ways.size() <= most || pick(3) > 0)
                    continue;
                joint.ways.resize(most);
                joint.last = most - 1;
            }
        const ByDate by = shareByDate(builds.request);
        holds(builds, by, lowest);
        if (QTest::currentTestFailed())
            return;
        ++(by.bound ? open : proven);
    }
    qInfo("%d proven, %d open", proven, open);
    QVERIFY(proven > 15 && open > 15);
}

QTEST_APPLESS_MAIN(BuildsShare)
#include "tst_builds_share_by_date.moc"
