// SPDX-License-Identifier: MIT
//
// What always holds of spares: more certainty, more events or a higher rate never ask for fewer;
// one less does not cover; a thin history never asks for fewer than the plain rate; a kit covers
// what was asked for, and no cheaper one does (all cheaper ones are tried).

#include "model/spares/carry/kit.h"

#include <QTest>
#include <rapidcheck.h>

#include <cmath>

using namespace flarestock;

class SpareLawsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void moreNeverAsksForFewer();
    void oneLessDoesNotCover();
    void sharesOfWantedPiecesAreSums();
    void thinHistoryNeverAsksForFewer();
    void kitsAreCheapest();
    void largeKitsAreProven();
};

static double between(int low, int high, double step)
{
    return *rc::gen::inRange(low, high) * step;
}

void SpareLawsTest::moreNeverAsksForFewer()
{
    QVERIFY(rc::check("more certainty, more to come", [] {
        const double mean = between(0, 4000, 0.01);
        const double certainty = between(1, 1000, 0.001);
        const double more = between(0, 500, 0.01);
        const double surer = std::min(0.9999, certainty + between(0, 100, 0.001));
        const auto demand = SpareDemand::poisson(mean);
        RC_ASSERT(demand.fewest(surer) >= demand.fewest(certainty));
        RC_ASSERT(SpareDemand::poisson(mean + more).fewest(certainty) >= demand.fewest(certainty));
        const double uses = *rc::gen::inRange(0, 30);
        const double coming = 1 + mean;
        RC_ASSERT(SpareDemand::predictive({uses, 20, coming + more}).fewest(certainty) >=
                  SpareDemand::predictive({uses, 20, coming}).fewest(certainty));
        RC_ASSERT(SpareDemand::predictive({uses + 1, 20, coming}).fewest(certainty) >=
                  SpareDemand::predictive({uses, 20, coming}).fewest(certainty));
    }));
}

void SpareLawsTest::oneLessDoesNotCover()
{
    QVERIFY(rc::check("the fewest", [] {
        const double certainty = between(1, 1000, 0.001);
        const auto demand = *rc::gen::inRange(0, 2) == 0
                                ? SpareDemand::poisson(between(0, 4000, 0.01))
                                : SpareDemand::predictive(
                                      {between(0, 30, 1), between(1, 60, 1), between(0, 60, 1)});
        const auto carried = demand.fewest(certainty);
        RC_ASSERT(demand.covered(carried) >= certainty - 1e-12);
        RC_ASSERT((carried == 0 || demand.covered(carried - 1) < certainty));
        RC_ASSERT(demand.covered(-1) == 0.0);
    }));
}

void SpareLawsTest::sharesOfWantedPiecesAreSums()
{
    QVERIFY(rc::check("the fill rate is the sum of the tail", [] {
        const auto demand =
            *rc::gen::inRange(0, 2) == 0
                ? SpareDemand::poisson(between(1, 1500, 0.01))
                : SpareDemand::predictive({between(0, 9, 1), between(1, 20, 1), between(1, 20, 1)});
        const int carried = *rc::gen::inRange(0, 30);
        double sum = 0; // E[min(X, k)] = Σ P(X > j) for j below k.
        for (int below = 0; below < carried; ++below)
            sum += 1 - demand.covered(below);
        RC_ASSERT(std::abs(demand.met(carried) - sum / demand.mean()) < 1e-9);
    }));
}

void SpareLawsTest::thinHistoryNeverAsksForFewer()
{
    QVERIFY(rc::check("from a median on", [] {
        const UsesSeen history{between(0, 30, 1), between(1, 60, 1), between(1, 60, 1)};
        const double certainty = between(500, 1000, 0.001);
        RC_ASSERT(
            SpareDemand::predictive(history).fewest(certainty) >=
            SpareDemand::poisson(history.uses * history.coming / history.seen).fewest(certainty));
    }));
}

/// Whether a kit of less money covers as much, by trying all from one part on.
static bool isCheaper(const std::vector<KitPart> &parts, std::size_t from, std::int64_t money,
                      double wanted)
{
    if (from == parts.size())
        return wanted <= 1;
    for (std::int64_t carried = 0; carried * parts[from].priceEach <= money; ++carried) {
        const double covered = parts[from].demand.covered(carried);
        if (isCheaper(parts, from + 1, money - carried * parts[from].priceEach, wanted / covered))
            return true;
    }
    return false;
}

void SpareLawsTest::kitsAreCheapest()
{
    QVERIFY(rc::check("no cheaper kit covers as much", [] {
        const double certainty = between(500, 990, 0.001);
        std::vector<KitPart> parts;
        const int count = *rc::gen::inRange(1, 5);
        for (int i = 0; i < count; ++i) {
            const bool isThin = *rc::gen::inRange(0, 2) == 0;
            const UsesSeen history{between(0, 3, 1), 10, 5};
            const double mean = between(0, 250, 0.01);
            const auto price = *rc::gen::inRange<std::int64_t>(5, 60);
            parts.push_back({std::to_string(i),
                             isThin ? SpareDemand::predictive(history) : SpareDemand::poisson(mean),
                             price});
        }
        const KitPlan plan = planKit(parts, certainty);
        double covered = 1;
        std::int64_t cost = 0;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            covered *= parts[i].demand.covered(plan.best.carried[i]);
            cost += plan.best.carried[i] * parts[i].priceEach;
        }
        RC_ASSERT(plan.isProven);
        RC_ASSERT(plan.noLess == plan.best.cost);
        RC_ASSERT(cost == plan.best.cost);
        RC_ASSERT(std::abs(covered - plan.best.covered) < 1e-15);
        RC_ASSERT(covered >= certainty - 1e-11);
        RC_ASSERT((plan.way.empty() || plan.way.back().then.cost >= cost));
        RC_ASSERT(!isCheaper(parts, 0, cost - 1, certainty));
    }));
}

void SpareLawsTest::largeKitsAreProven()
{
    std::vector<KitPart> parts;
    for (int i = 0; i < 60; ++i)
        parts.push_back({std::to_string(i), SpareDemand::poisson(0.05 + 0.07 * (i % 13)),
                         1'230'000 + 1'370'100 * (i * i % 17)});
    const KitPlan plan = planKit(parts, 0.95);
    QVERIFY(plan.best.covered >= 0.95);
    QVERIFY(plan.noLess <= plan.best.cost);
    QVERIFY(plan.isProven);
}

QTEST_APPLESS_MAIN(SpareLawsTest)
#include "tst_spares_keep_their_laws.moc"
