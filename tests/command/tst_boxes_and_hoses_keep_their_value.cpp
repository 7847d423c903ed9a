// SPDX-License-Identifier: MIT
//
// What goes onto the bench comes off it with all its value: a box that is opened, a hose that is
// made up. Shares are worked out here by hand from the demo's offers; the demo shop is invented.

#include "tests/command/changed_shop.h"

#include <QTest>

using namespace flarestock::tests;

namespace {

constexpr const char *Id = "0190b3c4-5d6e-7f80-9123-456789abcdef";

std::int64_t sumOf(const QJsonArray &pieces)
{
    std::int64_t sum = 0;
    for (const QJsonValue &piece : pieces)
        sum += microsOf(textOf(piece, "value"));
    return sum;
}

} // namespace

class BoxesAndHoses : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }
    [[nodiscard]] Ran json(const Words &words) const { return m_shop.json(words); }
    [[nodiscard]] Ran makeUp(Words more) const
    {
        Words words{"make-up", "PT-6",  "22 1/2 in", "--start", "HE-6", "--end",
                    "HE-6-90", "--tag", "L-17",      "--to",    "SH-4"};
        words.insert(words.end(), more.begin(), more.end());
        return json(words);
    }
    /// A straight hose of ends and hose that came in for it.
    void makeStraight(const std::string &cut, const std::string &number) const
    {
        const std::string coil = "COIL-" + number;
        for (const Words &in : {Words{"PT-6", cut + " in", "--to", "SH-1", "--lot", coil},
                                Words{"HE-6", "2", "--to", "E3"}}) {
            Words words{"receive", "--from", "supplier-TCF", "--cost", "18"};
            words.insert(words.end(), in.begin(), in.end());
            QCOMPARE(run(words).status, 0);
        }
        Words words{"make-up", "PT-6",  cut + " in", "--start",     "HE-6",
                    "--end",   "HE-6",  "--tag",     "T-" + number, "--to",
                    "SH-4",    "--lot", coil,        "--kerf",      "0 in"};
        const Words tested = proof("passed");
        words.insert(words.end(), tested.begin(), tested.end());
        const Ran made = run(words);
        QVERIFY2(made.status == 0, made.err.c_str());
    }
    [[nodiscard]] static Words proof(const char *result)
    {
        return {"--proof-pressure", "2000 psi", "--proof-medium", "water",
                "--proof",          result,     "--tested-by",    "foreman"};
    }

private Q_SLOTS:
    void init() { m_shop.renew(); }
    void aBoxYieldsWhatIsThereAndItsWholeValue();
    void aCostThatIsStatedIsKept();
    void aPieceLeftOverComesOutOfTheCar();
    void aBoxIsTakenBackAsOneAction();
    void aHoseHoldsTheValueOfWhatItIsMadeOf();
    void aHoseIsFoundMovedIssuedAndTakenBack();
    void aHoseIsFreeOnlyWithAProofTestThatPassed();
    void aRunThatSuchAHoseSuitsIsSaid();
    void whatCannotBeMadeIsRefused();
};

