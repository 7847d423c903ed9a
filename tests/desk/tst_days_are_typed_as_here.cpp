// SPDX-License-Identifier: MIT
//
// On a sheet a day stands as the person's country writes it in numbers, and is taken so; ISO 8601
// is taken everywhere, and shown where a form with slashes would be read in two ways. What
// countries write is of the Unicode CLDR, by QLocale; 09.12.2026 is DIN 5008's.

#include "app/desk/words/typed_day.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "desk_on_demo.h"

using namespace flarestock;

class DaysAreTypedAsHere : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void cleanup() { QLocale::setDefault(QLocale::c()); }
    void aDayIsShownAsItIsWrittenHere_data();
    void aDayIsShownAsItIsWrittenHere();
    void aTypedDayIsTaken_data();
    void aTypedDayIsTaken();
    void aBuildsDay();
    void anOrdersDay();
    void aClaimsDay();
    void aWorksDay();
    void aDayThatIsTried();

private:
    /// A German desk with that build, and Kim at it.
    void openInGerman()
    {
        QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
        renew("coupe-fuel");
        m_desk->setWho(QStringLiteral("Kim"));
    }
    [[nodiscard]] static QString field(Form &form, const char *key, const char *cell)
    {
        Rows &fields = *form.fields();
        return fields.cell(fields.rowOf(QLatin1String(key)), QLatin1String(cell)).toString();
    }
    /// Fills in some fields, leaves the others as they stand, and does it.
    void fill(Form &form, const QVariantMap &typed)
    {
        Rows &fields = *form.fields();
        QVariantMap values;
        for (int row = 0; row < fields.count(); ++row)
            values.insert(fields.cell(row, QStringLiteral("key")).toString(),
                          fields.cell(row, QStringLiteral("value")));
        values.insert(typed);
        form.finish(values);
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 30000);
    }
    void openBuying()
    {
        openInGerman();
        m_desk->buying()->setLooking(true);
        awaitBuying();
    }
    void awaitBuying() { QTRY_VERIFY_WITH_TIMEOUT(!m_desk->buying()->isLoading(), 60000); }
};

void DaysAreTypedAsHere::aDayIsShownAsItIsWrittenHere_data()
{
    QTest::addColumn<QString>("where");
    QTest::addColumn<QString>("shown");
    const auto row = [](const char *where, const char *shown) {
        QTest::newRow(where) << QString::fromLatin1(where) << QString::fromLatin1(shown);
    };
    row("de_DE", "09.12.2026");
    row("nl_NL", "09-12-2026");
    row("pl_PL", "9.12.2026");
    row("sv_SE", "2026-12-09");
    row("en_GB", "2026-12-09"); // 09/12/2026 …
    row("en_US", "2026-12-09"); // … and 12/09/2026 are one day.
    row("ar_EG", "2026-12-09"); // In other digits.
    row("C", "2026-12-09");
}

void DaysAreTypedAsHere::aDayIsShownAsItIsWrittenHere()
{
    QFETCH(QString, where);
    QFETCH(QString, shown);
    const QLocale locale(where);
    QCOMPARE(dayAsTyped("2026-12-09", locale), shown);
    QCOMPARE(dayTyped(shown, locale), std::string("2026-12-09"));
    QCOMPARE(dayAsTyped("", locale), QString());
    QCOMPARE(dayAsTyped("soon", locale), QStringLiteral("soon"));
}

