// SPDX-License-Identifier: MIT
//
// A Problem says what, where and what to do, and points at the place with a caret.

#include "model/exact/problem.h"

#include <QTest>

using flarestock::Problem;
using flarestock::quotedStart;

class ProblemTextTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void namesPlaceAndRemedy();
    void pointsAtTheColumnInCharacters();
    void quotesTheStartOfALongText();
};

void ProblemTextTest::namesPlaceAndRemedy()
{
    const Problem bare{"shop.db", "is not there", "Name another file."};
    QCOMPARE(bare.sentence(), std::string("shop.db: is not there. Name another file."));

    const Problem placed{"a.csv", "port has no gender", "Write male or female.", 14, 22};
    QCOMPARE(placed.sentence(),
             std::string("a.csv, line 14, column 22: port has no gender. Write male or female."));
}

void ProblemTextTest::pointsAtTheColumnInCharacters()
{
    // "µ" is two bytes and one column: the caret stands under the 3, not beside it.
    const Problem placed{"a.csv", "bad number", "", 2, 3, "µ,3x"};
    QCOMPARE(placed.text(), std::string("a.csv, line 2, column 3: bad number.\n  µ,3x\n    ^"));
}

void ProblemTextTest::quotesTheStartOfALongText()
{
    QCOMPARE(quotedStart("5 ft"), std::string("\"5 ft\""));
    QCOMPARE(quotedStart("a\tb"), std::string("\"a b\""));
    QCOMPARE(quotedStart(std::string(41, 'x')), "\"" + std::string(40, 'x') + "…\"");
    // Byte 40 lies inside a "µ": it is left out whole.
    QCOMPARE(quotedStart(std::string(39, 'x') + "µm"), "\"" + std::string(39, 'x') + "…\"");
}

QTEST_APPLESS_MAIN(ProblemTextTest)
#include "tst_problem_says_what_where_and_what_to_do.moc"
