// SPDX-License-Identifier: MIT
//
// What was drafted and is taken back, or given up before it went out, is no order of the list any
// more; one that its supplier has heard of stays. What happened to an order is said once a day.

#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "desk_on_demo.h"

using namespace flarestock;

class ADraftThatGoesBack : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void draftsOfAllSlipsGoBackAtOnce();
    void aDraftIsGivenUp();
    void whatWentOutStays();
    void whatHappenedIsSaidOnceADay();

private:
    [[nodiscard]] BuyingDesk &buying() const { return *m_desk->buying(); }
    [[nodiscard]] OrdersPage &orders() const { return *buying().orders(); }
    void await()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 30000);
        QTRY_VERIFY_WITH_TIMEOUT(!buying().isLoading(), 60000);
        const SlipsPage &slips = *buying().slips();
        QTRY_VERIFY_WITH_TIMEOUT(!slips.isLooking() || !slips.isLoading(), 60000);
        QCOMPARE(m_desk->pen()->problem(), QString());
    }
    /// Two of a part, of the third supplier: the draft is in hand then.
    void draftOne()
    {
        QVERIFY(orders().begin(QStringLiteral("new")));
        orders().form()->finish({{QStringLiteral("part"), QStringLiteral("AD-4-4")},
                                 {QStringLiteral("quantity"), QStringLiteral("2")},
                                 {QStringLiteral("supplier"), 2}});
        await();
        QCOMPARE(orders().orders()->count(), 1);
    }
    void finish(const char *deed, const QVariantMap &values)
    {
        QVERIFY(orders().begin(QString::fromLatin1(deed)));
        orders().form()->finish(values);
        await();
    }
    /// What happened, and when and by whom.
    [[nodiscard]] QStringList history() const
    {
        QStringList all;
        Rows &facts = *orders().facts();
        for (int row = 0; row < facts.count(); ++row) {
            if (facts.cell(row, QStringLiteral("key")).toString().startsWith(u"step|"))
                all.append(facts.cell(row, QStringLiteral("title")).toString());
        }
        return all;
    }
};

void ADraftThatGoesBack::init()
{
    renew();
    m_desk->setWho(QStringLiteral("Kim"));
    buying().setLooking(true);
    await();
    QCOMPARE(orders().orders()->count(), 0); // The demo shop has none.
}

void ADraftThatGoesBack::draftsOfAllSlipsGoBackAtOnce()
{
    buying().setPage(BuyingDesk::Slips);
    await();
    buying().slips()->draft({});
    await();
    const int drafted = orders().orders()->count();
    QVERIFY(drafted > 3);
    m_desk->takeBack();
    await();
    QCOMPARE(orders().orders()->count(), 0);
    QCOMPARE(orders().selected(), QString());
    // The journal keeps them, and their numbers are used up.
    const auto shop = inFile();
    const auto &kept = shop->bought.orders.orders;
    QCOMPARE(static_cast<int>(kept.size()), drafted);
    for (const auto &[number, order] : kept)
        QCOMPARE(order.standing(), OrderStanding::Cancelled);
}

void ADraftThatGoesBack::aDraftIsGivenUp()
{
    draftOne();
    const QString number = orders().selected();
    QVERIFY(!orders().begin(QStringLiteral("cancel"))); // It asks nothing.
    await();
    QCOMPARE(orders().orders()->count(), 0);
    m_desk->takeBack();
    await();
    QCOMPARE(orders().selected(), number);
    QCOMPARE(history(), (QStringList{QStringLiteral("drafted"), QStringLiteral("cancelled"),
                                     QStringLiteral("a draft again")}));
}

void ADraftThatGoesBack::whatWentOutStays()
{
    draftOne();
    finish("place", {{QStringLiteral("due"), QStringLiteral("2030-02-03")}});
    m_desk->takeBack();
    await();
    QCOMPARE(orders().state(), QStringLiteral("draft"));
    QVERIFY(!orders().begin(QStringLiteral("cancel")));
    await();
    QCOMPARE(orders().orders()->count(), 1); // Somebody may have heard of it.
    QCOMPARE(orders().state(), QStringLiteral("cancelled"));
    QCOMPARE(history(),
             (QStringList{QStringLiteral("drafted"), QStringLiteral("placed"),
                          QStringLiteral("a draft again"), QStringLiteral("cancelled")}));
}

void ADraftThatGoesBack::whatHappenedIsSaidOnceADay()
{
    draftOne();
    for (const char *day : {"2030-02-01", "2030-02-02"})
        finish("change", {{QStringLiteral("due"), QString::fromLatin1(day)}});
    finish("place", {{QStringLiteral("due"), QStringLiteral("2030-02-02")}});
    finish("change", {{QStringLiteral("due"), QStringLiteral("2030-02-03")}});
    QCOMPARE(inFile()->bought.orders.order(orders().selected().toStdString())->steps.size(),
             std::size_t{5});
    QCOMPARE(history(), (QStringList{QStringLiteral("drafted"), QStringLiteral("changed"),
                                     QStringLiteral("placed"), QStringLiteral("changed")}));
    m_desk->setWho(QStringLiteral("Robin"));
    finish("change", {{QStringLiteral("due"), QStringLiteral("2030-02-04")}});
    QCOMPARE(history().size(), 5); // Another's change is another.
}

QTEST_MAIN(ADraftThatGoesBack)
#include "tst_a_draft_that_goes_back_leaves_no_order.moc"
