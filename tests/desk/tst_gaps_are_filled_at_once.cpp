// SPDX-License-Identifier: MIT
//
// What is filled into a sentence stays as it is, also where it looks like a gap itself: an address
// writes a slash as "%2F" (RFC 3986, 2.1), and a hand may call a bin anything.

#include "app/desk/words/gaps.h"

#include <QTest>

using flarestock::Gaps;

class GapsAreFilled : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void atOnce();
    void byTheirNumbers();
    void whatIsNoGapStays();
};

void GapsAreFilled::atOnce()
{
    const QString text = QStringLiteral("%1  ·  %2");
    const QString address = QStringLiteral("shop?sslrootcert=%2Fetc%2Fshop.pem");
    QCOMPARE(Gaps::fill(text, address, QStringLiteral("all kept")),
             QString(address + QStringLiteral("  ·  all kept")));
    // One after the other it would say something else.
    QVERIFY(text.arg(address).arg(QStringLiteral("all kept")) !=
            Gaps::fill(text, address, QStringLiteral("all kept")));
}

void GapsAreFilled::byTheirNumbers()
{
    QCOMPARE(Gaps::fill(QStringLiteral("%2, %1 (%2)"), QStringLiteral("a"), QStringLiteral("b")),
             QStringLiteral("b, a (b)"));
    QCOMPARE(Gaps::fillAll(QStringLiteral("%5%4%3%2%1"),
                           {QStringLiteral("e"), QStringLiteral("d"), QStringLiteral("%1"),
                            QStringLiteral("b"), QStringLiteral("a")}),
             QStringLiteral("ab%1de"));
}

void GapsAreFilled::whatIsNoGapStays()
{
    QCOMPARE(Gaps::fill(QStringLiteral("100 % of %1, %9 %0 %2%"), QStringLiteral("a"),
                        QStringLiteral("b")),
             QStringLiteral("100 % of a, %9 %0 b%"));
}

QTEST_GUILESS_MAIN(GapsAreFilled)
#include "tst_gaps_are_filled_at_once.moc"
