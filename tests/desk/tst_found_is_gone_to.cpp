// SPDX-License-Identifier: MIT
//
// What is found anywhere in the shop is one key press away, whichever area shows: words into the
// find field, Enter, and the area that has it shows it.

#include "stock_on_screen.h"

using namespace flarestock;

class FoundIsGoneTo : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void aBinIsFoundFromABuild();
    void aBuildIsFoundFromStock();
    void enterWithoutALineStaysInTheArea();
    void nothingIsWarnedAbout() { QCOMPARE(m_screens->warnings(), QStringList()); }

private:
    void seek(const char *words)
    {
        key(Qt::Key_F, Qt::ControlModifier);
        key(Qt::Key_A, Qt::ControlModifier);
        type(words);
    }
    [[nodiscard]] int offered() const { return m_desk->anywhere()->rows()->count(); }
};

void FoundIsGoneTo::aBinIsFoundFromABuild()
{
    QVERIFY(item("lineMap") != nullptr);
    seek("h4");
    QTRY_COMPARE(offered(), 1);
    QTRY_VERIFY(item("foundAnywhere") != nullptr);
    picture("found");
    key(Qt::Key_Return);
    QTRY_VERIFY(item("stockList") != nullptr);
    QTRY_VERIFY(stock().isNarrowed());
    QTRY_VERIFY2(stock().heading().contains(QStringLiteral("H4")), qPrintable(stock().heading()));
    QVERIFY(words("findField").isEmpty());
}

void FoundIsGoneTo::aBuildIsFoundFromStock()
{
    seek("coupe gearbox");
    QTRY_COMPARE(m_desk->anywhere()->rows()->cell(0, QStringLiteral("target")).toString(),
                 QStringLiteral("coupe-gearbox"));
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    QTRY_VERIFY(item("lineMap") != nullptr);
    QVERIFY(item("stockList") == nullptr);
    QTRY_VERIFY(m_desk->build()->title().contains(QStringLiteral("gearbox"), Qt::CaseInsensitive));
}

void FoundIsGoneTo::enterWithoutALineStaysInTheArea()
{
    key(Qt::Key_2, Qt::AltModifier);
    QTRY_VERIFY(item("stockList") != nullptr);
    seek("coupe");
    QTRY_VERIFY(offered() > 0);
    key(Qt::Key_Return);
    QVERIFY(item("lineMap") == nullptr);
    seek("");
    key(Qt::Key_Escape);
}

QTEST_MAIN(FoundIsGoneTo)
#include "tst_found_is_gone_to.moc"
