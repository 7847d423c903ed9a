// SPDX-License-Identifier: MIT
//
// Rows become other rows by the fewest changes, so that a screen keeps its place: whatever they
// were, they end at the new ones, and say only what changed.

#include "app/desk/rows/rows.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <random>

using namespace flarestock;

namespace {

Row row(const QString &key, int value)
{
    return {key, {value}};
}

std::vector<Row> shown(const Rows &rows)
{
    std::vector<Row> result;
    result.reserve(rows.rows().size());
    for (int at = 0; at < rows.count(); ++at)
        result.push_back({rows.cell(at, QStringLiteral("key")).toString(),
                          {rows.cell(at, QStringLiteral("value"))}});
    return result;
}

} // namespace

class ListsChangeRowByRow : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void endAtTheNewRowsWhateverTheyWere();
    void sayWhatChangedAndNothingElse();
    void sayWhichCellsChanged();
    void showOthersInTheLinesThatAreThere();
    void resetWhereAlmostAllIsNew();
    void answerNothingBeyondTheirEnd();
    void shareWhatIsTheSame();
};

void ListsChangeRowByRow::endAtTheNewRowsWhateverTheyWere()
{
    const unsigned seed = qEnvironmentVariableIsSet("FLARESTOCK_SEED")
                              ? qEnvironmentVariable("FLARESTOCK_SEED").toUInt()
                              : std::random_device()();
    qInfo("FLARESTOCK_SEED=%u", seed);
    std::mt19937 random(seed);
    Rows rows({QStringLiteral("value")});
    const QAbstractItemModelTester tester(&rows,
                                          QAbstractItemModelTester::FailureReportingMode::QtTest);
    int changes = 0;
    for (int round = 0; round < 300; ++round) {
        std::vector<Row> wanted;
        for (int key = 0; key < 12; ++key) {
            if (random() % 3 != 0)
                wanted.push_back(row(QString::number(key), static_cast<int>(random() % 2)));
        }
        std::shuffle(wanted.begin(), wanted.end(), random);
        if (random() % 4 == 0)
            rows.showOther(wanted);
        else
            rows.become(wanted);
        QVERIFY(shown(rows) == wanted);
        ++changes;
    }
    QCOMPARE(changes, 300);
}

void ListsChangeRowByRow::sayWhatChangedAndNothingElse()
{
    Rows rows({QStringLiteral("value")});
    rows.become({row(QStringLiteral("a"), 1), row(QStringLiteral("b"), 2)});
    QSignalSpy changed(&rows, &Rows::dataChanged);
    QSignalSpy inserted(&rows, &Rows::rowsInserted);
    QSignalSpy removed(&rows, &Rows::rowsRemoved);
    QSignalSpy reset(&rows, &Rows::modelReset);
    rows.become(
        {row(QStringLiteral("a"), 1), row(QStringLiteral("b"), 3), row(QStringLiteral("c"), 4)});
    QCOMPARE(changed.count(), 1);
    QCOMPARE(changed.first().first().toModelIndex().row(), 1);
    QCOMPARE(inserted.count(), 1);
    QCOMPARE(removed.count(), 0);
    QCOMPARE(reset.count(), 0);
    rows.become(
        {row(QStringLiteral("a"), 1), row(QStringLiteral("b"), 3), row(QStringLiteral("c"), 4)});
    QCOMPARE(changed.count() + inserted.count() + removed.count() + reset.count(), 2);
}

void ListsChangeRowByRow::sayWhichCellsChanged()
{
    Rows rows({QStringLiteral("value"), QStringLiteral("weight")});
    rows.become({{QStringLiteral("a"), {1, 2}}});
    QSignalSpy changed(&rows, &Rows::dataChanged);
    rows.become({{QStringLiteral("a"), {1, 3}}});
    rows.showOther({{QStringLiteral("b"), {4, 3}}});
    QCOMPARE(changed.count(), 2);
    const int key = rows.roleNames().key("key");
    const int value = rows.roleNames().key("value");
    const int weight = rows.roleNames().key("weight");
    QCOMPARE(changed.at(0).at(2).value<QList<int>>(), QList<int>{weight});
    QCOMPARE(changed.at(1).at(2).value<QList<int>>(), (QList<int>{key, value}));
}

/// Of three lines two stay, whatever their keys were, and the third goes.
void ListsChangeRowByRow::showOthersInTheLinesThatAreThere()
{
    Rows rows({QStringLiteral("value")});
    rows.become(
        {row(QStringLiteral("a"), 1), row(QStringLiteral("b"), 2), row(QStringLiteral("c"), 3)});
    QSignalSpy inserted(&rows, &Rows::rowsInserted);
    QSignalSpy removed(&rows, &Rows::rowsRemoved);
    QSignalSpy moved(&rows, &Rows::rowsMoved);
    rows.showOther({row(QStringLiteral("c"), 3), row(QStringLiteral("x"), 2)});
    QCOMPARE(inserted.count() + moved.count(), 0);
    QCOMPARE(removed.count(), 1);
    QCOMPARE(removed.first().at(1).toInt(), 2);
    QCOMPARE(rows.rowOf(QStringLiteral("c")), 0);
    rows.showOther({});
    QCOMPARE(rows.count(), 0);
}

void ListsChangeRowByRow::resetWhereAlmostAllIsNew()
{
    Rows rows({QStringLiteral("value")});
    QSignalSpy reset(&rows, &Rows::modelReset);
    std::vector<Row> many;
    for (int at = 0; at <= Rows::StepsMax; ++at)
        many.push_back(row(QString::number(at), at));
    rows.become(many);
    QCOMPARE(reset.count(), 1);
    QVERIFY(shown(rows) == many);
}

void ListsChangeRowByRow::answerNothingBeyondTheirEnd()
{
    Rows rows({QStringLiteral("value")});
    rows.become({row(QStringLiteral("a"), 1)});
    QVERIFY(!rows.cell(1, QStringLiteral("value")).isValid());
    QVERIFY(!rows.cell(-1, QStringLiteral("value")).isValid());
    QVERIFY(!rows.cell(0, QStringLiteral("weight")).isValid());
    QCOMPARE(rows.rowOf(QStringLiteral("b")), -1);
}

/// Down to the cells of a list in a cell; what is another one stays as it was made.
void ListsChangeRowByRow::shareWhatIsTheSame()
{
    const auto made = [](const QString &key, int second) {
        return Row{key,
                   {7, QVariantList{QVariantMap{{QStringLiteral("n"), 1}},
                                    QVariantMap{{QStringLiteral("n"), second}}}}};
    };
    const std::vector<Row> shown{made(QStringLiteral("a"), 2), made(QStringLiteral("b"), 2)};
    const std::vector<Row> wanted{made(QStringLiteral("b"), 2), made(QStringLiteral("a"), 3),
                                  made(QStringLiteral("c"), 2)};
    std::vector<Row> rows = wanted;
    shareWith(shown, rows);
    QVERIFY(rows == wanted);
    QVERIFY(rows[0].cells.constData() == shown[1].cells.constData());
    QVERIFY(rows[1].cells.constData() != shown[0].cells.constData());
    const QVariantList before = shown[0].cells.at(1).toList();
    const QVariantList after = rows[1].cells.at(1).toList();
    QVERIFY(after.at(0).toMap().isSharedWith(before.at(0).toMap()));
    QVERIFY(!after.at(1).toMap().isSharedWith(before.at(1).toMap()));
}

QTEST_APPLESS_MAIN(ListsChangeRowByRow)
#include "tst_lists_change_row_by_row.moc"
