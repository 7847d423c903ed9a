// SPDX-License-Identifier: MIT
//
// 100,000 random sums, differences, products, quotients, roundings and comparisons against
// Python's decimal module (libmpdec), with 400 digits of precision so that it never rounds on its
// own. A quotient is first cut there with ROUND_05UP, which a second rounding cannot spoil.

#include "model/exact/decimal.h"

#include <QProcess>
#include <QTest>

#include <random>

using flarestock::Decimal;
using flarestock::Rounding;

namespace {

constexpr const char *Script = R"(
import sys
from decimal import *
setcontext(Context(prec=400, Emax=MAX_EMAX, Emin=MIN_EMIN, rounding=ROUND_05UP,
                   traps=[InvalidOperation, DivisionByZero, Overflow]))
for line in sys.stdin:
    operation, mode, scale, a, b = line.split()
    a, b, unit = Decimal(a), Decimal(b), Decimal(1).scaleb(-int(scale))
    if operation == 'add': x = a + b
    elif operation == 'subtract': x = a - b
    elif operation == 'multiply': x = a * b
    elif operation == 'divide': x = (a / b).quantize(unit, rounding=mode)
    elif operation == 'quantize': x = a.quantize(unit, rounding=mode)
    elif operation == 'compare': x = a.compare(b)
    print(format(abs(x) if x.is_zero() else x, 'f'))
)";

constexpr const char *Operations[] = {"add",    "subtract", "multiply",
                                      "divide", "quantize", "compare"};
struct Mode {
    Rounding rounding;
    const char *python;
};
constexpr Mode Modes[] = {
    {Rounding::HalfEven, "ROUND_HALF_EVEN"},
    {Rounding::HalfUp, "ROUND_HALF_UP"},
    {Rounding::HalfDown, "ROUND_HALF_DOWN"},
    {Rounding::Down, "ROUND_DOWN"},
    {Rounding::Up, "ROUND_UP"},
    {Rounding::Floor, "ROUND_FLOOR"},
    {Rounding::Ceiling, "ROUND_CEILING"},
};

struct Case {
    std::size_t operation;
    std::size_t mode;
    int scale;
    std::string first;
    std::string second;
};

using Random = std::mt19937;

int between(Random &random, int least, int most)
{
    return std::uniform_int_distribution(least, most)(random);
}

/// Short numbers, numbers about 2^63, long numbers, ties; any scale up to 25.
std::string randomNumber(Random &random)
{
    static constexpr const char *Edges[] = {"9223372036854775807",
                                            "9223372036854775808",
                                            "4611686018427387904",
                                            "3037000500",
                                            "1000000000000000000",
                                            "5",
                                            "25",
                                            "0"};
    const int kind = between(random, 0, 9);
    std::string digits;
    if (kind == 0) {
        digits = Edges[between(random, 0, 7)];
    } else {
        const int length = kind < 6 ? between(random, 1, 9) : between(random, 10, 60);
        for (int at = 0; at < length; ++at)
            digits += static_cast<char>('0' + between(random, 0, 9));
        if (between(random, 0, 3) == 0)
            digits.back() = '5';
    }
    const auto scale = static_cast<std::size_t>(between(random, 0, kind < 6 ? 6 : 25));
    if (scale > 0) {
        if (digits.size() <= scale)
            digits.insert(0, scale + 1 - digits.size(), '0');
        digits.insert(digits.size() - scale, 1, '.');
    }
    return (between(random, 0, 2) == 0 ? "-" : "") + digits;
}

Case randomCase(Random &random)
{
    Case result{static_cast<std::size_t>(between(random, 0, 5)),
                static_cast<std::size_t>(between(random, 0, 6)), between(random, 0, 12),
                randomNumber(random), randomNumber(random)};
    const bool divides = Operations[result.operation] == std::string_view("divide");
    if (divides && between(random, 0, 1) == 0)
        result.second = std::to_string(1 << between(random, 0, 6)); // quotients that end in ties
    if (divides && Decimal::parse(result.second).value().isZero())
        result.second = "7";
    return result;
}

std::string ours(const Case &asked)
{
    const Decimal first = Decimal::parse(asked.first).value();
    const Decimal second = Decimal::parse(asked.second).value();
    const Rounding mode = Modes[asked.mode].rounding;
    switch (asked.operation) {
    case 0:
        return (first + second).text();
    case 1:
        return (first - second).text();
    case 2:
        return (first * second).text();
    case 3:
        return divide(first, second, asked.scale, mode).text();
    case 4:
        return first.rescaled(asked.scale, mode).text();
    default:
        return first < second ? "-1" : first > second ? "1" : "0";
    }
}

std::string lineOf(const Case &asked)
{
    return std::string(Operations[asked.operation]) + " " + Modes[asked.mode].python + " " +
           std::to_string(asked.scale) + " " + asked.first + " " + asked.second + "\n";
}

} // namespace

class PythonDecimalTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void hundredThousandCasesAgree();
};

void PythonDecimalTest::hundredThousandCasesAgree()
{
    constexpr int CaseCount = 100'000;
    const int fromOutside = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const auto seed = static_cast<Random::result_type>(fromOutside != 0 ? fromOutside : 4217);
    qDebug("FLARESTOCK_SEED=%u", static_cast<unsigned>(seed));
    Random random(seed);
    std::vector<Case> cases;
    QByteArray input;
    for (int at = 0; at < CaseCount; ++at) {
        cases.push_back(randomCase(random));
        input += QByteArray::fromStdString(lineOf(cases.back()));
    }

    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"),
                 {QStringLiteral("-c"), QString::fromLatin1(Script)});
    QVERIFY2(python.waitForStarted(), "Debian's python3 is needed");
    python.write(input);
    python.closeWriteChannel();
    QVERIFY(python.waitForFinished(120'000));
    QVERIFY2(python.exitCode() == 0, python.readAllStandardError().toStdString().c_str());
    const QList<QByteArray> answers = python.readAllStandardOutput().trimmed().split('\n');
    QCOMPARE(answers.size(), CaseCount);
    for (int at = 0; at < CaseCount; ++at) {
        const Case &asked = cases[static_cast<std::size_t>(at)];
        const std::string said = ours(asked);
        QVERIFY2(
            said == answers[at].toStdString(),
            (lineOf(asked) + "ours " + said + ", Python's " + answers[at].toStdString()).c_str());
    }
}

QTEST_APPLESS_MAIN(PythonDecimalTest)
#include "tst_decimal_agrees_with_python.moc"
