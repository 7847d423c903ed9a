// SPDX-License-Identifier: MIT
//
// Where a server or the network goes away after a deed was written and before the answer came, the
// desk cannot know: whoever presses Enter again is told that it is in the shop, and takes nothing
// twice. What was not written is written by the second Enter.

#include "desk_on_demo.h"

#include "app/stockroom/deed.h"

using namespace flarestock;

class LostAnswer : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void isSaidAndNothingIsTakenTwice();
    void whereNothingWasWrittenTheSecondEnterWrites();
    void severalInARow();
    void ofAnotherShopNothingIsAsked();

private:
    enum class Answer { Comes, IsLost, NeverGoesOut };

    void takeOne()
    {
        m_desk->pen()->act(QStringLiteral("One taken."),
                           [](const ShopFile &, const Workshop &, const By &by) -> Result<ToWrite> {
                               const BalanceKey from{"AD-8-8", "A3", {}};
                               return ToWrite(
                                   numbered({movementOf(from, 1, "used-up", Deed::Move)}, by));
                           });
        QTRY_VERIFY(!m_desk->pen()->isBusy());
    }
    [[nodiscard]] std::int64_t there() const
    {
        const auto shop = inFile();
        std::int64_t all = 0;
        for (const auto &[key, held] : shop->ledger.balancesOf("AD-8-8"))
            all += key.place == "A3" ? held.quantity : 0;
        return all;
    }

    Answer m_answer = Answer::Comes;
    std::int64_t m_before = 0;
};

void LostAnswer::init()
{
    renew();
    m_answer = Answer::Comes;
    auto shop = openShopFile(m_file.toStdString()).value();
    shop.write =
        [this, write = shop.write](const MakeAction &make) -> Result<std::shared_ptr<const Wrote>> {
        if (m_answer == Answer::NeverGoesOut)
            return problem("the server", "no longer answers", "Look.");
        auto written = write(make);
        if (m_answer == Answer::IsLost)
            return problem("the server", "no longer answers", "Look.");
        return written;
    };
    shop.watch = {};
    m_desk->show(std::move(shop));
    m_desk->setWho(QStringLiteral("ada"));
    m_before = there();
    QVERIFY(m_before > 2);
}

void LostAnswer::isSaidAndNothingIsTakenTwice()
{
    m_answer = Answer::IsLost;
    takeOne();
    QVERIFY(m_desk->pen()->problem().contains(QStringLiteral("no longer answers")));
    QCOMPARE(there(), m_before - 1);
    m_answer = Answer::Comes;
    takeOne();
    QVERIFY2(m_desk->pen()->problem().contains(QStringLiteral("only the answer was lost")),
             qPrintable(m_desk->pen()->problem()));
    QCOMPARE(there(), m_before - 1);
    takeOne(); // As it was said.
    QCOMPARE(m_desk->pen()->problem(), QString());
    QCOMPARE(there(), m_before - 2);
}

void LostAnswer::whereNothingWasWrittenTheSecondEnterWrites()
{
    m_answer = Answer::NeverGoesOut;
    takeOne();
    QCOMPARE(there(), m_before);
    m_answer = Answer::Comes;
    takeOne();
    QCOMPARE(m_desk->pen()->problem(), QString());
    QCOMPARE(there(), m_before - 1);
}

void LostAnswer::severalInARow()
{
    m_answer = Answer::IsLost;
    takeOne();
    m_answer = Answer::NeverGoesOut; // Which says nothing of the first.
    takeOne();
    takeOne();
    m_answer = Answer::Comes;
    takeOne();
    QVERIFY2(m_desk->pen()->problem().contains(QStringLiteral("only the answer was lost")),
             qPrintable(m_desk->pen()->problem()));
    QCOMPARE(there(), m_before - 1);
}

void LostAnswer::ofAnotherShopNothingIsAsked()
{
    m_answer = Answer::IsLost;
    takeOne();
    m_desk->show(openShopFile(m_file.toStdString()).value());
    takeOne();
    QCOMPARE(m_desk->pen()->problem(), QString());
    QCOMPARE(there(), m_before - 2);
}

QTEST_MAIN(LostAnswer)
#include "tst_lost_answer_is_not_written_twice.moc"
