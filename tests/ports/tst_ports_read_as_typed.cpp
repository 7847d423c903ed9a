// SPDX-License-Identifier: MIT
//
// Ports are read as people type them, and said in one way.

#include "model/ports/port.h"

#include <QTest>

using namespace flarestock;

class PortsReadAsTypedTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void isSaidInOneWay_data();
    void isSaidInOneWay();
    void refusesWithAReason_data();
    void refusesWithAReason();
    void everyPortReadsBack();
};

void PortsReadAsTypedTest::isSaidInOneWay_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("said");
    const auto row = [](const char *typed, const char *said) {
        QTest::newRow(typed) << typed << said;
    };
    row("AN -6 male", "AN -6 male");
    row("  an-6   MALE ", "AN -6 male");
    row("AN6 male", "AN -6 male");
    row("-6 AN male", "AN -6 male");
    row("jic -08 female swivel", "JIC -8 female swivel");
    row("JIC -8 swivel female", "JIC -8 female swivel");
    row("orb 10 f", "ORB -10 female");
    row("SAE 45 3/8 male", "SAE45 -6 male");
    row("SAE45 -6 male", "SAE45 -6 male");
    row("INV 3/16 female", "INV 3/16 female");
    row("inv 3/16 m10x1 male", "INV 3/16 M10x1.0 male");
    row("INV 3/16 3/8-24 male", "INV 3/16 male");
    row("BUBBLE M10x1.0 male", "BUBBLE M10x1.0 male");
    row("NPT 3/8 male", "NPT 3/8 male");
    row("npt 1-1/4 female", "NPT 1 1/4 female");
    row("BSPP G1/4 female", "BSPP 1/4 female");
    row("BSPP60 1/4 female swivel", "BSPP60 1/4 female swivel");
    row("BSPT R1/2 male", "BSPT 1/2 male");
    row("iso 6149 M14 x 1.5 female", "ISO6149 M14x1.5 female");
    row("METRIC m18x1.5 male", "METRIC M18x1.5 male");
    row("DIN24L 8L male", "DIN24L 8 male");
    row("QC 3/8 male", "QC 3/8 male");
    row("BARB 3/8", "BARB 3/8");
    row("TUBE 8mm", "TUBE 8 mm");
    row("HOSE ptfe-s -8", "HOSE PTFE-S -8");
    row("BANJO M12x1.5", "BANJO M12x1.5");
    row("WELD -8", "WELD -8");
}

void PortsReadAsTypedTest::isSaidInOneWay()
{
    QFETCH(QString, typed);
    QFETCH(QString, said);
    const auto port = Port::parse(typed.toStdString());
    QVERIFY2(port, port ? "" : port.error().sentence().c_str());
    QCOMPARE(QString::fromStdString(port->text()), said);
}

void PortsReadAsTypedTest::refusesWithAReason_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("says");
    QTest::newRow("nothing") << ""
                             << "no family";
    QTest::newRow("no family") << "thing -6 male"
                               << "no family";
    QTest::newRow("no such dash") << "AN -7 male"
                                  << "no size -7";
    QTest::newRow("no size") << "ORB male"
                             << "no size";
    QTest::newRow("no gender") << "ORB -6"
                               << "no gender";
    QTest::newRow("gender on a barb") << "BARB 3/8 male"
                                      << "has a gender";
    QTest::newRow("hose without series") << "HOSE -8"
                                         << "construction";
    QTest::newRow("words left over") << "AN -6 blue male"
                                     << "no size";
    QTest::newRow("not in the metric list") << "METRIC M19x1.5 male"
                                            << "no size";
}

void PortsReadAsTypedTest::refusesWithAReason()
{
    QFETCH(QString, typed);
    QFETCH(QString, says);
    const auto port = Port::parse(typed.toStdString());
    QVERIFY(!port);
    QVERIFY2(QString::fromStdString(port.error().sentence()).contains(says),
             port.error().sentence().c_str());
    QVERIFY(!port.error().remedy.empty());
}

void PortsReadAsTypedTest::everyPortReadsBack()
{
    QVERIFY(everyPort().size() > 600);
    for (const auto &port : everyPort()) {
        const auto again = Port::parse(port.text());
        QVERIFY2(again && *again == port, port.text().c_str());
    }
}

QTEST_APPLESS_MAIN(PortsReadAsTypedTest)
#include "tst_ports_read_as_typed.moc"
