// SPDX-License-Identifier: MIT
//
// Two ports, a torque and a line are looked up at the desk by keyboard, without a build. The
// figures are those of the commands' tests, with their sources there.

#include "app/desk/words/standing.h"
#include "app/stockroom/tables/line_asked.h"
#include "app/stockroom/tables/torque_asked.h"
#include "parts_on_screen.h"
#include "sheet_pictures.h"

using namespace flarestock;

class TablesAreLookedUp : public QObject, protected PartsOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void twoPortsMeetAtEachKey();
    void whatTheJointNeedsIsSaid();
    void aWordThatIsNoPortIsRefused();
    void torquesStandWithTheirSources();
    void whatTheNutHoldsIsChosen();
    void noTableIsSaid();
    void aLineIsReckoned();
    void aDashIsAssumed();
    void aLineThatIsNoneIsRefused();
    void allOfItIsGerman();
    void warnsAboutNothing() { QCOMPARE(m_screens->warnings(), QStringList()); }

private:
    [[nodiscard]] Tables &tables() const { return *parts().tables(); }
    [[nodiscard]] QStringList all(const char *name) const
    {
        QStringList found;
        for (const QQuickItem *one : allSeen(*m_window))
            if (one->objectName() == QLatin1String(name))
                found.append(one->property("text").toString());
        return found;
    }
    void clear(const char *field)
    {
        QTRY_VERIFY2(item(field) != nullptr, field);
        item(field)->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_A, Qt::ControlModifier);
        key(Qt::Key_Delete);
    }
    void writeAnew(const char *field, const char *text)
    {
        clear(field);
        type(text);
    }
    void writeLine(const char *flow, const char *size, const char *length)
    {
        press("leafLine");
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("lineFlow"));
        writeAnew("lineFlow", flow);
        key(Qt::Key_Tab);
        QCOMPARE(focusName(*m_window), QStringLiteral("lineSize"));
        writeAnew("lineSize", size);
        writeAnew("lineLength", length);
    }
};

void TablesAreLookedUp::initTestCase()
{
    QLocale::setDefault(QLocale::c());
    open();
    m_screens->follow(*m_look, *m_desk);
    showParts();
}

void TablesAreLookedUp::init()
{
    m_look->setInInches(false);
    m_look->setLanguage(QStringLiteral("en"));
    key(Qt::Key_L, Qt::ControlModifier);
    QTRY_VERIFY(item("leafPorts") != nullptr);
}

void TablesAreLookedUp::cleanup()
{
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("leafPorts") == nullptr);
}

void TablesAreLookedUp::twoPortsMeetAtEachKey()
{
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("firstPort"));
    const QPointF place = item("firstPort")->mapToScene({});
    QVERIFY(!words("portsEmpty").isEmpty());
    pictureOfSheet(*m_window, *m_look, "tables-empty");
    item("firstPort")->forceActiveFocus(Qt::TabFocusReason);
    type("an -6 MALE");
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("secondPort"));
    type("orb -6 femal");
    QVERIFY(item("portsVerdict") == nullptr); // Not until it reads.
    type("e");
    QCOMPARE(words("portsVerdict"),
             QStringLiteral("AN -6 male with ORB -6 female: screws together, but leaks"));
    QCOMPARE(tables().ports()->mark(), static_cast<int>(Standing::Trap));
    const auto met =
        mating(Port::parse("AN -6 male").value(), Port::parse("ORB -6 female").value());
    QCOMPARE(words("portsWhy"), QString::fromStdString(met.why));
    QCOMPARE(words("portsSource"),
             QString(QStringLiteral("Source: ") + QString::fromStdString(met.source)));
    QVERIFY(item("portsNeeds") == nullptr);
    QCOMPARE(item("firstPort")->mapToScene({}), place); // It stays where it was.
    pictureOfSheet(*m_window, *m_look, "tables-ports");
}

void TablesAreLookedUp::whatTheJointNeedsIsSaid()
{
    writeAnew("firstPort", "ORB -8 male");
    writeAnew("secondPort", "ORB -8 female");
    QCOMPARE(words("portsNeeds"), QStringLiteral("It needs: o-ring AS568-908"));
    writeAnew("firstPort", "ORB -8 male + o-ring");
    QVERIFY2(words("portsVerdict").endsWith(QStringLiteral("made for each other")),
             qPrintable(words("portsVerdict")));
}

void TablesAreLookedUp::aWordThatIsNoPortIsRefused()
{
    writeAnew("firstPort", "XYZ -8 male");
    QVERIFY2(words("portsWrong").contains(QStringLiteral("XYZ")), qPrintable(words("portsWrong")));
    QVERIFY(item("portsVerdict") == nullptr);
    pictureOfSheet(*m_window, *m_look, "tables-refused");
    clear("firstPort");
    QVERIFY(item("portsWrong") == nullptr);
    clear("secondPort");
}

void TablesAreLookedUp::torquesStandWithTheirSources()
{
    press("leafTorque");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("torquePort"));
    QVERIFY(!words("torqueEmpty").isEmpty());
    writeAnew("torquePort", "ORB -6 male");
    QCOMPARE(all("torqueFigure"),
             (QStringList{QStringLiteral("43.0–53.0 N·m"), QStringLiteral("21.6–26.4 N·m")}));
    QStringList sources;
    for (const Torque &torque : torquesFor(torqueAsked({"ORB -6 male"}).value()))
        sources.append(
            QString::fromUtf8(torque.source.data(), static_cast<qsizetype>(torque.source.size())));
    QCOMPARE(all("torqueSource"), sources);
    QVERIFY2(words("torqueDiffer").contains(QStringLiteral("by a factor of 2.0")),
             qPrintable(words("torqueDiffer")));
    QVERIFY(words("torqueAdvice").contains(QStringLiteral("brake work checked")));
    pictureOfSheet(*m_window, *m_look, "tables-torque");
}

