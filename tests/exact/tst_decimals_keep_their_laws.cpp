// SPDX-License-Identifier: MIT
//
// Laws of decimals, fractions and shares over random numbers (RapidCheck prints its seed; another
// is given by RC_PARAMS="seed=…").

#include "model/exact/money.h"

#include <rapidcheck.h>

#include <QTest>

using namespace flarestock;

namespace {

/// Numbers of up to 40 digits with up to 12 decimals, about as often small as large.
rc::Gen<Decimal> anyDecimal()
{
    const auto digits = rc::gen::container<std::string>(rc::gen::inRange('0', char('9' + 1)));
    return rc::gen::map(rc::gen::tuple(rc::gen::arbitrary<bool>(), rc::gen::resize(28, digits),
                                       rc::gen::resize(12, digits)),
                        [](const std::tuple<bool, std::string, std::string> &parts) {
                            const auto &[negative, whole, decimals] = parts;
                            return Decimal::parse((negative ? "-" : "") +
                                                  (whole.empty() ? "0" : whole) +
                                                  (decimals.empty() ? "" : "." + decimals))
                                .value();
                        });
}

rc::Gen<Rounding> anyRounding()
{
    return rc::gen::element(Rounding::HalfEven, Rounding::HalfUp, Rounding::HalfDown,
                            Rounding::Down, Rounding::Up, Rounding::Floor, Rounding::Ceiling);
}

template <class Law>
void holds(const char *law, const Law &checked)
{
    QVERIFY2(rc::check(law, checked), law);
}

} // namespace

class DecimalLawsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void printingThenReadingIsIdentity();
    void additionAndMultiplicationKeepTheirLaws();
    void comparisonIsAnOrderOfTheNumbers();
    void roundingStaysWithinOneUnitAndKnowsItsSide();
    void divisionIsUndoneByMultiplication();
    void fractionsAreExact();
    void sharesAddUpToTheTotal();
};

void DecimalLawsTest::printingThenReadingIsIdentity()
{
    holds("parse(text(a)) is a, scale and all", [] {
        const Decimal a = *anyDecimal();
        const Decimal read = Decimal::parse(a.text()).value();
        RC_ASSERT(read == a);
        RC_ASSERT(read.sameScale(a));
        RC_ASSERT(read.text() == a.text());
    });
}

void DecimalLawsTest::additionAndMultiplicationKeepTheirLaws()
{
    holds("sums and products", [] {
        const Decimal a = *anyDecimal();
        const Decimal b = *anyDecimal();
        const Decimal c = *anyDecimal();
        RC_ASSERT((a + b).text() == (b + a).text());
        RC_ASSERT(((a + b) + c).text() == (a + (b + c)).text());
        RC_ASSERT((a * b).text() == (b * a).text());
        RC_ASSERT(((a * b) * c).text() == (a * (b * c)).text());
        RC_ASSERT(a * (b + c) == a * b + a * c);
        RC_ASSERT((a + b) - b == a);
        RC_ASSERT((a - b).text() == (a + -b).text());
        RC_ASSERT((a + b).scale() == std::max(a.scale(), b.scale()));
        RC_ASSERT((a * b).scale() == a.scale() + b.scale());
        RC_ASSERT((a - a).isZero());
    });
}

void DecimalLawsTest::comparisonIsAnOrderOfTheNumbers()
{
    holds("order, equality and hash", [] {
        const Decimal a = *anyDecimal();
        const Decimal b = *rc::gen::oneOf(anyDecimal(), rc::gen::just(a * Decimal::scaled(10, 1)));
        RC_ASSERT((a < b) == ((a - b).sign() < 0));
        RC_ASSERT((a == b) == (a - b).isZero());
        RC_ASSERT((a > b) == (b < a));
        RC_ASSERT(!(a == b) || a.hash() == b.hash());
        const Decimal longer = a.rescaled(a.scale() + 7, Rounding::Down);
        RC_ASSERT(longer == a);
        RC_ASSERT(longer.hash() == a.hash());
        RC_ASSERT(a.stripped() == a);
    });
}

