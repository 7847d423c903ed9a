// SPDX-License-Identifier: MIT
//
// The joints of a build are chosen together: never worse than one after the other, and better where
// an early joint would take what a later one needs. Over random shelves, for each preference.

#include "tests/systems/bench.h"

#include <QTest>

using namespace flarestock;

namespace {

/// A cell with a boss -6, a pump with a boss -8 at its outlet, and lines of -6: where there is no
/// plain adapter, both can take the reducer from -8 to -6.
Bench bench()
{
    Bench made;
    made.hose("PT");
    made.adapters();
    made.part("FC-1", Kind::Tank, "out: ORB -6 female");
    made.part("EP-1", Kind::Pump, "in: AN -6 male; out: ORB -8 female");
    made.part("RG-1", Kind::Regulator, "in: AN -6 male");
    made.part("RD-8-6", Kind::Adapter, "a: AN -8 female swivel; b: AN -6 male");
    made.part("RD-10-6", Kind::Adapter, "a: AN -10 female swivel; b: AN -6 male");
    for (const char *number : {"FC-1", "EP-1", "RG-1", "RD-8-6", "RD-10-6"})
        made.offer(number, "20.00");
    return made;
}

Template form()
{
    Template made;
    made.id = "feed";
    made.stations = {station("cell", Kind::Tank), station("pump", Kind::Pump),
                     station("regulator", Kind::Regulator)};
    made.runs = {run("supply", "cell.out", "pump.in", "-6", "3 ft"),
                 run("pressure", "pump.out", "regulator.in", "-6", "2 ft")};
    return made;
}

/// What the joints come to together: bought, pieces, and what they cost (10^-6).
std::array<std::int64_t, 3> sums(const Expansion &build, const Bench &made)
{
    std::map<const Part *, int> taken;
    std::int64_t pieces = 0;
    for (const PlacedJoint &joint : build.joints) {
        for (const Piece &piece : joint.way->pieces)
            ++taken[piece.part];
        for (const WayAid &aid : joint.way->aids)
            if (aid.part)
                taken[aid.part] += aid.need.count;
        pieces += static_cast<std::int64_t>(joint.way->pieces.size());
    }
    std::int64_t bought = 0;
    Decimal cost;
    for (const auto &[part, count] : taken) {
        const auto on = made.shelf.find(part->number);
        const Decimal here =
            on == made.shelf.end() ? Decimal() : std::min(on->second.free.amount, Decimal(count));
        const Decimal toBuy = Decimal(count) - here;
        bought += toBuy.toInt64().value();
        if (here.sign() > 0)
            cost += on->second.carriedUnitCost().times(here).toDecimal(6, Rounding::HalfEven);
        if (toBuy.sign() > 0)
            cost += made.catalogue->bestOffer(*part, toBuy)->priceEach(toBuy) * toBuy;
    }
    return {bought, pieces, (cost * Decimal(1'000'000)).toInt64().value()};
}

} // namespace

class ChosenTogether : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aLaterJointIsLeftWhatItNeeds();
    void neverWorseThanOneAfterTheOther();
    void aPickStays();
};

void ChosenTogether::aLaterJointIsLeftWhatItNeeds()
{
    // The cell can take the reducer from -8, which is cheaper, or that from -10; the pump only the
    // one from -8.
    Bench made = bench();
    made.add(form());
    for (const char *number : {"AD-6-8", "AD-6-10", "AD-8-8"})
        made.stock(number, 1, "10");
    made.stock("RD-8-6", 1, "1");
    made.stock("RD-10-6", 1, "50");
    made.stock("HE-PT-6", 4, "40");
    made.stock("OR-906", 4, "1");
    made.stock("OR-908", 4, "1");
    ExpandRequest request = made.request("feed");
    const auto single = expand(request);
    QVERIFY(single.has_value());
    QCOMPARE(single->joint("supply.start")->way->key(), std::string("AD-6-8 + RD-8-6 + HE-PT-6"));
    QCOMPARE(sums(*single, made)[0], std::int64_t{1});
    request.together = true;
    const auto together = expand(request);
    QVERIFY(together.has_value());
    QVERIFY(!together->together->bound);
    QCOMPARE(together->joint("supply.start")->way->key(),
             std::string("AD-6-10 + RD-10-6 + HE-PT-6"));
    QCOMPARE(together->joint("pressure.start")->way->key(),
             std::string("AD-8-8 + RD-8-6 + HE-PT-6"));
    QCOMPARE(sums(*together, made)[0], std::int64_t{0});
    for (const PlacedJoint &joint : together->joints)
        QVERIFY(!joint.picked && !joint.outdone);
}

void ChosenTogether::neverWorseThanOneAfterTheOther()
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 406u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    int better = 0;
    for (int round = 0; round < 40; ++round) {
        Bench made = bench();
        made.add(form());
        for (const Part &part : made.parts)
            if (part.kind == Kind::Adapter || part.kind == Kind::HoseEnd || part.kind == Kind::Ring)
                if (const auto free = random() % 3; free > 0)
                    made.stock(part.number, static_cast<int>(free),
                               std::to_string(free * (1 + random() % 30)));
        ExpandRequest request = made.request("feed");
        for (const auto preference : {Preference::Shelf, Preference::Joints, Preference::Money}) {
            request.preference = preference;
            request.together = false;
            const auto one = sums(*expand(request), made);
            request.together = true;
            const auto together = expand(request);
            QVERIFY(!together->together->bound);
            const auto all = sums(*together, made);
            const auto order = [preference](const std::array<std::int64_t, 3> &sum) {
                using Order = std::array<std::int64_t, 3>;
                return preference == Preference::Joints  ? Order{sum[1], sum[0], sum[2]}
                       : preference == Preference::Money ? Order{sum[2], sum[0], sum[1]}
                                                         : sum;
            };
            QVERIFY(order(all) <= order(one));
            better += order(all) < order(one) ? 1 : 0;
        }
    }
    qInfo("better %d times of 120", better);
    QVERIFY(better > 0);
}

void ChosenTogether::aPickStays()
{
    Bench made = bench();
    made.add(form());
    ExpandRequest request =
        made.request("feed", {}, {{"supply.start", "AD-6-10 + RD-10-6 + HE-PT-6"}});
    request.together = true;
    const auto build = expand(request);
    QVERIFY(build.has_value());
    QCOMPARE(build->joint("supply.start")->way->key(), std::string("AD-6-10 + RD-10-6 + HE-PT-6"));
    QVERIFY(build->joint("supply.start")->picked);
}

QTEST_APPLESS_MAIN(ChosenTogether)
#include "tst_joints_of_a_build_are_chosen_together.moc"
