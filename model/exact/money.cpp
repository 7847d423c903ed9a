// SPDX-License-Identifier: MIT
//
// ISO 4217, the active codes by their number of minor digits, as the list stood in the summer of
// 2025 (read in a public copy of the maintenance agency's table). Funds codes are listed with the
// rest; metals, units of account and the test code have no minor digits there and are left out.

#include "model/exact/money.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <numeric>

namespace flarestock {

namespace {

struct CodesOfDigits {
    std::int32_t digits;
    std::string_view codes; ///< Three letters each, one blank between, ascending.
};

constexpr std::array<CodesOfDigits, 4> Iso4217{{
    {0, "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF"},
    {2, "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP "
        "BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR "
        "FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW "
        "KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN "
        "NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD "
        "SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS "
        "VED VES WST XCD XCG YER ZAR ZMW ZWG"},
    {3, "BHD IQD JOD KWD LYD OMR TND"},
    {4, "CLF UYW"},
}};

bool listsCode(std::string_view codes, std::string_view code)
{
    for (std::size_t at = 0; at < codes.size(); at += 4) {
        if (codes.substr(at, 3) == code)
            return true;
    }
    return false;
}

} // namespace

Result<Currency> Currency::parse(std::string_view code)
{
    if (code.size() == 3) {
        for (const auto &[digits, codes] : Iso4217) {
            if (!listsCode(codes, code))
                continue;
            Currency currency;
            std::copy(code.begin(), code.end(), currency.m_code.begin());
            currency.m_minorDigits = digits;
            return currency;
        }
    }
    return problem("", quotedStart(code) + " is not a currency of ISO 4217",
                   "Write its three capital letters, such as EUR.");
}

Money Money::toMinorDigits(Rounding mode) const
{
    return {amount.rescaled(currency.minorDigits(), mode), currency};
}

std::string Money::text() const
{
    return amount.text() + " " + std::string(currency.code());
}

Money operator+(const Money &left, const Money &right)
{
    assert(left.currency == right.currency);
    return {left.amount + right.amount, left.currency};
}

Money operator-(const Money &left, const Money &right)
{
    assert(left.currency == right.currency);
    return {left.amount - right.amount, left.currency};
}

std::vector<Money> shares(const Money &total, const std::vector<Decimal> &weights)
{
    assert(std::all_of(weights.begin(), weights.end(),
                       [](const Decimal &weight) { return weight.sign() >= 0; }));
    const Decimal allWeights = std::accumulate(weights.begin(), weights.end(), Decimal());
    assert(allWeights.sign() > 0);
    const std::int32_t digits = total.currency.minorDigits();
    const Decimal absolute = total.amount.abs().rescaled(digits, Rounding::Down);
    assert(absolute == total.amount.abs());

    // Each share cut to whole minor units, and what was cut of it, all over the same divisor.
    std::vector<Decimal> amounts;
    std::vector<Decimal> cut;
    for (const Decimal &weight : weights) {
        amounts.push_back(divide(absolute * weight, allWeights, digits, Rounding::Down));
        cut.push_back(absolute * weight - amounts.back() * allWeights);
    }
    std::vector<std::size_t> byCut(weights.size());
    std::iota(byCut.begin(), byCut.end(), std::size_t{0});
    std::stable_sort(byCut.begin(), byCut.end(), [&cut](std::size_t left, std::size_t right) {
        return cut[left] > cut[right];
    });
    const Decimal minorUnit = Decimal::scaled(1, digits);
    Decimal left = std::accumulate(amounts.begin(), amounts.end(), absolute, std::minus<>());
    for (auto next = byCut.begin(); left.sign() > 0; ++next, left -= minorUnit)
        amounts[*next] += minorUnit;

    std::vector<Money> result;
    result.reserve(amounts.size());
    for (const Decimal &amount : amounts)
        result.push_back({total.amount.sign() < 0 ? -amount : amount, total.currency});
    return result;
}

} // namespace flarestock
