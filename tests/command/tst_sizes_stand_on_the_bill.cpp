// SPDX-License-Identifier: MIT
//
// What was worked out stands on the bill: the sizes with what each would take, the rule of thumb
// named as common practice, and what the builder's own size costs in pressure, in kPa and psi (the
// psi is 6894.757 Pa by definition). The demo shop is invented; what is checked are laws.

#include "tests/command/changed_shop.h"

#include <QTest>

#include <cmath>

using namespace flarestock::tests;

namespace {

Words inTank(Words more)
{
    Words words = {"bill", "injection-in-tank"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

QJsonArray triedOf(const QJsonObject &size)
{
    return size.value(QLatin1String("tried")).toArray();
}

bool has(const std::string &text, const std::string &what)
{
    return text.find(what) != std::string::npos;
}

} // namespace

class SizesOnTheBill : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { m_shop.renew(); }
    void areOneList();
    void ownSizeIsNamedWithItsCost();
    void emptyAnswerIsWorkedOutAgain();
    void oilHasNone();

private:
    [[nodiscard]] QJsonObject size(const Words &more, const std::string &question) const
    {
        return objectWith(arrayOf(m_shop.json(inTank(more)), "sizes"), "question", question);
    }

    ChangedShop m_shop;
};

void SizesOnTheBill::areOneList()
{
    const QJsonArray sizes = arrayOf(m_shop.json(inTank({})), "sizes");
    QCOMPARE(sizes.size(), 4);
    const QJsonObject feed = size({}, "pressure-size");
    QCOMPARE(textOf(feed, "answer"), textOf(feed, "workedOut"));
    QVERIFY(has(textOf(feed, "practice"), "common practice, no source"));
    const std::string sheet = m_shop.run(inTank({})).out;
    QVERIFY(has(sheet, "\nSIZES WORKED OUT\n"));
    QVERIFY(has(sheet, "common practice, no source: -6 (to about 500 hp)"));
    double last = 1e9; // A wider line takes less.
    for (const QJsonValue &one : triedOf(feed)) {
        QVERIFY(one[QLatin1String("lossKpa")].toDouble() < last);
        last = one[QLatin1String("lossKpa")].toDouble();
    }
}

void SizesOnTheBill::ownSizeIsNamedWithItsCost()
{
    const QJsonObject own = size({"--set", "return-size=-6"}, "return-size");
    QCOMPARE(textOf(own, "answer"), std::string("-6"));
    QCOMPARE(textOf(own, "workedOut"), std::string("-8"));
    QCOMPARE(own[QLatin1String("own")].toBool(), true);
    const QJsonArray tried = triedOf(own);
    const QJsonObject six = objectWith(tried, "dash", "-6");
    const QJsonObject eight = objectWith(tried, "dash", "-8");
    const double kpa = six[QLatin1String("overWorkedKpa")].toDouble();
    QVERIFY(kpa > 5);
    QVERIFY(std::abs(six[QLatin1String("lossKpa")].toDouble() -
                     eight[QLatin1String("lossKpa")].toDouble() - kpa) < 0.011);
    QVERIFY(std::abs(six[QLatin1String("overWorkedPsi")].toDouble() - kpa / 6.894757) < 0.002);
    const std::string said = "your -6 takes " + QString::number(kpa, 'f', 1).toStdString() +
                             " kPa (" + QString::number(kpa / 6.894757, 'f', 2).toStdString() +
                             " psi) more than -8, beyond what it may";
    const std::string sheet = m_shop.run(inTank({"--set", "return-size=-6"})).out;
    QVERIFY2(has(sheet, said), (said + " is not in " + sheet).c_str());
}

void SizesOnTheBill::emptyAnswerIsWorkedOutAgain()
{
    QCOMPARE(m_shop.json(inTank({"--set", "return-size="})).out, m_shop.json(inTank({})).out);
}

void SizesOnTheBill::oilHasNone()
{
    QVERIFY(arrayOf(m_shop.json({"bill", "oil-cooler"}), "sizes").isEmpty());
    QVERIFY(!has(m_shop.run({"bill", "oil-cooler"}).out, "SIZES"));
}

QTEST_APPLESS_MAIN(SizesOnTheBill)
#include "tst_sizes_stand_on_the_bill.moc"
