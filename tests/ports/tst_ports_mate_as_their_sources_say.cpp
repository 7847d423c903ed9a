// SPDX-License-Identifier: MIT
//
// What happens when two ports meet. The table names cases as a fitter would; each has the source of
// the fact behind it. The sweep checks over every pair of every size that the verdict does not
// depend on the order, that nothing leaking is called fine, and that a source is always said.

#include "model/ports/mating.h"
#include "model/ports/size_table.h"

#include <QTest>

#include <cmath>

using namespace flarestock;

class PortMatingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void says_data();
    void says();
    void isTheSameInBothOrders();
    void onlyEqualSeatsOfEqualSizeFit();
    void sharesExactlySixThreadsBetween37And45Degrees();
    void needsTheRingOfTheStandard();
};

void PortMatingTest::says_data()
{
    QTest::addColumn<QString>("a");
    QTest::addColumn<QString>("b");
    QTest::addColumn<QString>("verdict");
    QTest::addColumn<QString>("needs");
    const auto row = [](const char *a, const char *b, const char *verdict, const char *needs = "") {
        QTest::addRow("%s with %s", a, b) << a << b << verdict << needs;
    };
    // SAE J514 and J1926 share threads at the same dash; four dash lists agree. The seat decides.
    row("AN -6 male", "ORB -6 female", "leaks");
    row("JIC -8 male", "ORB -8 female", "leaks");
    row("ORB -6 male", "JIC -6 female swivel", "leaks");
    row("ORB -10 male", "AN -10 female", "leaks");
    row("AN -6 male + sealant", "ORB -6 female", "leaks"); // sealant cannot replace a seat
    row("AN -6 male", "AN -6 female swivel", "fits");
    row("JIC -16 male", "JIC -16 female swivel", "fits");
    row("AN -6 male", "AN -6 male", "same-gender");
    row("ORB -6 female", "NPT 1/4 female", "same-gender");
    row("AN -6 male", "AN -8 female swivel", "no-fit");
    row("AN -8 male", "AN -6 female swivel", "no-fit");
    // UNJ against UN: a thread-gauge maker's note; SAE AS4395 against J514.
    row("AN -6 male", "JIC -6 female swivel", "fits-with-caution");
    row("JIC -12 male", "AN -12 female", "fits-with-caution");
    // SAE J1926: ring AS568-9xx, last two digits the tube in sixteenths (Navy training manual
    // 14105).
    row("ORB -6 male", "ORB -6 female", "fits-with-aid", "o-ring AS568-906");
    row("ORB -6 male + o-ring", "ORB -6 female", "fits", "o-ring AS568-906");
    row("ORB -8 male adjustable", "ORB -8 female + o-ring", "fits", "o-ring AS568-908");
    row("ORB -6 male", "ORB -8 female", "no-fit");
    // SAE J1453 against J514: the face seal's thread is one or two sizes larger.
    row("ORFS -4 male", "JIC -6 female swivel", "leaks");
    row("JIC -14 male", "ORFS -12 female swivel", "leaks");
    row("ORFS -4 male", "JIC -4 female swivel", "no-fit");
    row("ORFS -6 male", "ORFS -6 female swivel", "fits-with-aid", "o-ring AS568-012");
    // SAE J512 against J514: equal threads at -2 -3 -4 -5 -8 -10, others not (an engineering forum
    // list, confirmed by the two standards' columns).
    row("SAE45 -8 male", "JIC -8 female swivel", "leaks");
    row("JIC -4 male", "SAE45 -4 female nut", "leaks");
    row("SAE45 -6 male", "JIC -6 female swivel", "no-fit");
    row("JIC -6 male", "SAE45 -6 female nut", "no-fit");
    row("SAE45 -12 male", "JIC -12 female swivel", "jams"); // 14 against 12 to the inch
    row("JIC -12 male", "SAE45 -12 female nut", "jams");
    row("JIC -14 male", "SAE45 -14 female nut", "loose"); // 1 3/16-12 in 1 1/4-12
    row("SAE45 -14 male", "JIC -14 female swivel", "no-fit");
    row("SAE45 -6 male", "SAE45 -6 female nut", "fits");
    // Pipe: ASME B1.20.1, B1.20.3 (gauge maker's note: NPTF with NPT needs sealant), ISO 7-1, ISO
    // 228-1.
    row("NPT 3/8 male", "NPT 3/8 female", "fits-with-aid", "sealant");
    row("NPT 3/8 male + sealant", "NPT 3/8 female", "fits", "sealant");
    row("NPTF 1/4 male", "NPTF 1/4 female", "fits");
    row("NPTF 1/4 male", "NPT 1/4 female", "fits-with-aid", "sealant");
    row("NPT 1/2 male", "BSPP 1/2 female", "leaks"); // both 14 to the inch: feels right
    row("NPT 3/4 male + sealant", "BSPT 3/4 female", "leaks");
    row("NPT 1/4 male", "BSPP 1/4 female", "jams"); // 18 against 19
    row("BSPT 1/8 male", "NPT 1/8 female", "jams"); // 28 against 27
    row("NPT 1/4 male", "NPT 3/8 female", "no-fit");
    // ASME B1.1 and B1.20.1: the pitch diameter of 9/16-18 UNF-2A is at least 0.5205 in, that at
    // the mouth of 1/4-18 NPT is 0.4916 in. Whatever its class, it does not start.
    for (const char *male : {"AN -6 male", "JIC -6 male", "ORB -6 male"})
        row(male, "NPT 1/4 female", "no-fit");
    row("BSPT 1/2 male", "BSPT 1/2 female", "fits-with-aid", "sealant");
    row("BSPP 1/2 male", "BSPT 1/2 female", "leaks");          // ISO 7-1 knows no parallel male
    row("BSPT 1/4 male", "BSPP60 1/4 female swivel", "leaks"); // "never into a swivel cone"
    row("BSPP 1/4 male", "BSPP 1/4 female", "fits-with-aid", "washer");
    row("BSPP 1/4 male + washer", "BSPP 1/4 female", "fits", "washer");
    row("BSPP60 1/4 male", "BSPP60 1/4 female swivel", "fits");
    // "Not a perfect match", an engineering magazine: BS 5200 body and JIS B 8363 nut do not seal.
    row("BSPP60 1/4 male", "JIS30 1/4 female swivel", "leaks");
    row("JIS30 1/4 male", "BSPP60 1/4 female swivel", "leaks");
    row("BSPP60 3/8 male", "JIS60 3/8 female swivel", "leaks");
    // Metric: ISO 6149-1, ISO 9974-1, ISO 8434-1.
    row("ISO6149 M14x1.5 male", "ISO6149 M14x1.5 female", "fits-with-aid", "o-ring 11.3x2.2");
    row("ISO6149 M14x1.5 male + o-ring", "METRIC M14x1.5 female", "leaks");
    row("METRIC M18x1.5 male", "METRIC M18x1.5 female", "fits-with-aid", "washer");
    row("METRIC M16x1.5 male", "METRIC M18x1.5 female", "no-fit");
    row("DIN24L 8 male", "DIN24L 8 female swivel", "fits");
    row("DIN24L 8 male", "DIN24S 8 female nut", "no-fit");  // M14 body, M16 nut
    row("DIN24S 8 male", "DIN24L 10 female nut", "no-fit"); // same M16x1.5, larger tube
    row("DIN24L 10 male", "DIN24S 8 female nut", "leaks");
    row("DIN24L 12 male", "METRIC M18x1.5 female", "leaks");
    // Metric against inch that starts: 7/8-14 and M22x1.5 (hydraulic reference table), M10x1.0 nut
    // started in 3/8-24 (a brake-tube help page). The rest: geometry; common practice, no source.
    row("METRIC M22x1.5 male", "ORB -10 female", "jams");
    row("AN -10 male", "METRIC M22x1.5 female", "jams");
    row("BUBBLE M10x1.0 male nut", "INV 3/16 female", "jams");  // the page: catches one thread
    row("INV 3/16 male nut", "BUBBLE M10x1.0 female", "loose"); // the page: goes loosely in, strips
    // A machinery-safety guide on hydraulic lines: G1/2 goes almost unnoticed into M22x1.5 and can
    // break out under pressure.
    row("BSPP 1/2 male", "METRIC M22x1.5 female", "jams");
    // A parallel male in a taper of another pitch wedges as well: geometry.
    row("AN -3 male", "NPT 1/8 female", "jams");
    row("METRIC M14x1.5 male", "ORB -6 female", "jams");
    // Inverted and bubble flares: SAE J512, ISO 4038; articles on brake flares: they do not seal
    // mixed.
    row("INV 3/16 male nut", "INV 3/16 female", "fits");
    row("INV 3/16 M10x1.0 male nut", "BUBBLE M10x1.0 female", "leaks");
    row("INV 3/16 7/16-24 male nut", "INV 3/16 7/16-24 female", "fits");
    row("INV 3/16 male nut", "INV 3/16 7/16-24 female", "no-fit");
    row("INV 1/4 male nut", "INV 3/16 7/16-24 female", "no-fit"); // 1/4 tube, same 7/16-24
    row("INV 3/16 male nut", "AN -3 female swivel", "leaks");
    row("BUBBLE M10x1.0 male nut", "BUBBLE M10x1.0 female", "fits");
    // Without threads. Common practice, no source.
    row("HOSE 30R7 -6", "BARB 3/8", "fits-with-aid", "clamp"); // SAE J30, from memory
    row("HOSE 30R7 -6 + clamp", "BARB 3/8", "fits", "clamp");
    row("HOSE 30R9 -6", "BARB 10 mm", "no-fit"); // 3/8 in is 9.53 mm
    row("HOSE PTFE-S -6", "BARB 3/8", "no-fit"); // a clamp does not draw it tight
    row("HOSE 100R14 -6 + clamp", "BARB 3/8", "no-fit");
    row("HOSE 100R5 -6", "TUBE 3/8", "no-fit");
    row("HOSE RED -6", "BARB 3/8", "fits-with-caution", "clamp"); // nobody knows what it is
    row("HOSE RED -6 + clamp", "BARB 3/8", "fits-with-caution", "clamp");
    row("HOSE 30R7 -6", "TUBE 3/8", "fits-with-caution", "clamp");
    row("HOSE 30R7 -6", "BARB 1/2", "no-fit");
    row("HOSE 30R7 -8", "BARB 5/16", "no-fit");
    row("HOSE PT -6", "HOSE PT -6", "no-fit");
    row("HOSE PT -6", "AN -6 male", "no-fit");
    row("TUBE 3/8", "AN -6 female nut", "fits-with-aid", "sleeve");
    row("TUBE 3/8", "AN -6 male", "no-fit");
    row("TUBE 1/2", "AN -6 female nut", "no-fit");
    row("TUBE 3/16", "INV 3/16 male nut", "fits");
    row("TUBE 8 mm", "AN -5 female nut", "fits-with-caution", "sleeve"); // 0.06 mm larger
    row("TUBE 5/16", "DIN24L 8 female nut", "fits-with-caution", "sleeve");
    row("TUBE 8 mm", "INV 5/16 male nut", "fits-with-caution");
    row("TUBE 8 mm", "DIN24L 8 female nut", "fits-with-aid", "sleeve");
    row("QC 3/8 male", "QC 3/8 female", "fits");
    row("QC 3/8 male", "QC 5/16 female", "no-fit");
    row("BANJO M10x1.0", "METRIC M10x1.0 female", "fits-with-aid", "crush washer × 2");
    row("BANJO M10x1.0 + crush washer", "METRIC M10x1.0 female", "fits", "crush washer × 2");
    row("BANJO M12x1.5", "ISO6149 M12x1.5 female", "leaks");
    row("BANJO M10x1.0", "BUBBLE M10x1.0 female", "leaks");
    row("BANJO M10x1.0", "METRIC M12x1.5 female", "no-fit");
    row("BARB 3/8", "NPT 3/8 female", "no-fit");
}