void DecimalLawsTest::roundingStaysWithinOneUnitAndKnowsItsSide()
{
    holds("rounding", [] {
        const Decimal a = *anyDecimal();
        const auto scale = *rc::gen::inRange<std::int32_t>(0, 15);
        const Rounding mode = *anyRounding();
        const Decimal rounded = a.rescaled(scale, mode);
        RC_ASSERT(rounded.scale() == scale);
        RC_ASSERT((rounded - a).abs() < Decimal::scaled(1, scale));
        RC_ASSERT(rounded.rescaled(scale, *anyRounding()).text() == rounded.text());
        RC_ASSERT(a.rescaledExact(scale).has_value() == (rounded == a));
        RC_ASSERT(a.rescaled(scale, Rounding::Floor) <= a);
        RC_ASSERT(a.rescaled(scale, Rounding::Ceiling) >= a);
        RC_ASSERT(a.rescaled(scale, Rounding::Down).abs() <= a.abs());
        RC_ASSERT(a.rescaled(scale, Rounding::Up).abs() >= a.abs());
        RC_ASSERT((-a).rescaled(scale, Rounding::Floor) == -a.rescaled(scale, Rounding::Ceiling));
        RC_ASSERT((-a).rescaled(scale, Rounding::HalfEven) ==
                  -a.rescaled(scale, Rounding::HalfEven));
    });
}

void DecimalLawsTest::divisionIsUndoneByMultiplication()
{
    holds("division", [] {
        const Decimal a = *anyDecimal();
        const Decimal b =
            *rc::gen::suchThat(anyDecimal(), [](const Decimal &each) { return !each.isZero(); });
        const Rounding mode = *anyRounding();
        const auto scale = std::max(a.scale() - b.scale(), 0) + a.scale() + b.scale();
        RC_ASSERT(divide(a * b, b, scale, mode) == a);
        const Decimal whole = divide(a, b, 0, Rounding::Down);
        RC_ASSERT(whole * b + remainder(a, b) == a);
        RC_ASSERT(remainder(a, b).abs() < b.abs());
    });
}

void DecimalLawsTest::fractionsAreExact()
{
    holds("fractions", [] {
        const auto nonZero =
            rc::gen::suchThat(anyDecimal(), [](const Decimal &each) { return !each.isZero(); });
        const Decimal a = *anyDecimal();
        const Decimal b = *nonZero;
        const Decimal c = *nonZero;
        const Rational quotient(a, b);
        RC_ASSERT(quotient.denominator().sign() > 0);
        RC_ASSERT(quotient.times(b) == Rational(a));
        RC_ASSERT(Rational(a * c, b * c) == quotient);
        RC_ASSERT(quotient.over(Rational(c)).times(c) == quotient);
        RC_ASSERT(quotient.plus(Rational(-a, b)).sign() == 0);
        RC_ASSERT((quotient < Rational(c)) == (b.sign() > 0 ? a < b * c : a > b * c));
        RC_ASSERT(Rational(a).exactDecimal(20) == a);
        RC_ASSERT(quotient.toDecimal(9, Rounding::HalfEven) == divide(a, b, 9, Rounding::HalfEven));
    });
}

void DecimalLawsTest::sharesAddUpToTheTotal()
{
    holds("shares", [] {
        const auto code = *rc::gen::element<std::string>("EUR", "JPY", "KWD", "CLF");
        const Currency currency = Currency::parse(code).value();
        const Money total{Decimal::scaled(*rc::gen::inRange<std::int64_t>(-5'000'000, 5'000'000),
                                          currency.minorDigits()),
                          currency};
        auto weights = *rc::gen::container<std::vector<Decimal>>(
            rc::gen::map(anyDecimal(), [](const Decimal &each) { return each.abs(); }));
        weights.push_back(Decimal(1)); // not all zero
        Decimal all;
        for (const Decimal &weight : weights)
            all += weight;

        const auto parts = shares(total, weights);
        RC_ASSERT(parts.size() == weights.size());
        Decimal sum;
        const Decimal unit = Decimal::scaled(1, currency.minorDigits());
        for (std::size_t at = 0; at < parts.size(); ++at) {
            sum += parts[at].amount;
            // Within one minor unit of the exact share.
            const Decimal off = parts[at].amount * all - total.amount * weights[at];
            RC_ASSERT(off.abs() < unit * all);
        }
        RC_ASSERT(sum == total.amount);
    });
}

QTEST_APPLESS_MAIN(DecimalLawsTest)
#include "tst_decimals_keep_their_laws.moc"