void BoxesAndHoses::aBoxYieldsWhatIsThereAndItsWholeValue()
{
    const auto opened = json({"open", "EP-460", "--from", "H5", "--to", "G4", "--id", Id});
    QVERIFY2(opened.status == 0, opened.err.c_str());
    const auto pieces = arrayOf(opened, "pieces");
    QCOMPARE(arrayOf(opened, "missing"), (QJsonArray{QStringLiteral("BK-460")}));
    QCOMPARE(pieces.size(), 2); // Its bracket was found missing.
    const auto clamps = objectWith(pieces, "part", "CL-T60");
    const auto pump = objectWith(pieces, "part", "EP-460");
    QCOMPARE(textOf(clamps, "quantity"), std::string("2"));
    QCOMPARE(sumOf(pieces), 196'400'000);
    // Two clamps at 3.45 and the pump at 214.50, of 196.40; downwards, the pump takes the rest.
    QCOMPARE(microsOf(textOf(clamps, "value")), 196'400'000LL * 690 / (690 + 21'450));
    QCOMPARE(textOf(pump, "lot"), std::string("SN 4417")); // A serial stays what it is.
    const auto again = json({"open", "EP-460", "--from", "H5", "--to", "G4", "--id", Id});
    QVERIFY(again.json().value(QStringLiteral("already")).toBool());
    // Nothing is in its box any more.
    QVERIFY(run({"open", "EP-460", "--from", "H5"}).refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

void BoxesAndHoses::aCostThatIsStatedIsKept()
{
    const auto opened = json({"open", "EP-255", "--from", "H5", "--to", "G4", "--lot", "SN 2203",
                              "--cost", "BK-255=4.125"});
    QVERIFY2(opened.status == 0, opened.err.c_str());
    const auto pieces = arrayOf(opened, "pieces"); // Of 139.00.
    QCOMPARE(textOf(objectWith(pieces, "part", "BK-255"), "value"), std::string("4.125000"));
    QCOMPARE(textOf(objectWith(pieces, "part", "EP-255"), "value"), std::string("134.875000"));
    m_shop.renew();
    const auto shared = json({"open", "EP-255", "--from", "H5", "--lot", "SN 2203", "--price",
                              "BK-255=37.00", "--price", "EP-255=111.00"});
    QCOMPARE(textOf(objectWith(arrayOf(shared, "pieces"), "part", "BK-255"), "value"),
             std::string("34.750000")); // A quarter.
    m_shop.renew();
    QVERIFY(run({"open", "EP-255", "--from", "H5", "--lot", "SN 2203", "--cost", "BK-255=139.01"})
                .refusesInOneLine());
    const auto kit = json({"open", "EP-255", "--from", "H5", "--lot", "SN 2203", "--nothing-left"});
    QCOMPARE(arrayOf(kit, "pieces").size(), 1);
    QCOMPARE(sumOf(arrayOf(kit, "pieces")), 139'000'000);
    QVERIFY(m_shop.isWhole());
}

void BoxesAndHoses::aPieceLeftOverComesOutOfTheCar()
{
    QCOMPARE(
        run({"move", "EP-255", "1", "--from", "H5", "--to", "car-1", "--lot", "SN 2203"}).status,
        0);
    const auto before = m_shop.stockOf("BK-255", "onHand");
    const auto left = json({"open", "EP-255", "--from", "car-1", "--to", "K8", "--only", "BK-255",
                            "--cost", "BK-255=9.50"});
    QVERIFY2(left.status == 0, left.err.c_str());
    QCOMPARE(m_shop.stockOf("BK-255", "onHand"), before + "K8=1 ");
    const auto now = arrayOf(json({"history", "EP-255", "--place", "car-1"}), "now");
    QCOMPARE(textOf(now.at(0), "value"), std::string("129.500000"));
    QVERIFY(run({"open", "EP-255", "--from", "car-1", "--only", "BK-255"}).refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

void BoxesAndHoses::aBoxIsTakenBackAsOneAction()
{
    const auto before = m_shop.stock();
    const Words open{"open", "EP-255", "--from", "H5", "--to", "G4", "--lot", "SN 2203"};
    const auto opened = json(open);
    QVERIFY(m_shop.stock() != before);
    const auto back = run({"take-back", textOf(opened.json(), "movement")});
    QVERIFY2(back.status == 0, back.err.c_str());
    QCOMPARE(m_shop.stock(), before);
    QCOMPARE(json(open).status, 0); // It can be opened anew.
    QVERIFY(m_shop.isWhole());
}

void BoxesAndHoses::aHoseHoldsTheValueOfWhatItIsMadeOf()
{
    const auto made = makeUp(proof("passed"));
    QVERIFY2(made.status == 0, made.err.c_str());
    // 22.5 of the 40 in that cost 25.42 are 14.298750; one of nine ends for 81.19 is 9.021111; the
    // elbow in E3 cost 17.29.
    QCOMPARE(textOf(made.json(), "value"), std::string("40.609861"));
    // 22.5 in cut, and the ends add 0.75 in and 1.4 in.
    QCOMPARE(textOf(made.json(), "betweenSeats"), std::string("24.65"));
    const auto line = objectWith(m_shop.stock({"--find", "l-17"}), "part", "L-17");
    QCOMPARE(textOf(line, "onHand"), std::string("1"));
    QCOMPARE(textOf(line, "free"), std::string("1"));
    const auto table = run({"stock", "--find", "HE-6-90 seats"});
    QVERIFY2(table.out.find("proof-tested 2000 psi") != std::string::npos, table.out.c_str());
    // 40 in less 22 1/2 in less a kerf of 1/16 in.
    QCOMPARE(textOf(objectWith(m_shop.stock(), "lot", "PT-6-C"), "onHand"), std::string("17.4375"));
    QVERIFY(makeUp({}).refusesInOneLine()); // The tag is given away.
    QVERIFY(m_shop.isWhole());
}

void BoxesAndHoses::aHoseIsFoundMovedIssuedAndTakenBack()
{
    const auto before = m_shop.stock();
    Words words = proof("passed");
    words.insert(words.end(), {"--id", Id});
    QCOMPARE(makeUp(words).status, 0);
    QVERIFY(makeUp(words).json().value(QStringLiteral("already")).toBool());
    QCOMPARE(run({"take-back", Id}).status, 0);
    QCOMPARE(m_shop.stock(), before);
    QVERIFY(run({"move", "L-17", "1", "--from", "SH-4", "--to", "trailer-4"}).refusesInOneLine());
    QCOMPARE(makeUp(proof("passed")).status, 0); // The tag is free again.
    QCOMPARE(run({"move", "L-17", "1", "--from", "SH-4", "--to", "trailer-4"}).status, 0);
    QCOMPARE(run({"count", "l-17", "1", "--place", "trailer-4"}).status, 0);
    QCOMPARE(run({"reserve", "coupe-fuel", "L-17"}).status, 0);
    const auto issued = json({"issue", "coupe-fuel", "--part", "L-17"});
    QVERIFY2(issued.status == 0, issued.err.c_str());
    const auto history = json({"history", "L-17"});
    QCOMPARE(arrayOf(history, "movements").size(), 5); // Made, taken back, made, moved, issued.
    const auto now = arrayOf(history, "now");
    QCOMPARE(textOf(now.at(0), "place"), std::string("car-2"));
    QCOMPARE(textOf(now.at(0), "value"), std::string("40.609861"));
    QCOMPARE(arrayOf(json({"history", "--lot", "L-17"}), "movements").size(), 5);
    QVERIFY(m_shop.isWhole());
}

void BoxesAndHoses::aHoseIsFreeOnlyWithAProofTestThatPassed()
{
    const auto condition = [this](const Words &more) {
        m_shop.renew();
        const auto made = makeUp(more);
        const auto line = objectWith(m_shop.stock(), "part", "L-17");
        return textOf(made.json(), "condition") + " " + textOf(line, "free");
    };
    QCOMPARE(condition({}), std::string("to be checked 0"));
    QCOMPARE(condition(proof("failed")), std::string("not to be used 0"));
    Words aged = proof("passed");
    aged.insert(aged.end(), {"--use-by", "2020-01-31"});
    QCOMPARE(condition(aged), std::string("new 0"));
    const auto line = objectWith(m_shop.stock(), "part", "L-17");
    QCOMPARE(textOf(line, "notFree"), std::string("past its day 2020-01-31"));
}

void BoxesAndHoses::aRunThatSuchAHoseSuitsIsSaid()
{
    // Of the coupe's fuel one run has a straight end at both sides; its length is a cut of the
    // list.
    const auto listed = [this] { return json({"issue", "coupe-fuel", "--list"}); };
    QCOMPARE(run({"reserve", "coupe-fuel"}).status, 0);
    std::set<std::string> cuts;
    for (const QJsonValue &pick : arrayOf(listed(), "picks")) {
        if (textOf(pick, "part") == "PT-6") {
            for (const QJsonValue &cut : pick.toObject().value(QStringLiteral("lengths")).toArray())
                cuts.insert(cut.toString().toStdString());
        }
    }
    QVERIFY(cuts.size() > 1);
    QCOMPARE(run({"reserve", "coupe-fuel", "--let-go"}).status, 0);
    QVERIFY(arrayOf(listed(), "madeUp").isEmpty());
    int number = 0;
    for (const std::string &cut : cuts)
        makeStraight(cut, std::to_string(++number));
    const auto suits = arrayOf(listed(), "madeUp");
    QVERIFY(!suits.isEmpty());
    for (const QJsonValue &one : suits)
        QCOMPARE(textOf(one, "longer"), std::string("0"));
    QVERIFY(run({"issue", "coupe-fuel", "--list"}).out.find("made up already for ") !=
            std::string::npos);
    QVERIFY(m_shop.isWhole());
}

void BoxesAndHoses::whatCannotBeMadeIsRefused()
{
    const Words good{"make-up", "PT-6",  "22 1/2 in", "--start", "HE-6", "--end",
                     "HE-6-90", "--tag", "L-17",      "--to",    "SH-4"};
    const std::vector<std::pair<std::size_t, std::string>> wrong = {
        {1, "AD-8-8"},  {2, "900 ft"}, {2, "0 in"}, {4, "AD-8-8"},
        {6, "HE-8-90"}, {8, "AD-8-8"}, {8, ""},     {10, "nowhere"}};
    const auto before = m_shop.stock();
    for (const auto &[at, word] : wrong) {
        Words words = good;
        words[at] = word;
        const Ran ran = run(words);
        QVERIFY2(ran.refusesInOneLine(), (word + ": " + ran.out + ran.err).c_str());
    }
    for (const Words &more :
         {Words{"--clocking", "360"}, Words{"--proof", "passed"},
          Words{"--proof-pressure", "2000", "--proof-medium", "water", "--proof", "passed", "--who",
                "fitter"},
          Words{"--proof-pressure", "2000 psi", "--proof-medium", "water", "--proof", "passed"},
          Words{"--use-by", "soon"}, Words{"--with", "AD-8-8=0"}}) {
        const Ran ran = makeUp(more);
        QVERIFY2(ran.status == 2 && ran.out.empty(), (more[0] + ": " + ran.out).c_str());
    }
    QCOMPARE(m_shop.stock(), before);
}

QTEST_GUILESS_MAIN(BoxesAndHoses)
#include "tst_boxes_and_hoses_keep_their_value.moc"