void DaysAreTypedAsHere::aTypedDayIsTaken_data()
{
    QTest::addColumn<QString>("where");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("day");
    const auto row = [](const char *where, const char *typed, const char *day) {
        QTest::addRow("%s: %s", where, typed)
            << QString::fromLatin1(where) << QString::fromLatin1(typed) << QString::fromLatin1(day);
    };
    row("de_DE", "2026-12-09", "2026-12-09");
    row("de_DE", " 9.12.2026 ", "2026-12-09");
    row("de_DE", "9.12.26", "2026-12-09");
    row("de_DE", "09. 12. 2026", "2026-12-09");
    row("de_DE", "29.2.2028", "2028-02-29");
    row("de_DE", "29.2.2027", "29.2.2027"); // No leap year.
    row("de_DE", "9.13.2026", "9.13.2026");
    row("de_DE", "9.12.", "9.12.");
    row("de_DE", "9.12.026", "9.12.026");
    row("de_DE", "9/12/2026", "9/12/2026");
    row("de_DE", "bald", "bald");
    row("de_DE", "", "");
    row("nl_NL", "9-12-26", "2026-12-09");
    row("nl_NL", "2026-12-09", "2026-12-09");
    row("en_GB", "9/12/26", "2026-12-09");
    row("en_US", "12/9/2026", "2026-12-09");
    row("en_US", "9.12.2026", "9.12.2026");
    row("C", "2026-12-09", "2026-12-09");
    row("C", "9 Dec 2026", "9 Dec 2026");
}

void DaysAreTypedAsHere::aTypedDayIsTaken()
{
    QFETCH(QString, where);
    QFETCH(QString, typed);
    QFETCH(QString, day);
    QCOMPARE(QString::fromStdString(dayTyped(typed, QLocale(where))), day);
}

void DaysAreTypedAsHere::aBuildsDay()
{
    openInGerman();
    PlanForm &form = *m_desk->planning();
    QVERIFY(form.begin(QStringLiteral("change")));
    QCOMPARE(field(form, "by", "value"), QStringLiteral("12.12.2026"));
    QCOMPARE(field(form, "by", "hint"), QStringLiteral("20.03.2027"));
    fill(form, {{QStringLiteral("by"), QStringLiteral("9.1.27")}});
    QCOMPARE(m_desk->pen()->problem(), QString());
    QCOMPARE(inFile()->build("coupe-fuel")->by, std::string("2027-01-09"));
    QVERIFY(form.begin(QStringLiteral("change")));
    fill(form, {{QStringLiteral("by"), QStringLiteral("31.2.2027")}});
    QVERIFY2(m_desk->pen()->problem().contains(QStringLiteral("31.2.2027")),
             qPrintable(m_desk->pen()->problem()));
}

void DaysAreTypedAsHere::anOrdersDay()
{
    openBuying();
    OrdersPage &orders = *m_desk->buying()->orders();
    QVERIFY(orders.begin(QStringLiteral("new")));
    fill(*orders.form(), {{QStringLiteral("part"), QStringLiteral("AD-4-4")},
                          {QStringLiteral("quantity"), QStringLiteral("2")},
                          {QStringLiteral("supplier"), 2}}); // Northeaves Hose & Tube
    QCOMPARE(m_desk->pen()->problem(), QString());
    awaitBuying();
    orders.select(orders.keyAt(0));
    const auto due = [this, &orders] {
        return inFile()->bought.orders.order(orders.selected().toStdString())->now().due;
    };
    QVERIFY(orders.begin(QStringLiteral("change")));
    QCOMPARE(field(*orders.form(), "due", "hint"), QStringLiteral("12.12.2026"));
    fill(*orders.form(), {{QStringLiteral("due"), QStringLiteral("1.2.2030")}});
    QCOMPARE(due(), std::string("2030-02-01"));
    awaitBuying();
    QVERIFY(orders.begin(QStringLiteral("place")));
    QCOMPARE(field(*orders.form(), "due", "value"), QStringLiteral("01.02.2030"));
    fill(*orders.form(), {{QStringLiteral("due"), QStringLiteral("3.2.30")},
                          {QStringLiteral("day"), QStringLiteral("2.1.2030")}});
    QCOMPARE(m_desk->pen()->problem(), QString());
    QCOMPARE(due(), std::string("2030-02-03"));
}

