// SPDX-License-Identifier: MIT
//
// Canonical bytes are for ever: one row pinned for each kind of record, written out by hand from
// the description in canonical_bytes.h, and the law that two different records never share bytes.
// (RapidCheck prints its seed; another is given by RC_PARAMS="seed=…".)
//
// A pinned row that differs means that no shop file made before can be verified any more. Then a
// new form with a new first byte has to stand beside the old one; the rows here stay.

#include "model/journal/canonical_bytes.h"

#include <rapidcheck.h>

#include <QTest>

#include <tuple>

using namespace flarestock;

namespace {

using Bytes = std::vector<std::uint8_t>;

std::string hexOf(const Bytes &bytes)
{
    std::string hex;
    for (const std::uint8_t byte : bytes) {
        hex += "0123456789abcdef"[byte >> 4];
        hex += "0123456789abcdef"[byte & 0x0F];
    }
    return hex;
}

Movement pinnedMovement()
{
    Movement movement;
    movement.id = MovementId::parse("017f22e2-79b0-7cc3-98c4-dc0c0c07398f").value();
    movement.part = "AD-8-10";
    movement.quantity = 3;
    movement.value = 7'450'000;
    movement.from = "C4";
    movement.to = "car-2";
    movement.lot = "";
    movement.condition = PieceCondition::UsedAndGood;
    movement.who = "Zoë"; // A letter of two bytes: lengths count bytes.
    movement.why = "build";
    movement.document = "D1";
    movement.reverses = std::nullopt;
    movement.at = -2; // Numbers are of eight bytes, two's complement.
    return movement;
}

constexpr const char *PinnedId = "017f22e279b07cc398c4dc0c0c07398f";

/// Lengths and numbers.
std::string eight(const char *low)
{
    return std::string(16 - std::char_traits<char>::length(low), '0') + low;
}

/// Few short texts, so that two draws are often equal or nearly: also what looks like a length.
rc::Gen<std::string> anyText()
{
    return rc::gen::oneOf(rc::gen::elementOf(std::vector<std::string>{
                              "", "a", "b", "ab", "ba", std::string(8, '\0'), std::string(1, '\0'),
                              std::string("\0\0\0\0\0\0\0\1a", 9)}),
                          rc::gen::arbitrary<std::string>());
}

rc::Gen<std::int64_t> anyNumber()
{
    return rc::gen::oneOf(rc::gen::inRange<std::int64_t>(-2, 3),
                          rc::gen::arbitrary<std::int64_t>());
}

MovementId drawnId()
{
    std::array<std::uint8_t, 16> bytes{};
    bytes[*rc::gen::inRange<std::size_t>(0, 16)] = *rc::gen::inRange<std::uint8_t>(0, 3);
    return MovementId::ofBytes(bytes);
}

Movement drawnMovement()
{
    Movement movement;
    movement.id = drawnId();
    for (std::string *text : {&movement.part, &movement.from, &movement.to, &movement.lot,
                              &movement.who, &movement.why, &movement.document})
        *text = *anyText();
    movement.quantity = *anyNumber();
    movement.value = *anyNumber();
    movement.at = *anyNumber();
    movement.condition = static_cast<PieceCondition>(*rc::gen::inRange(0, 4));
    if (*rc::gen::arbitrary<bool>())
        movement.reverses = drawnId();
    return movement;
}

std::vector<std::string> drawnTexts()
{
    return *rc::gen::container<std::vector<std::string>>(anyText());
}

BoxCheck drawnBoxCheck()
{
    return {drawnId(), *anyText(), *anyText(), drawnTexts(), *anyText(), *anyNumber()};
}

Place drawnPlace()
{
    return {*anyText(), *anyText(), static_cast<PlaceKind>(*rc::gen::inRange(0, 9))};
}

template <class Record>
auto fieldsOf(Record &record)
{
    using Kind = std::remove_const_t<Record>;
    if constexpr (std::is_same_v<Kind, Movement>)
        return std::tie(record.id, record.part, record.quantity, record.value, record.from,
                        record.to, record.lot, record.condition, record.who, record.why,
                        record.document, record.reverses, record.at);
    else if constexpr (std::is_same_v<Kind, BoxCheck>)
        return std::tie(record.id, record.part, record.lot, record.missing, record.who, record.at);
    else if constexpr (std::is_same_v<Kind, Place>)
        return std::tie(record.id, record.title, record.kind);
    else
        return std::tie(record);
}

/// `record` with one field of `other`: two records that are as near as can be.
template <class Record>
Record withOneFieldOf(const Record &other, Record record)
{
    const auto mine = fieldsOf(record);
    const auto theirs = fieldsOf(other);
    constexpr std::size_t Fields = std::tuple_size_v<decltype(mine)>;
    const auto which = *rc::gen::inRange<std::size_t>(0, Fields);
    [&]<std::size_t... At>(std::index_sequence<At...>)
    {
        ((At == which ? void(std::get<At>(mine) = std::get<At>(theirs)) : void()), ...);
    }
    (std::make_index_sequence<Fields>());
    return record;
}

/// The last letter of one text in front of the next one.
void shiftALetter(std::string &text, std::string &next)
{
    if (text.empty())
        return;
    next.insert(next.begin(), text.back());
    text.pop_back();
}

template <class Record>
void assertTellsApart(const Record &a, const Record &b, int &differing)
{
    const bool same = fieldsOf(a) == fieldsOf(b);
    RC_ASSERT((canonicalBytes(a) == canonicalBytes(b)) == same);
    differing += same ? 0 : 1;
}

/// Two draws, and the first with one field of the second.
template <class Draw>
void assertTellsDrawsApart(const Draw &draw, int &differing)
{
    const auto a = draw();
    const auto b = draw();
    assertTellsApart(a, b, differing);
    assertTellsApart(a, withOneFieldOf(b, a), differing);
    assertTellsApart(a, a, differing);
}

template <class Law>
void holds(const char *law, const Law &checked)
{
    QVERIFY2(rc::check(law, checked), law);
}

} // namespace

