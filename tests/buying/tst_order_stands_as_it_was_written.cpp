// SPDX-License-Identifier: MIT
//
// An order comes back from its record as it went in; the newest word on it counts, what came of it
// says how it stands, and it takes no step that it cannot take.

#include "model/buying/order_steps.h"
#include "tests/buying/order_for_tests.h"

#include <rapidcheck.h>

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

const std::function<bool(const MovementId &)> NothingBack = [](const MovementId &) {
    return false;
};

std::string anyText()
{
    std::string text;
    const auto count = *rc::gen::inRange(0, 6);
    for (int at = 0; at < count; ++at)
        text += *rc::gen::element<std::string>("a", "Ø", "µ", "\t", "\n", "=", "€", "ł", "\"", " ");
    return text;
}

/// The next step of an order, in another state.
Order stepOf(const Order &order, std::uint8_t id, OrderState state)
{
    Order step = order;
    step.before = order.id;
    step.id = idNumber(id);
    step.state = state;
    return step;
}

Receipt cameOf(const Order &order, std::int64_t quantity, bool wrongPart = false)
{
    Receipt receipt;
    receipt.id = idNumber(90);
    receipt.order = order.number;
    receipt.part = "P-1";
    receipt.quantity = quantity;
    receipt.wrongPart = wrongPart;
    receipt.action = idNumber(91).text();
    return receipt;
}

BookedOrder booked(const std::vector<Record> &records)
{
    return *BuyingBook::of(records, NothingBack)->order("2026-0001");
}

QString why(const std::vector<Record> &records, const Order &next)
{
    const auto book = BuyingBook::of(records, NothingBack).value();
    return QString::fromStdString(notWrittenBecause(book.order(next.number), next));
}

Order threeOrdered()
{
    Order order = orderOf({"2.50"});
    order.lines[0].quantity = 3;
    return order;
}

} // namespace

class OrderStands : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyFieldComesBack();
    void aLineWithoutADayIsWrittenAsBefore();
    void whatNoShopWritesIsRefused();
    void whatHasComeSaysHowItStands();
    void whatWasTakenBackDoesNotCount();
    void oneNumberIsGivenOnce();
    void stepsAreTakenInTheirOrder();
    void nothingIsCancelledThatHasCome();
    void aStepIsTakenBack();
    void stepsAreTakenBackOneByOne();
    void numbersCountWithinTheirYear();
};