void TablesAreLookedUp::whatTheNutHoldsIsChosen()
{
    press("leafTorque");
    writeAnew("torquePort", "an -6"); // No gender: the size.
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("torqueOn"));
    key(Qt::Key_Down); // On a hose: 210 to 250 in-lb.
    QTRY_VERIFY2(all("torqueFigure").contains(QStringLiteral("23.7–28.2 N·m")),
                 qPrintable(all("torqueFigure").join(u' ')));
    QCOMPARE(words("torqueHeading"), QStringLiteral("AN -6 male, nut on hose, all of steel"));
    m_look->setInInches(true);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("leafPorts") == nullptr);
    key(Qt::Key_L, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("torquePort")); // The leaf of before.
    tables().torques()->setOn(1);
    QTRY_VERIFY2(all("torqueFigure").contains(QStringLiteral("17.5–20.8 lbf·ft")),
                 qPrintable(all("torqueFigure").join(u' ')));
    tables().torques()->setOn(0);
}

void TablesAreLookedUp::noTableIsSaid()
{
    press("leafTorque");
    writeAnew("torquePort", "NPT 3/8 male");
    QVERIFY2(words("torqueHeading").contains(QStringLiteral("no table that is known here")),
             qPrintable(words("torqueHeading")));
    QVERIFY(all("torqueFigure").isEmpty());
    writeAnew("torquePort", "AN -7");
    QVERIFY(!words("torqueWrong").isEmpty());
    clear("torquePort");
}

void TablesAreLookedUp::aLineIsReckoned()
{
    // Colebrook-White worked by hand: Re 18,815, f 0.02627, 7940 Pa with 745 kg/m³ and 0.41 mPa·s.
    writeLine("255 L/h", "8.71 mm", "5 m");
    QCOMPARE(all("lineFigure"),
             (QStringList{QStringLiteral("79 mbar"), QStringLiteral("1.19 m/s"),
                          QStringLiteral("18815, turbulent"), QStringLiteral("0.0263")}));
    QVERIFY2(words("lineNotes").contains(QStringLiteral("745 kg/m³, 0.410 mPa·s")),
             qPrintable(words("lineNotes")));
    pictureOfSheet(*m_window, *m_look, "tables-line");
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("lineFluid"));
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("lineTemperature"));
    type("900 C");
    QVERIFY2(words("lineWrong").contains(QStringLiteral("temperature")),
             qPrintable(words("lineWrong")));
    clear("lineTemperature");
    m_look->setInInches(true);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("leafPorts") == nullptr);
    key(Qt::Key_L, Qt::ControlModifier);
    QTRY_COMPARE(all("lineFigure").value(0), QStringLiteral("1.15 psi"));
    QCOMPARE(all("lineFigure").value(1), QStringLiteral("3.90 ft/s"));
}

void TablesAreLookedUp::aDashIsAssumed()
{
    // A -6 of the tube's numbering is 5/16 in wide (SAE J517's 100R14, as hose pages quote it).
    writeLine("255 L/h", "-6", "3 m");
    QVERIFY2(words("lineNotes").contains(QStringLiteral("A bore of 7.94 mm is assumed for -6")),
             qPrintable(words("lineNotes")));
    LineWords asked;
    asked.flow = "255 L/h";
    asked.dash = 6;
    asked.length = "3 m";
    const double kPa = lineLoss(lineAsked(asked).value())->dropPa / 1000;
    QCOMPARE(all("lineFigure").value(0), saidFinePressure(kPa, Units::Metric));
}

void TablesAreLookedUp::aLineThatIsNoneIsRefused()
{
    writeLine("255", "8 mm", "5 m");
    QVERIFY2(words("lineWrong").contains(QStringLiteral("no unit")),
             qPrintable(words("lineWrong")));
    QVERIFY(all("lineFigure").isEmpty());
    writeAnew("lineFlow", "255 L/h");
    writeAnew("lineSize", "-7");
    QVERIFY(!words("lineWrong").isEmpty());
    clear("lineSize");
    QVERIFY(!words("lineEmpty").isEmpty());
}

void TablesAreLookedUp::allOfItIsGerman()
{
    cleanup();
    m_look->setLanguage(QStringLiteral("de"));
    key(Qt::Key_L, Qt::ControlModifier);
    press("leafPorts");
    writeAnew("firstPort", "AN -6 male");
    writeAnew("secondPort", "ORB -6 female");
    QVERIFY2(words("portsVerdict").contains(QStringLiteral("undicht")),
             qPrintable(words("portsVerdict")));
    pictureOfSheet(*m_window, *m_look, "tables-ports-german");
    press("leafTorque");
    writeAnew("torquePort", "ORB -6");
    pictureOfSheet(*m_window, *m_look, "tables-torque-german");
    writeLine("255 L/h", "-6", "3 m");
    QVERIFY2(words("lineNotes").contains(QStringLiteral("Benzin")), qPrintable(words("lineNotes")));
    pictureOfSheet(*m_window, *m_look, "tables-line-german");
}

QTEST_MAIN(TablesAreLookedUp)
#include "tst_tables_are_looked_up_by_keyboard.moc"
