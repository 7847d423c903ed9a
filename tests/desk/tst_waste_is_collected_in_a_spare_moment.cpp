// SPDX-License-Identifier: MIT
//
// The engine of the screens looks for what nobody needs in a pause, or between two keys of a person
// who makes none, and not in the midst of a change of a list. Qt's own log tells when it does.

#include "app/desk/launch/spare_moment.h"

#include <QJSEngine>
#include <QLoggingCategory>
#include <QQmlEngine>
#include <QTest>
#include <QWindow>

using namespace flarestock;

namespace {

int collected = 0;

void hear(QtMsgType, const QMessageLogContext &, const QString &said)
{
    if (said.contains(QLatin1String("= GC =")))
        ++collected;
}

} // namespace

class WasteIsCollectedInASpareMoment : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init() { collected = 0; }
    void notWhileTextsAreRead();
    void inAPause();
    void betweenTheKeysOfOneWhoMakesNone();
    void cleanupTestCase();

private:
    /// A megabyte, as a list of lines reads it.
    static void readTexts(QQmlEngine &engine)
    {
        QJSValue line = engine.newObject();
        for (int at = 0; at < 1024; ++at)
            line.setProperty(QStringLiteral("words"), QString(512, QChar(u'a' + at % 26)));
    }
};

void WasteIsCollectedInASpareMoment::initTestCase()
{
    // Before an engine is made: it asks once.
    QLoggingCategory::setFilterRules(QStringLiteral("qt.qml.gc.allocatorStats=true"));
    qInstallMessageHandler(hear);
}

/// Qt does it for each 128 KiB; that it does so yet is proved by an engine of its own.
void WasteIsCollectedInASpareMoment::notWhileTextsAreRead()
{
    QQmlEngine plain;
    readTexts(plain);
    QVERIFY2(collected >= 5, qPrintable(QString::number(collected)));
    QQmlEngine engine;
    const SpareMoment spare(engine);
    init(); // The text that stays is measured once.
    readTexts(engine);
    QCOMPARE(collected, 0);
}

void WasteIsCollectedInASpareMoment::inAPause()
{
    QQmlEngine engine;
    const SpareMoment spare(engine);
    QWindow window;
    init();
    QTest::keyClick(&window, Qt::Key_A);
    QTest::qWait(SpareMoment::AfterMs / 2);
    QCOMPARE(collected, 0);
    QTRY_COMPARE(collected, 1);
    QTest::qWait(SpareMoment::AfterMs * 2); // Once is enough.
    QCOMPARE(collected, 1);
}

void WasteIsCollectedInASpareMoment::betweenTheKeysOfOneWhoMakesNone()
{
    QQmlEngine engine;
    const SpareMoment spare(engine);
    QWindow window;
    init();
    for (int at = 1; at < SpareMoment::DoneAtMost; ++at)
        QTest::keyClick(&window, Qt::Key_Down);
    QTest::qWait(SpareMoment::BetweenMs * 2);
    QCOMPARE(collected, 0);
    QTest::keyClick(&window, Qt::Key_Down);
    QCOMPARE(collected, 0); // Not in the key itself.
    QTest::qWait(SpareMoment::BetweenMs * 5);
    QCOMPARE(collected, 1);
}

void WasteIsCollectedInASpareMoment::cleanupTestCase()
{
    qInstallMessageHandler(nullptr);
}

QTEST_MAIN(WasteIsCollectedInASpareMoment)
#include "tst_waste_is_collected_in_a_spare_moment.moc"
