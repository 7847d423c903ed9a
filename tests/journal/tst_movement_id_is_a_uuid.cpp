// SPDX-License-Identifier: MIT
//
// Ids of movements are UUIDs as RFC 9562 makes and writes them.

#include "model/journal/movement.h"

#include <QTest>

using namespace flarestock;

class MovementIdIsAUuid : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void isMadeAsTheStandardsExample();
    void keepsVersionAndVariantWhateverIsRandom();
    void sortsByTime();
    void isReadInEitherCaseAndSaidInLower();
    void isRefusedInAnotherForm_data();
    void isRefusedInAnotherForm();
};

void MovementIdIsAUuid::isMadeAsTheStandardsExample()
{
    // RFC 9562, appendix A.6: Tuesday 22 February 2022, 14:22:22 GMT-05:00 is 0x017F22E279B0 ms;
    // rand_a = 0xCC3, rand_b = 0x18C4DC0C0C07398F (62 bits); and the id that they make.
    const auto id = MovementId::make(1'645'557'742'000,
                                     {0x0C, 0xC3, 0x18, 0xC4, 0xDC, 0x0C, 0x0C, 0x07, 0x39, 0x8F});
    QCOMPARE(id.text(), std::string("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"));
    const std::array<std::uint8_t, 16> bytes = {0x01, 0x7F, 0x22, 0xE2, 0x79, 0xB0, 0x7C, 0xC3,
                                                0x98, 0xC4, 0xDC, 0x0C, 0x0C, 0x07, 0x39, 0x8F};
    QVERIFY(id.bytes() == bytes);
    QVERIFY(MovementId::ofBytes(bytes) == id);
    QVERIFY(MovementId::parse("017F22E2-79B0-7CC3-98C4-DC0C0C07398F").value() == id);
}

void MovementIdIsAUuid::keepsVersionAndVariantWhateverIsRandom()
{
    // RFC 9562, 5.7: the version's four bits are 0111, the variant's two are 10.
    std::array<std::uint8_t, 10> ones;
    ones.fill(0xFF);
    QCOMPARE(MovementId::make(0, {}).text(), std::string("00000000-0000-7000-8000-000000000000"));
    QCOMPARE(MovementId::make((std::int64_t{1} << 48) - 1, ones).text(),
             std::string("ffffffff-ffff-7fff-bfff-ffffffffffff"));
}

void MovementIdIsAUuid::sortsByTime()
{
    // RFC 9562, 6.11: they sort as bytes. The later has the smaller random part here.
    std::array<std::uint8_t, 10> ones;
    ones.fill(0xFF);
    std::int64_t milliseconds = 1;
    for (int doubled = 0; doubled < 46; ++doubled, milliseconds *= 2) {
        QVERIFY(MovementId::make(milliseconds, ones) < MovementId::make(milliseconds + 1, {}));
        QVERIFY(MovementId::make(milliseconds, ones).text() <
                MovementId::make(milliseconds + 1, {}).text());
    }
}

void MovementIdIsAUuid::isReadInEitherCaseAndSaidInLower()
{
    // RFC 9562, 4: hexadecimal in upper, lower or mixed case. Its example of the form stands there.
    const auto id = MovementId::parse("f81D4fae-7DEC-11d0-a765-00A0C91e6bf6");
    QVERIFY(id);
    QCOMPARE(id->text(), std::string("f81d4fae-7dec-11d0-a765-00a0c91e6bf6"));
    QCOMPARE(MovementId::parse(id->text())->text(), id->text());
    // RFC 9562, 5.9 and 5.10: the nil and the max UUID are UUIDs.
    QVERIFY(MovementId::parse("00000000-0000-0000-0000-000000000000").value() == MovementId());
    QVERIFY(MovementId::parse("FFFFFFFF-FFFF-FFFF-FFFF-FFFFFFFFFFFF"));
}

void MovementIdIsAUuid::isRefusedInAnotherForm_data()
{
    QTest::addColumn<std::string>("typed");
    QTest::newRow("nothing") << std::string();
    QTest::newRow("a part number") << std::string("AD-8-10");
    QTest::newRow("a digit short") << std::string("f81d4fae-7dec-11d0-a765-00a0c91e6bf");
    QTest::newRow("a digit more") << std::string("f81d4fae-7dec-11d0-a765-00a0c91e6bf61");
    QTest::newRow("no hyphens") << std::string("f81d4fae7dec11d0a76500a0c91e6bf6");
    QTest::newRow("a digit for a hyphen") << std::string("f81d4fae07dec-11d0-a765-00a0c91e6bf6");
    QTest::newRow("a hyphen too early") << std::string("f81d4fa-e7dec-11d0-a765-00a0c91e6bf6");
    QTest::newRow("a letter beyond f") << std::string("g81d4fae-7dec-11d0-a765-00a0c91e6bf6");
    QTest::newRow("a sign") << std::string("-81d4fae-7dec-11d0-a765-00a0c91e6bf6");
    QTest::newRow("in braces") << std::string("{81d4fae-7dec-11d0-a765-00a0c91e6bf}");
    QTest::newRow("a blank at its end") << std::string("f81d4fae-7dec-11d0-a765-00a0c91e6bf ");
    QTest::newRow("a NUL in it") << std::string("f81d4fae-7dec-11d0-a765-00a0c91e6b\0f", 36);
}

void MovementIdIsAUuid::isRefusedInAnotherForm()
{
    QFETCH(std::string, typed);
    const auto id = MovementId::parse(typed);
    QVERIFY(!id);
    QCOMPARE(id.error().thing, typed);
    QCOMPARE(id.error().wrong, std::string("is not an id"));
    QVERIFY(!id.error().remedy.empty());
}

QTEST_APPLESS_MAIN(MovementIdIsAUuid)
#include "tst_movement_id_is_a_uuid.moc"
