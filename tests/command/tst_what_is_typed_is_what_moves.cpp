// SPDX-License-Identifier: MIT
//
// `flarestock move`, as a shell runs it: what is typed is what moves, a repeated id moves nothing
// twice, and what cannot be is said in a sentence and changes nothing.

#include "tests/command/demo_copy.h"

#include <QRegularExpression>
#include <QTest>

using namespace flarestock::tests;

namespace {

constexpr const char *Id = "0190b3c4-5d6e-7f80-9123-456789abcdef";

} // namespace

class MoveCommand : public QObject {
    Q_OBJECT

private:
    DemoCopy m_demo;
    std::string m_shop;   ///< A fresh copy for each test.
    std::string m_withId; ///< One in which Id has moved an AD-8-10 from A3 to car-1.

    [[nodiscard]] Ran move(Words words) const
    {
        words.insert(words.begin(), "move");
        words.insert(words.end(), {"--shop", m_shop});
        return runFlarestock(words);
    }
    /// On hand of a part at a place; "-" where none lies there, several separated by a blank.
    [[nodiscard]] std::string onHand(const std::string &part, const std::string &place) const
    {
        std::string said;
        const auto lines = runFlarestock({"stock", "--shop", m_shop, "--find", part, "--json"})
                               .json()
                               .value(QStringLiteral("stock"))
                               .toArray();
        for (const QJsonValue &one : lines) {
            const QJsonObject line = one.toObject();
            if (line.value(QStringLiteral("part")).toString().toStdString() == part &&
                line.value(QStringLiteral("place")).toString().toStdString() == place)
                said += (said.empty() ? "" : " ") +
                        line.value(QStringLiteral("onHand")).toString().toStdString();
        }
        return said.empty() ? "-" : said;
    }
    [[nodiscard]] QJsonObject verified() const
    {
        return runFlarestock({"verify", m_shop, "--json"}).json();
    }

private Q_SLOTS:
    void initTestCase();
    void init() { m_shop = m_demo.copied(); }
    void hasTheShapeOfTheContract();
    void movesWhatIsTyped_data();
    void movesWhatIsTyped();
    void aRepeatedIdMovesNothingTwice();
    void aRepeatedIdIsKnownWhenThePiecesAreGone();
    void anIdIsForOneMovementOnly_data();
    void anIdIsForOneMovementOnly();
    void asksWhichWhereSeveralLieThere();
    void refusesAndChangesNothing_data();
    void refusesAndChangesNothing();
};

void MoveCommand::initTestCase()
{
    m_shop = m_withId = m_demo.copied();
    QCOMPARE(move({"AD-8-10", "1", "--from", "A3", "--to", "car-1", "--id", Id}).status, 0);
}

void MoveCommand::hasTheShapeOfTheContract()
{
    const Ran ran = move({"AD-8-10", "1", "--from", "A3", "--to", "car-1", "--json"});
    QCOMPARE(ran.status, 0);
    QCOMPARE(ran.err, std::string());
    const QJsonObject said = ran.json();
    QCOMPARE(keysOf(said), QStringList({QStringLiteral("already"), QStringLiteral("movement")}));
    QCOMPARE(said.value(QStringLiteral("already")), QJsonValue(false));
    // A UUID of version 7, variant 10 (RFC 9562, 5.7), in lower case.
    const QRegularExpression uuid(
        QStringLiteral("^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$"));
    const QString id = said.value(QStringLiteral("movement")).toString();
    QVERIFY2(uuid.match(id).hasMatch(), qPrintable(id));
    const Ran spoken = move({"ad-8-10", "1", "--from", "a3", "--to", "CAR-1", "--who", "Zoë"});
    QVERIFY2(spoken.out.starts_with("moved: AD-8-10 from A3 to car-1, movement "),
             spoken.out.c_str());
    QCOMPARE(onHand("AD-8-10", "A3"), std::string("-")); // Two lay there.
}

void MoveCommand::movesWhatIsTyped_data()
{
    QTest::addColumn<std::string>("quantity");
    QTest::addColumn<std::string>("left");
    const auto row = [](const char *quantity, const char *left) {
        QTest::newRow(quantity) << std::string(quantity) << std::string(left);
    };
    // 150 in of PT-8 lie there. 1 ft = 12 in, 1 in = 25.4 mm (16 CFR 500.19).
    row("5 ft 6 in", "84");
    row("66", "84");
    row("1676.4 mm", "84");
    row("1.6764 m", "84");
    row("1/64 in", "149.984375");
    row("12 ft 6 in", "-");
}