class CanonicalBytesNeverChange : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ofAMovement();
    void ofATakingBack();
    void ofALookIntoABox();
    void ofAPlace();
    void ofARowOfTexts();
    void differWhereRecordsDiffer();
    void differBetweenKinds();
};

void CanonicalBytesNeverChange::ofAMovement()
{
    QCOMPARE(hexOf(canonicalBytes(pinnedMovement())),
             "01" + std::string(PinnedId) +      // form, id
                 eight("7") + "41442d382d3130" + // part: AD-8-10
                 eight("3") + eight("71ad90") +  // quantity, value 7,450,000
                 eight("2") + "4334" +           // from: C4
                 eight("5") + "6361722d32" +     // to: car-2
                 eight("0") +                    // no lot
                 "01" +                          // used and good
                 eight("4") + "5a6fc3ab" +       // who: Zoë
                 eight("5") + "6275696c64" +     // why: build
                 eight("2") + "4431" +           // document: D1
                 "00" + "fffffffffffffffe");     // takes nothing back; at −2
}

void CanonicalBytesNeverChange::ofATakingBack()
{
    Movement movement = pinnedMovement();
    movement.reverses = MovementId::parse("f81d4fae-7dec-11d0-a765-00a0c91e6bf6").value();
    movement.at = 1'780'000'000'000;
    const std::string hex = hexOf(canonicalBytes(movement));
    const std::string end = eight("2") + "4431" + "01" + "f81d4fae7dec11d0a76500a0c91e6bf6" +
                            "0000019e70448800"; // takes back, what, at
    QVERIFY2(hex.ends_with(end), hex.c_str());
    const std::string whole = hexOf(canonicalBytes(pinnedMovement()));
    QCOMPARE(hex.size(), whole.size() + 32);
    const auto before = whole.size() - 2 - 16; // Up to the byte that says whether.
    QCOMPARE(hex.substr(0, before), whole.substr(0, before));
}