void PortMatingTest::says()
{
    QFETCH(QString, a);
    QFETCH(QString, b);
    QFETCH(QString, verdict);
    QFETCH(QString, needs);
    for (const bool turned : {false, true}) {
        const auto first = parseEnd((turned ? b : a).toStdString());
        const auto second = parseEnd((turned ? a : b).toStdString());
        QVERIFY2(first && second, "a port of the table does not parse");
        auto aids = first->aids;
        aids.insert(aids.end(), second->aids.begin(), second->aids.end());
        const auto met = mating(first->port, second->port, aids);
        QCOMPARE(QString::fromUtf8(text(met.verdict).data()), verdict);
        QString said;
        for (const auto &need : met.needs)
            said += QString::fromStdString(need.text());
        QCOMPARE(said, needs);
        QCOMPARE(met.turns.has_value(), met.verdict == Verdict::Jams);
        QVERIFY(met.why.size() > 20);
    }
}

void PortMatingTest::isTheSameInBothOrders()
{
    const auto &ports = everyPort();
    QVERIFY(ports.size() > 600); // a sweep over nothing would pass
    for (std::size_t i = 0; i < ports.size(); ++i) {
        for (std::size_t j = i; j < ports.size(); ++j) {
            const auto one = mating(ports[i], ports[j]);
            const auto other = mating(ports[j], ports[i]);
            if (one.verdict != other.verdict || one.needs != other.needs ||
                one.turns != other.turns || one.source.empty() || one.why.empty())
                QFAIL(qPrintable(
                    QString::fromStdString(ports[i].text() + " with " + ports[j].text())));
        }
    }
}