void MoveCommand::movesWhatIsTyped()
{
    QFETCH(std::string, quantity);
    QFETCH(std::string, left);
    const Ran ran = move({"PT-8", quantity, "--from", "SH-1", "--to", "trailer-4", "--json"});
    QVERIFY2(ran.status == 0, ran.err.c_str());
    QCOMPARE(onHand("PT-8", "SH-1"), left);
}

void MoveCommand::aRepeatedIdMovesNothingTwice()
{
    const Words words{"AD-8-10", "1", "--from", "A3", "--to", "car-1", "--id", Id, "--json"};
    for (int times = 0; times < 3; ++times) {
        const Ran ran = move(words);
        QCOMPARE(ran.status, 0);
        QCOMPARE(ran.json().value(QStringLiteral("already")), QJsonValue(times > 0));
        QCOMPARE(ran.json().value(QStringLiteral("movement")).toString(), QString::fromUtf8(Id));
        QCOMPARE(onHand("AD-8-10", "A3"), std::string("1"));
    }
    // Another clerk with other words about it, and the id in capitals: the same action.
    const Ran again = move({"ad-8-10", "1", "--from", "a3", "--to", "car-1", "--id",
                            "0190B3C4-5D6E-7F80-9123-456789ABCDEF", "--why", "build"});
    QCOMPARE(again.status, 0);
    QVERIFY2(again.out.starts_with("was moved already: "), again.out.c_str());
    QCOMPARE(onHand("AD-8-10", "A3"), std::string("1"));
    QCOMPARE(verified().value(QStringLiteral("movements")).toInt(),
             runFlarestock({"verify", m_demo.made(), "--json"})
                     .json()
                     .value(QStringLiteral("movements"))
                     .toInt() +
                 1);
}

void MoveCommand::aRepeatedIdIsKnownWhenThePiecesAreGone()
{
    // The last one leaves, with a lot that was not typed, and moves on.
    const Words pump{"EP-255", "1", "--from", "H5", "--to", "trailer-6", "--id", Id, "--json"};
    QCOMPARE(move(pump).json().value(QStringLiteral("already")), QJsonValue(false));
    QCOMPARE(onHand("EP-255", "H5"), std::string("-"));
    QCOMPARE(move(pump).json().value(QStringLiteral("already")), QJsonValue(true));
    const Ran on =
        move({"EP-255", "1", "--from", "trailer-6", "--to", "scrap", "--lot", "SN 2203"});
    QVERIFY2(on.status == 0, on.err.c_str());
    const Ran late = move(pump);
    QVERIFY2(late.status == 0, late.err.c_str());
    QCOMPARE(late.json().value(QStringLiteral("already")), QJsonValue(true));
    QCOMPARE(onHand("EP-255", "trailer-6"), std::string("-"));
    // Nor where others came in the meantime.
    const Ran other = move({"EP-255", "1", "--from", "H6", "--to", "H5"});
    QVERIFY2(other.status == 0, other.err.c_str());
    QCOMPARE(move(pump).json().value(QStringLiteral("already")), QJsonValue(true));
    QCOMPARE(onHand("EP-255", "H5"), std::string("1"));
    QCOMPARE(verified().value(QStringLiteral("whole")), QJsonValue(true));
}

void MoveCommand::anIdIsForOneMovementOnly_data()
{
    QTest::addColumn<QStringList>("words");
    const auto row = [](const char *name, const char *words) {
        QTest::newRow(name) << QString::fromUtf8(words).split(QLatin1Char('|'));
    };
    row("another quantity", "AD-8-10|2|--from|A3|--to|car-1");
    row("another place to go", "AD-8-10|1|--from|A3|--to|car-2");
    row("another part", "AD-8-8|1|--from|A3|--to|car-1");
    row("another lot", "AD-8-10|1|--from|A3|--to|car-1|--lot|L-1");
}

void MoveCommand::anIdIsForOneMovementOnly()
{
    QFETCH(QStringList, words);
    m_shop = m_withId;
    const QByteArray before = bytesOf(m_shop);
    Words typed;
    for (const QString &word : words)
        typed.push_back(word.toStdString());
    typed.insert(typed.end(), {"--id", Id, "--json"});
    const Ran ran = move(typed);
    QVERIFY2(ran.refusesInOneLine(), (ran.err + ran.out).c_str());
    QCOMPARE(ran.err, "movement " + std::string(Id) +
                          ": stands in the journal already and says something else. "
                          "Give this one an id of its own.\n");
    QVERIFY(bytesOf(m_shop) == before);
}

