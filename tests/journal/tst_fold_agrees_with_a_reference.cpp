// SPDX-License-Identifier: MIT
//
// The fold against a reference of another hand: 100,000 random actions, among them every kind that
// is refused, judged, valued and added up again by Python with unlimited integers and exact
// fractions. The rules that it follows are those that ledger.h promises.

#include "tests/journal/few_places.h"

#include <QProcess>
#include <QTest>

#include <limits>
#include <random>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

/// Reads one action a line: number, part, from, to, lot, condition, quantity, value, the number of
/// the action that it takes back ("-": none), who says the value (ledger or hand), and the ledger's
/// verdict. Lines that begin with "=" are balances. Prints what differs, then a count.
constexpr const char *Reference = R"(
import sys
from fractions import Fraction
stock, source = {'A1', 'SH-1', 'trailer-2'}, {'supplier', 'opening'}
places = stock | source | {'car-1', 'scrap'}
held, past, gone, agreed = {}, {}, set(), 0
fits = lambda n: -2**63 <= n < 2**63
for line in sys.stdin:
    words = line.rstrip('\n').split('\t')
    if words[0] == '=':
        if held.pop(tuple(words[1:5]), (0, 0)) != (int(words[5]), int(words[6])): print(line)
        continue
    number, part, a, b, lot, condition, quantity, value, back, by, verdict = words
    quantity, value, verdict = int(quantity), int(value), verdict or 'applied'
    out, into = (part, a, lot, condition), (part, b, lot, condition)
    (q, v), (q2, v2), was = held.get(out, (0, 0)), held.get(into, (0, 0)), past.get(back)
    if by == 'ledger' and a in places and quantity > 0:
        whole = was and (a not in stock or (q, v) == was[2:] or (q > was[2] and v >= was[3]))
        right = was[3] if whole else value if a in source else 0 if q <= 0 or v <= 0 else \
            v if quantity >= q else round(Fraction(v * quantity, q))
        if right != value: print(line, 'is worth', right)
    only = quantity == 0 and value > 0 and (a in source or back != '-')
    said = ('names no part' if not part else
        'names a place that the shop does not have' if not {a, b} <= places else
        'goes from a place to the same place' if a == b else
        'moves no quantity, or less than nothing' if (quantity <= 0 and not only) or value < 0 else
        'takes back a movement that is not in the journal' if back != '-' and not was else
        'does not take back exactly what was moved, the same way'
            if was and ((into, out, quantity) != was[:3] or only and value != was[3]) else
        'takes back a movement that was taken back before' if was and back in gone else
        'takes more than the place holds' if a in stock and quantity > q else
        'takes another value along than the place carries'
            if a in stock and (value > v or (quantity == q and value != v)) or
            only and b in stock and q2 <= 0 else
        'is larger than a journal can count'
            if not all(map(fits, (q - quantity, v - value, q2 + quantity, v2 + value))) else
        'applied')
    if said != verdict: print(line, 'but', said)
    if said == 'applied':
        held[out], held[into] = (q - quantity, v - value), (q2 + quantity, v2 + value)
        past[number] = (out, into, quantity, value)
        if was: gone.add(back)
    agreed += said == verdict
for key, balance in held.items():
    if balance != (0, 0): print('not told:', key, balance)
print(agreed)
)";

constexpr int Actions = 100'000;

} // namespace

class FoldAgreesWithAReference : public QObject {
    Q_OBJECT

private:
    std::mt19937_64 m_random;
    Ledger m_ledger{fewPlaces()};
    std::vector<std::pair<std::uint32_t, Movement>> m_applied;
    QByteArray m_told;

    std::int64_t upTo(std::int64_t most)
    {
        return static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(most + 1));
    }
    bool oneIn(int many) { return upTo(many - 1) == 0; }
    template <class T, std::size_t N>
    const T &oneOf(const T (&all)[N])
    {
        return all[static_cast<std::size_t>(upTo(static_cast<std::int64_t>(N) - 1))];
    }
    Movement anyMovement();
    Movement anyTakingBack(std::string &number);
    std::int64_t anyQuantity(const Movement &movement);
    void tell(const QStringList &words);

private Q_SLOTS:
    void initTestCase();
    void overHundredThousandActions();
};

void FoldAgreesWithAReference::initTestCase()
{
    bool given = false;
    quint64 seed = qEnvironmentVariable("FLARESTOCK_SEED").toULongLong(&given);
    if (!given)
        seed = 20261127;
    qInfo("FLARESTOCK_SEED=%llu", seed);
    m_random.seed(seed);
}

std::int64_t FoldAgreesWithAReference::anyQuantity(const Movement &movement)
{
    if (oneIn(60))
        return -upTo(3);
    const std::int64_t held = m_ledger.balance(source(movement)).quantity;
    if (held > 0 && oneIn(4))
        return held;                         // The last piece.
    if (movement.part == "WIRE" && oneIn(2)) // Where 64 bits end.
        return std::numeric_limits<std::int64_t>::max() - upTo(2) -
               oneIn(2) * (std::int64_t{1} << 62);
    return 1 + upTo(8);
}