void DaysAreTypedAsHere::aClaimsDay()
{
    openBuying();
    OwedPage &owed = *m_desk->buying()->owed();
    QVERIFY(owed.begin(QStringLiteral("raise")));
    fill(*owed.form(), {{QStringLiteral("part"), QStringLiteral("AD-4-4")}});
    QCOMPARE(m_desk->pen()->problem(), QString());
    awaitBuying();
    QVERIFY(owed.begin(QStringLiteral("promise")));
    QCOMPARE(field(*owed.form(), "day", "hint"), QStringLiteral("12.12.2026"));
    fill(*owed.form(), {{QStringLiteral("day"), QStringLiteral("3.2.30")}});
    QCOMPARE(m_desk->pen()->problem(), QString());
    QCOMPARE(inFile()->bought.claims.claims.front().now.day, std::string("2030-02-03"));
    awaitBuying();
    QVERIFY(owed.begin(QStringLiteral("promise")));
    QCOMPARE(field(*owed.form(), "day", "value"), QStringLiteral("03.02.2030"));
}

void DaysAreTypedAsHere::aWorksDay()
{
    openInGerman();
    ServiceDesk &service = *m_desk->service();
    service.setLooking(true);
    QTRY_VERIFY_WITH_TIMEOUT(!service.isLoading(), 20000);
    service.setTab(QStringLiteral("car|car-2"));
    QVERIFY(service.form()->begin(QStringLiteral("ran")));
    QVERIFY(QRegularExpression(QStringLiteral("^\\d\\d\\.\\d\\d\\.\\d{4}$"))
                .match(field(*service.form(), "day", "value"))
                .hasMatch());
    fill(*service.form(), {{QStringLiteral("runs"), QStringLiteral("3")},
                           {QStringLiteral("hours"), QStringLiteral("0,5")},
                           {QStringLiteral("other"), QStringLiteral("a test day")},
                           {QStringLiteral("day"), QStringLiteral("31.2.26")}});
    QVERIFY2(m_desk->pen()->problem().contains(QStringLiteral("12.12.2026")),
             qPrintable(m_desk->pen()->problem()));
    fill(*service.form(), {{QStringLiteral("runs"), QStringLiteral("3")},
                           {QStringLiteral("hours"), QStringLiteral("0,5")},
                           {QStringLiteral("other"), QStringLiteral("a test day")},
                           {QStringLiteral("day"), QStringLiteral("3.2.26")}});
    QCOMPARE(m_desk->pen()->problem(), QString());
    QTRY_VERIFY_WITH_TIMEOUT(!service.isLoading(), 20000);
    const auto &outings = service.book()->garage.life("car-2").outings;
    QVERIFY(std::any_of(outings.begin(), outings.end(),
                        [](const Outing &one) { return one.day == "2026-02-03"; }));
}

void DaysAreTypedAsHere::aDayThatIsTried()
{
    openInGerman();
    AbreastDesk &abreast = *m_desk->abreast();
    QCOMPARE(abreast.dayHint(), QStringLiteral("20.03.2027"));
    QCOMPARE(abreast.typedDay(QStringLiteral("coupe-fuel")), QStringLiteral("12.12.2026"));
    QCOMPARE(abreast.moveTo(QStringLiteral("coupe-fuel"), QStringLiteral("9.1.27")), QString());
    QCOMPARE(abreast.typedDay(QStringLiteral("coupe-fuel")), QStringLiteral("09.01.2027"));
    abreast.move(QStringLiteral("coupe-fuel"), -1);
    QCOMPARE(abreast.typedDay(QStringLiteral("coupe-fuel")), QStringLiteral("08.01.2027"));
    QVERIFY(!abreast.moveTo(QStringLiteral("coupe-fuel"), QStringLiteral("31.2.27")).isEmpty());
}

QTEST_MAIN(DaysAreTypedAsHere)
#include "tst_days_are_typed_as_here.moc"
