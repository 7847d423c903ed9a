// SPDX-License-Identifier: MIT
//
// What a label carries is a part, a lot, or both; and a scanner leaves a list that is typed on as
// it was.

#include "app/desk/scan/label_code.h"
#include "app/desk/scan/scan_ear.h"

#include <QQuickItem>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTest>

using namespace flarestock;

/// A list that takes letters.
class TypedOn : public QQuickItem {
    Q_OBJECT
    Q_PROPERTY(QString typed MEMBER m_typed)
public:
    QString m_typed;

protected:
    void keyPressEvent(QKeyEvent *event) override { m_typed += event->text(); }
};

class LabelCodeMeansPartAndLot : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void eachWayOfWritingIt();
    void theListIsAsItWasBehindAScan();
};

void LabelCodeMeansPartAndLot::eachWayOfWritingIt()
{
    const QString part = QStringLiteral("PT-6");
    const QString lot = QStringLiteral("SN 4417");
    for (const char *code : {"PT-6", "pt-6", "SN 4417", "PT-6=SN 4417", " PT-6 = sn 4417 "})
        QVERIFY2(LabelCode::of(QString::fromLatin1(code)).means(part, lot), code);
    for (const char *code : {"", " ", "PT-8", "SN4417", "PT-6=SN 4418", "PT-8=SN 4417", "="})
        QVERIFY2(!LabelCode::of(QString::fromLatin1(code)).means(part, lot), code);
    QVERIFY(!LabelCode::of({}).means(part, {})); // Nothing is not a lot without a name.
}

void LabelCodeMeansPartAndLot::theListIsAsItWasBehindAScan()
{
    QQuickWindow window;
    window.resize(100, 100);
    window.show();
    window.requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    TypedOn list;
    list.setParentItem(window.contentItem());
    list.forceActiveFocus();
    ScanEar ear;
    ear.listenTo(window);
    QSignalSpy heard(&ear, &ScanEar::heard);
    for (const char letter : {'S', 'N', ' ', '4', '4', '1', '7'})
        QTest::keyClick(&window, letter);
    QCOMPARE(list.m_typed, QStringLiteral("SN 4417")); // Its blank went to nobody else.
    QTest::keyClick(&window, Qt::Key_Return);
    QCOMPARE(heard.count(), 1);
    QCOMPARE(heard.front().front().toString(), QStringLiteral("SN 4417"));
    QCOMPARE(list.m_typed, QString());
}

QTEST_MAIN(LabelCodeMeansPartAndLot)
#include "tst_label_code_means_part_and_lot.moc"