Movement FoldAgreesWithAReference::anyMovement()
{
    static const std::string places[] = {"A1",    "SH-1",     "trailer-2", "A1",      "car-1",
                                         "scrap", "supplier", "opening",   "supplier"};
    static const std::string parts[] = {"AD-8-10", "HS-8", "EP-460", "RG-906", "WIRE"};
    static const std::string lots[] = {"", "", "", "L-1"};
    static const PieceCondition conditions[] = {PieceCondition::New, PieceCondition::New,
                                                PieceCondition::New, PieceCondition::UsedAndGood,
                                                PieceCondition::ToBeChecked};
    Movement movement;
    movement.part = oneIn(200) ? "" : oneOf(parts);
    movement.from = oneIn(200) ? "B9" : oneOf(places);
    movement.to = oneIn(200) ? "B9" : oneOf(places);
    movement.lot = oneOf(lots);
    movement.condition = oneOf(conditions);
    movement.quantity = anyQuantity(movement);
    movement.value = oneIn(3) ? upTo(9) : upTo(100'000'000);
    if (movement.part == "WIRE" && oneIn(8))
        movement.value = std::numeric_limits<std::int64_t>::max() - upTo(1);
    if (oneIn(200))
        movement.value = -1;
    return movement;
}

/// Most of them take back exactly; `number` is the action's that is meant.
Movement FoldAgreesWithAReference::anyTakingBack(std::string &number)
{
    // Rather one of late, whose pieces may still be there.
    const auto reach = static_cast<std::int64_t>(m_applied.size()) - 1;
    const auto &[past, movement] =
        m_applied[static_cast<std::size_t>(reach - upTo(std::min<std::int64_t>(reach, 40)))];
    number = std::to_string(past);
    Movement back = takenBack(movement, 0);
    if (oneIn(6) && back.quantity < std::numeric_limits<std::int64_t>::max())
        back.quantity += 1;
    if (oneIn(12))
        back.to = "SH-1";
    if (oneIn(12))
        back.lot = "L-1";
    if (oneIn(12)) {
        back.reverses = idNumber(Actions + 1);
        number = "unknown";
    }
    return back;
}

void FoldAgreesWithAReference::tell(const QStringList &words)
{
    m_told += words.join(QLatin1Char('\t')).toUtf8() + '\n';
}

void FoldAgreesWithAReference::overHundredThousandActions()
{
    std::map<Refusal, int> refusals;
    const auto q = [](const std::string &text) { return QString::fromStdString(text); };
    for (std::uint32_t number = 0; number < Actions; ++number) {
        std::string back = "-";
        Movement movement = !m_applied.empty() && oneIn(5) ? anyTakingBack(back) : anyMovement();
        movement.id = idNumber(number);
        // One in eight brings a value of its own, as a file of another hand might.
        const bool byHand = oneIn(8);
        if (byHand && movement.reverses)
            movement.value = upTo(1000);
        const auto refused = byHand ? m_ledger.apply(movement) : carriedOut(m_ledger, movement);
        tell({QString::number(number), q(movement.part), q(movement.from), q(movement.to),
              q(movement.lot), QString::number(static_cast<int>(movement.condition)),
              QString::number(movement.quantity), QString::number(movement.value), q(back),
              byHand ? QStringLiteral("hand") : QStringLiteral("ledger"),
              refused ? q(std::string(text(*refused))) : QString()});
        if (refused)
            ++refusals[*refused];
        else
            m_applied.emplace_back(number, movement);
    }
    for (const auto &[key, held] : m_ledger.balances())
        tell({QStringLiteral("="), q(key.part), q(key.place), q(key.lot),
              QString::number(static_cast<int>(key.condition)), QString::number(held.quantity),
              QString::number(held.value)});

    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"),
                 {QStringLiteral("-c"), QString::fromUtf8(Reference)});
    QVERIFY(python.waitForStarted());
    python.write(m_told);
    python.closeWriteChannel();
    QVERIFY(python.waitForFinished(120'000));
    const QByteArray said = python.readAllStandardOutput() + python.readAllStandardError();
    QVERIFY2(said == QByteArray::number(Actions) + '\n', said.left(2000).constData());

    QVERIFY(m_applied.size() > 20'000);
    QVERIFY(!m_ledger.balances().empty());
    for (int each = 0; each <= static_cast<int>(Refusal::Overflow); ++each) {
        const auto refusal = static_cast<Refusal>(each);
        qInfo("%6d %s", refusals[refusal], std::string(text(refusal)).c_str());
        QVERIFY2(refusals[refusal] >= 50, std::string(text(refusal)).c_str());
    }
}

QTEST_APPLESS_MAIN(FoldAgreesWithAReference)
#include "tst_fold_agrees_with_a_reference.moc"