void OrderStands::everyFieldComesBack()
{
    QVERIFY(rc::check("an order is read as it was written", [] {
        Order order = orderOf({}, *rc::gen::element<std::string>("USD", "EUR", "JPY"));
        const auto count = *rc::gen::inRange(1, 13);
        for (int at = 0; at < count; ++at) {
            OrderLine line = lineOf("P-" + std::to_string(at), "1");
            line.supplierNumber = anyText();
            line.description = anyText();
            line.quantity = Decimal::scaled(*rc::gen::inRange<std::int64_t>(1, 99'999), 3);
            line.pack = *rc::gen::inRange<std::int64_t>(1, 100);
            line.priceEach = Decimal::scaled(*rc::gen::inRange<std::int64_t>(0, 99'999), 4);
            line.unit = *rc::gen::element(Unit::Each, Unit::Inch, Unit::Millimetre);
            line.due = *rc::gen::element<std::string>("", "2026-12-05");
            order.lines.push_back(line);
        }
        order.state = *rc::gen::element(OrderState::Draft, OrderState::Placed, OrderState::Closed,
                                        OrderState::Cancelled);
        order.freight = *rc::gen::inRange<std::int64_t>(0, 100);
        order.tax = {Decimal::scaled(*rc::gen::inRange<std::int64_t>(0, 30'000), 3),
                     *rc::gen::element(TaxRule::By::Item, TaxRule::By::Document),
                     *rc::gen::element(Rounding::HalfUp, Rounding::HalfEven),
                     *rc::gen::arbitrary<bool>()};
        order.rate = Decimal::scaled(*rc::gen::inRange<std::int64_t>(1, 99'999), 4);
        order.due = *rc::gen::element<std::string>("", "2026-12-24");
        order.note = anyText();
        if (*rc::gen::arbitrary<bool>())
            order.before = idNumber(77);
        const Record record = order.asRecord();
        const auto read = Order::read(record);
        RC_ASSERT(read.has_value());
        RC_ASSERT(read->saysAs(order));
        RC_ASSERT(read->before == order.before);
        RC_ASSERT(read->who == order.who && read->at == order.at && read->id == order.id);
        RC_ASSERT(read->asRecord().fields == record.fields);
    }));
}

/// Records of before say nothing of a line's day, and none says more than it has to.
void OrderStands::aLineWithoutADayIsWrittenAsBefore()
{
    Order order = orderOf({"2.50", "1.00"});
    order.due = "2026-12-18";
    order.lines[1].due = "2026-12-05";
    const Record record = order.asRecord();
    QVERIFY(!record.fields.contains("1 due"));
    QCOMPARE(record.field("2 due"), std::string("2026-12-05"));
    const Order read = Order::read(record).value();
    QCOMPARE(read.dueOf(read.lines[0]), std::string("2026-12-18"));
    QCOMPARE(read.dueOf(read.lines[1]), std::string("2026-12-05"));
    order.lines[1].due = "soon";
    QVERIFY(!Order::read(order.asRecord()));
    // Of a placed order the first of what is still to come is told.
    order.lines[1].due = "2026-12-05";
    order.state = OrderState::Placed;
    BookedOrder booked;
    booked.steps = {order};
    QCOMPARE(booked.nextDue(), std::string("2026-12-05"));
}

void OrderStands::whatNoShopWritesIsRefused()
{
    const Record whole = threeOrdered().asRecord();
    QVERIFY(Order::read(whole));
    const std::vector<std::pair<std::string, std::string>> wrong = {
        {"currency", "XX"},       {"state", "sent"},     {"lines", "0"},
        {"lines", "2"},           {"1 quantity", "0"},   {"1 quantity", "1e3"},
        {"1 price", "-1"},        {"1 pack", "0"},       {"1 part", ""},
        {"1 unit", "furlong"},    {"discount", "7.51"},  {"discount", "-1"},
        {"freight", "0.005"},     {"tax percent", "-1"}, {"tax by", "line"},
        {"tax rounding", "down"}, {"tax recovered", ""}, {"rate", "0"},
        {"day", "2026-02-30"},    {"due", "soon"},       {"supplier", ""},
        {"before", "7"},
    };
    for (const auto &[field, value] : wrong) {
        Record record = whole;
        record.fields[field] = value;
        QVERIFY2(!Order::read(record), field.c_str());
    }
    Record unnumbered = whole;
    unnumbered.subject = "7";
    QVERIFY(!Order::read(unnumbered));
    Order twice = threeOrdered();
    twice.lines.push_back(twice.lines[0]);
    QVERIFY(!Order::read(twice.asRecord()));
}

void OrderStands::whatHasComeSaysHowItStands()
{
    const Order draft = threeOrdered();
    const Order placed = stepOf(draft, 2, OrderState::Placed);
    QCOMPARE(booked({draft.asRecord()}).standing(), OrderStanding::Draft);
    QCOMPARE(booked({draft.asRecord()}).awaited(draft.lines[0]), Decimal(0));
    std::vector<Record> records{draft.asRecord(), placed.asRecord()};
    QCOMPARE(booked(records).standing(), OrderStanding::Placed);
    QCOMPARE(booked(records).awaited(draft.lines[0]), Decimal(3));
    records.push_back(cameOf(placed, 5, true).asRecord()); // A wrong part is not what was awaited.
    QCOMPARE(booked(records).awaited(draft.lines[0]), Decimal(3));
    records.push_back(cameOf(placed, 1).asRecord());
    QCOMPARE(booked(records).standing(), OrderStanding::PartlyReceived);
    QCOMPARE(booked(records).awaited(draft.lines[0]), Decimal(2));
    records.push_back(cameOf(placed, 3).asRecord());
    QCOMPARE(booked(records).standing(), OrderStanding::Closed);
    QCOMPARE(booked(records).awaited(draft.lines[0]), Decimal(0));
}

void OrderStands::whatWasTakenBackDoesNotCount()
{
    const Order draft = threeOrdered();
    const Order placed = stepOf(draft, 2, OrderState::Placed);
    const auto book =
        BuyingBook::of({draft.asRecord(), placed.asRecord(), cameOf(placed, 3).asRecord()},
                       [](const MovementId &id) { return id == idNumber(91); });
    QCOMPARE(book->order("2026-0001")->standing(), OrderStanding::Placed);
}

void OrderStands::oneNumberIsGivenOnce()
{
    Order other = threeOrdered();
    other.id = idNumber(3);
    QVERIFY(why({}, other).isEmpty());
    QCOMPARE(why({threeOrdered().asRecord()}, other),
             QStringLiteral("stands in this shop already"));
}

void OrderStands::stepsAreTakenInTheirOrder()
{
    const Order draft = threeOrdered();
    const Order placed = stepOf(draft, 2, OrderState::Placed);
    const Order closed = stepOf(placed, 3, OrderState::Closed);
    const std::vector<Record> one{draft.asRecord()};
    const std::vector<Record> two{draft.asRecord(), placed.asRecord()};
    const std::vector<Record> three{draft.asRecord(), placed.asRecord(), closed.asRecord()};
    QVERIFY(why(one, placed).isEmpty());
    QVERIFY(!why(one, stepOf(draft, 9, OrderState::Closed)).isEmpty());
    QVERIFY(why(two, closed).isEmpty());
    Order dearer = stepOf(placed, 9, OrderState::Placed);
    dearer.lines[0].priceEach = 3;
    QCOMPARE(why(two, dearer), QStringLiteral("is placed: only its days and its note can change"));
    Order later = stepOf(placed, 9, OrderState::Placed);
    later.due = "2026-12-24";
    QVERIFY(why(two, later).isEmpty());
    QCOMPARE(why(two, stepOf(draft, 9, OrderState::Cancelled)),
             QStringLiteral("was changed by somebody else meanwhile"));
    Order again = stepOf(closed, 9, OrderState::Placed);
    again.note = "once more";
    QCOMPARE(why(three, again), QStringLiteral("is closed"));
}

void OrderStands::nothingIsCancelledThatHasCome()
{
    const Order draft = threeOrdered();
    const Order placed = stepOf(draft, 2, OrderState::Placed);
    std::vector<Record> records{draft.asRecord(), placed.asRecord()};
    const Order cancelled = stepOf(placed, 9, OrderState::Cancelled);
    QVERIFY(why(records, cancelled).isEmpty());
    records.push_back(cameOf(placed, 1).asRecord());
    QCOMPARE(why(records, cancelled),
             QStringLiteral("cannot be cancelled: something of it has come"));
    QVERIFY(!stepBack(booked(records), placed.id));
}

void OrderStands::aStepIsTakenBack()
{
    const Order draft = threeOrdered();
    const Order placed = stepOf(draft, 2, OrderState::Placed);
    const Order closed = stepOf(placed, 3, OrderState::Closed);
    const auto open =
        stepBack(booked({draft.asRecord(), placed.asRecord(), closed.asRecord()}), closed.id);
    QCOMPARE(open->state, OrderState::Placed);
    QCOMPARE(open->before, closed.id);
    QVERIFY(open->saysAs(placed));
    QCOMPARE(stepBack(booked({draft.asRecord()}), draft.id)->state, OrderState::Cancelled);
    QVERIFY(!stepBack(booked({draft.asRecord(), placed.asRecord()}), draft.id));
}

void OrderStands::stepsAreTakenBackOneByOne()
{
    const Order draft = threeOrdered();
    const Order placed = stepOf(draft, 2, OrderState::Placed);
    const Order cancelled = stepOf(placed, 3, OrderState::Cancelled);
    std::vector<Record> records{draft.asRecord(), placed.asRecord(), cancelled.asRecord()};
    const auto takeBack = [&](const Order &step, std::uint8_t id) {
        auto back = stepBack(booked(records), step.id);
        if (!back)
            return QString::fromStdString(back.error().sentence());
        if (QString refused = why(records, *back); !refused.isEmpty())
            return refused;
        back->id = idNumber(id);
        records.push_back(back->asRecord());
        return QString::fromStdString(std::string(text(back->state)));
    };
    QCOMPARE(takeBack(cancelled, 4), QStringLiteral("placed"));
    QVERIFY(takeBack(cancelled, 9).contains(QStringLiteral("has gone on since")));
    QCOMPARE(takeBack(placed, 5), QStringLiteral("draft"));
    QCOMPARE(takeBack(draft, 6), QStringLiteral("cancelled"));
    QCOMPARE(takeBack(booked(records).now(), 7),
             QStringLiteral("draft")); // The taking back itself.
}

void OrderStands::numbersCountWithinTheirYear()
{
    BuyingBook book;
    QCOMPARE(book.nextNumber("2026"), std::string("2026-0001"));
    book.orders["2026-0009"];
    book.orders["2025-0800"];
    QCOMPARE(book.nextNumber("2026"), std::string("2026-0010"));
    book.orders["2026-9999"];
    QCOMPARE(book.nextNumber("2026"), std::string("2026-10000"));
    QVERIFY(isOrderNumber("2026-10000"));
    QVERIFY(!isOrderNumber("2026-0000"));
    QVERIFY(!isOrderNumber("2026-07"));
}

QTEST_GUILESS_MAIN(OrderStands)
#include "tst_order_stands_as_it_was_written.moc"