void MoveCommand::asksWhichWhereSeveralLieThere()
{
    // NB-10-B and NB-10-C lie on shelf 4; new hose ends lie beside a used one in E4.
    QCOMPARE(onHand("NB-10", "SH-4"), std::string("75 18"));
    const Ran which = move({"NB-10", "10", "--from", "SH-4", "--to", "car-1"});
    QVERIFY2(which.refusesInOneLine(), which.err.c_str());
    QCOMPARE(which.err, std::string("NB-10: lies at SH-4 as NB-10-B, new; NB-10-C, new. "
                                    "Say which: --lot, or --condition.\n"));
    QCOMPARE(move({"NB-10", "10", "--from", "SH-4", "--to", "car-1", "--lot", "NB-10-C"}).status,
             0);
    QCOMPARE(onHand("NB-10", "SH-4"), std::string("75 8"));
    QCOMPARE(move({"HE-8-90", "1", "--from", "E4", "--to", "car-1"}).status, 0);
    QCOMPARE(onHand("HE-8-90", "E4"), std::string("1 1"));
    QCOMPARE(move({"HE-8-90", "1", "--from", "E4", "--to", "car-1", "--condition", "used-and-good"})
                 .status,
             0);
    QCOMPARE(onHand("HE-8-90", "E4"), std::string("1"));
}

void MoveCommand::refusesAndChangesNothing_data()
{
    QTest::addColumn<QStringList>("words");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *name, const char *words, const char *says) {
        QTest::newRow(name) << QString::fromUtf8(words).split(QLatin1Char('|'))
                            << QString::fromUtf8(says);
    };
    row("a slip in the part number", "AD-8-100|1|--from|A3|--to|car-1",
        "AD-8-100: is no part of the catalogue. Perhaps AD-8-10 is meant.\n");
    row("a letter left out", "PF-100-1|1|--from|A3|--to|car-1", "Perhaps PF-100-10 is meant.\n");
    row("a part of elsewhere", "velvet-rope|1|--from|A3|--to|car-1",
        "velvet-rope: is no part of the catalogue. Check the part number.\n");
    row("a slip in the place", "AD-8-10|1|--from|A3|--to|trialer-2",
        "trialer-2: is no place of this shop. Perhaps trailer-2 is meant.\n");
    row("a place of elsewhere", "AD-8-10|1|--from|the moon|--to|A3",
        "the moon: is no place of this shop. Look them up: flarestock place.\n");
    row("more than there is", "AD-8-10|3|--from|A3|--to|car-1",
        "movement of AD-8-10 from A3 to car-1: takes more than the place holds. ");
    row("to where it lies", "AD-8-10|1|--from|A3|--to|a3", "goes from a place to the same place. ");
    row("nothing", "AD-8-10|0|--from|A3|--to|car-1", "moves no quantity, or less than nothing. ");
    row("half a piece", "AD-8-10|1.5|--from|A3|--to|car-1", "is not a whole number of pieces. ");
    row("pieces as a length", "AD-8-10|1 in|--from|A3|--to|car-1", "in");
    row("hose as pieces", "PT-8|1 each|--from|SH-1|--to|car-1", "each");
    row("a number in words", "AD-8-10|one|--from|A3|--to|car-1", "\"one\" is not a number. ");
    row("a comma in a number", "PT-8|1,5|--from|SH-1|--to|car-1", "\",\" is not a unit of stock. ");
    row("no id", "AD-8-10|1|--from|A3|--to|car-1|--id|7", "7: is not an id. ");
    row("no condition", "AD-8-10|1|--from|A3|--to|car-1|--condition|shiny",
        "shiny: is not a condition. Write one of: new, used and good, ");
    row("no place to go", "AD-8-10|1|--from|A3", "--to");
}

void MoveCommand::refusesAndChangesNothing()
{
    QFETCH(QStringList, words);
    QFETCH(QString, says);
    const QByteArray before = bytesOf(m_shop);
    Words typed;
    for (const QString &word : words)
        typed.push_back(word.toStdString());
    const Ran ran = move(typed);
    QVERIFY2(ran.refusesInOneLine(), (ran.err + ran.out).c_str());
    QVERIFY2(ran.err.find(says.toStdString()) != std::string::npos, ran.err.c_str());
    QVERIFY(bytesOf(m_shop) == before); // Nobody has it open now, so that it is one file.
}

QTEST_APPLESS_MAIN(MoveCommand)
#include "tst_what_is_typed_is_what_moves.moc"