void CanonicalBytesNeverChange::ofALookIntoABox()
{
    const BoxCheck check{MovementId::parse("017f22e2-79b0-7cc3-98c4-dc0c0c07398f").value(),
                         "EP-460",
                         "L7",
                         {"BR-460", "CL-10"},
                         "Zoë",
                         1};
    QCOMPARE(hexOf(canonicalBytes(check)), "02" + std::string(PinnedId) +    // form, id
                                               eight("6") + "45502d343630" + // part: EP-460
                                               eight("2") + "4c37" +         // lot: L7
                                               eight("2") +                  // two are missing
                                               eight("6") + "42522d343630" + // BR-460
                                               eight("5") + "434c2d3130" +   // CL-10
                                               eight("4") + "5a6fc3ab" +     // who: Zoë
                                               eight("1"));                  // at
}

void CanonicalBytesNeverChange::ofAPlace()
{
    QCOMPARE(hexOf(canonicalBytes(Place{"tr-2", "drawer 2", PlaceKind::InTransit})),
             "03" + eight("4") + "74722d32" +          // id: tr-2
                 eight("8") + "6472617765722032" +     // title: drawer 2
                 eight("a") + "696e207472616e736974"); // kind: in transit
}

void CanonicalBytesNeverChange::ofARowOfTexts()
{
    QCOMPARE(hexOf(canonicalBytes(std::vector<std::string>{"shop.toml", "", "x"})),
             "04" + eight("3") + eight("9") + "73686f702e746f6d6c" + eight("0") + eight("1") +
                 "78");
    QCOMPARE(hexOf(canonicalBytes(std::vector<std::string>{})), "04" + eight("0"));
}

void CanonicalBytesNeverChange::differWhereRecordsDiffer()
{
    int differing = 0;
    holds("bytes are the same where, and only where, every field is", [&differing] {
        assertTellsDrawsApart(drawnMovement, differing);
        assertTellsDrawsApart(drawnBoxCheck, differing);
        assertTellsDrawsApart(drawnPlace, differing);
        assertTellsDrawsApart(drawnTexts, differing);
    });
    QVERIFY(differing > 400);
    holds("a letter that goes from one field to the next one shows", [&differing] {
        Movement movement = drawnMovement();
        const Movement before = movement;
        shiftALetter(movement.from, movement.to);
        shiftALetter(movement.to, movement.lot);
        shiftALetter(movement.who, movement.why);
        shiftALetter(movement.why, movement.document);
        assertTellsApart(before, movement, differing);
        Place place = drawnPlace();
        const Place was = place;
        shiftALetter(place.id, place.title);
        assertTellsApart(was, place, differing);
        auto texts = drawnTexts();
        texts.resize(texts.size() + 2);
        const auto apart = texts;
        shiftALetter(texts[0], texts[1]);
        assertTellsApart(apart, texts, differing);
    });
}

void CanonicalBytesNeverChange::differBetweenKinds()
{
    holds("no record of one kind has the bytes of another kind", [] {
        const std::vector<Bytes> each = {
            canonicalBytes(drawnMovement()), canonicalBytes(drawnBoxCheck()),
            canonicalBytes(drawnPlace()), canonicalBytes(drawnTexts())};
        for (std::size_t one = 0; one < each.size(); ++one)
            for (std::size_t other = 0; other < one; ++other)
                RC_ASSERT(each[one] != each[other]);
    });
    // Even where nothing else tells them apart: a place that is nothing but lengths.
    QVERIFY(canonicalBytes(Place{"", "shelf", PlaceKind::Shelf}) !=
            canonicalBytes(std::vector<std::string>{"shelf", "shelf"}));
}

QTEST_APPLESS_MAIN(CanonicalBytesNeverChange)
#include "tst_canonical_bytes_never_change.moc"