void PortMatingTest::onlyEqualSeatsOfEqualSizeFit()
{
    int fitting = 0;
    const auto kin = [](Family a, Family b) {
        const auto group = [](Family family) {
            return family == Family::Jic    ? Family::An
                   : family == Family::Nptf ? Family::Npt
                                            : family;
        };
        return group(a) == group(b);
    };
    for (const auto &a : everyPort()) {
        for (const auto &b : everyPort()) {
            const bool threaded = sizeOf(a)->thread && sizeOf(b)->thread;
            if (!threaded || !fits(mating(a, b).verdict))
                continue;
            ++fitting;
            const bool taperIntoParallel = (a.family == Family::Bspt && b.family == Family::Bspp) ||
                                           (b.family == Family::Bspt && a.family == Family::Bspp);
            const bool banjo = a.family == Family::Banjo || b.family == Family::Banjo;
            QVERIFY2(kin(a.family, b.family) || taperIntoParallel || banjo, a.text().c_str());
            QVERIFY2(std::abs(sizeOf(a)->thread->majorMm - sizeOf(b)->thread->majorMm) < 0.01,
                     (a.text() + " with " + b.text()).c_str());
        }
    }
    QVERIFY(fitting > 500);
}

void PortMatingTest::sharesExactlySixThreadsBetween37And45Degrees()
{
    // An engineering forum's list of SAE threads, confirmed by the columns of J514 and J512.
    QStringList shared;
    for (const auto &row : sizeRows()) {
        if (row.family != Family::Sae45)
            continue;
        const auto *other = findSize(Family::Jic, row.size);
        if (other != nullptr && other->thread->name == row.thread->name)
            shared << QString::fromStdString(row.size);
    }
    QCOMPARE(shared.join(u' '), QStringLiteral("-2 -3 -4 -5 -8 -10"));
}

void PortMatingTest::needsTheRingOfTheStandard()
{
    // Navy training manual 14105: AS568 900 series, last two digits the tube size in sixteenths.
    int swept = 0;
    for (const auto &row : sizeRows()) {
        if (row.family != Family::Orb)
            continue;
        const Port male{Family::Orb, row.size, {}, Gender::Male, Turning::Fixed};
        const Port female{Family::Orb, row.size, {}, Gender::Female, Turning::Fixed};
        const auto met = mating(male, female);
        QCOMPARE(met.needs.size(), std::size_t{1});
        QCOMPARE(met.needs[0].designation, "AS568-" + std::to_string(900 + dash(male)));
        ++swept;
    }
    QCOMPARE(swept, 13);
}

QTEST_APPLESS_MAIN(PortMatingTest)
#include "tst_ports_mate_as_their_sources_say.moc"
