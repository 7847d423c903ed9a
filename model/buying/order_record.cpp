// SPDX-License-Identifier: MIT
//
// An order as a record and back. Each fact of a line is a field of its own ("2 part", "2 price"),
// so that no text needs a mark between it and the next. Numbers lose the zeros at their ends: one
// order is one record.

#include "model/buying/order.h"

namespace flarestock {

namespace {

std::string_view text(TaxRule::By by) noexcept
{
    return by == TaxRule::By::Item ? "item" : "document";
}

std::string_view text(Rounding rounding) noexcept
{
    return rounding == Rounding::HalfEven ? "half even" : "half up";
}

/// Reads the fields of one record, and remembers what was wrong first.
class Fields {
public:
    explicit Fields(const Record &record) : m_record(record) {}

    const std::string &said(const std::string &name) const { return m_record.field(name); }
    Decimal number(const std::string &name)
    {
        const auto read = Decimal::parse(said(name));
        return read ? *read : miss<Decimal>(name);
    }
    template <class T>
    T oneOf(const std::string &name, std::initializer_list<T> all)
    {
        for (const T one : all) {
            if (text(one) == said(name))
                return one;
        }
        return miss<T>(name);
    }
    template <class T, class Parse>
    T parsed(const std::string &name, Parse &&parse, T otherwise)
    {
        const auto read = parse(said(name));
        if (read)
            return *read;
        miss<int>(name);
        return otherwise;
    }
    template <class T>
    T miss(const std::string &name)
    {
        if (m_missed.empty())
            m_missed = name;
        return T();
    }
    [[nodiscard]] const std::string &missed() const noexcept { return m_missed; }

private:
    const Record &m_record;
    std::string m_missed;
};

void write(std::map<std::string, std::string> &fields, std::size_t at, const OrderLine &line)
{
    const std::string place = std::to_string(at) + " ";
    fields[place + "part"] = line.part;
    fields[place + "supplier number"] = line.supplierNumber;
    fields[place + "description"] = line.description;
    fields[place + "quantity"] = line.quantity.stripped().text();
    fields[place + "pack"] = line.pack.stripped().text();
    fields[place + "price"] = line.priceEach.stripped().text();
    fields[place + "unit"] = std::string(text(line.unit));
    if (!line.due.empty()) // So a line of before, and one without a day, says what it said.
        fields[place + "due"] = line.due;
}

OrderLine lineAt(Fields &fields, std::size_t at)
{
    const std::string place = std::to_string(at) + " ";
    OrderLine line;
    line.part = fields.said(place + "part");
    line.supplierNumber = fields.said(place + "supplier number");
    line.description = fields.said(place + "description");
    line.quantity = fields.number(place + "quantity");
    line.pack = fields.number(place + "pack");
    line.priceEach = fields.number(place + "price");
    line.unit = fields.parsed(place + "unit", parseUnit, Unit::Each);
    line.due = fields.said(place + "due");
    return line;
}

TaxRule taxIn(Fields &fields)
{
    TaxRule tax;
    tax.percent = fields.number("tax percent");
    tax.by = fields.oneOf("tax by", {TaxRule::By::Item, TaxRule::By::Document});
    tax.rounding = fields.oneOf("tax rounding", {Rounding::HalfUp, Rounding::HalfEven});
    tax.recovered = fields.said("tax recovered") == "yes";
    if (!tax.recovered && fields.said("tax recovered") != "no")
        fields.miss<bool>("tax recovered");
    return tax;
}

Order emptyIn(const Currency &currency)
{
    return {{}, {}, {}, currency, OrderState::Draft, {}, {}, {}, {}, 1, {}, {}, {}, {}, 0, {}};
}

tl::unexpected<Problem> noOrder(const Record &record, const std::string &why)
{
    return problem("record " + record.id.text(), "is not an order: " + why,
                   "Run flarestock verify on the shop.");
}

} // namespace

Record Order::asRecord() const
{
    Record record{id,
                  RecordKind::Order,
                  number,
                  {{"supplier", supplier},
                   {"currency", std::string(currency.code())},
                   {"state", std::string(text(state))},
                   {"lines", std::to_string(lines.size())},
                   {"discount", discount.stripped().text()},
                   {"freight", freight.stripped().text()},
                   {"tax percent", tax.percent.stripped().text()},
                   {"tax by", std::string(text(tax.by))},
                   {"tax rounding", std::string(text(tax.rounding))},
                   {"tax recovered", tax.recovered ? "yes" : "no"},
                   {"rate", rate.stripped().text()},
                   {"day", day},
                   {"due", due},
                   {"note", note}},
                  who,
                  at};
    if (before)
        record.fields["before"] = before->text();
    std::size_t count = 0;
    for (const OrderLine &one : lines)
        write(record.fields, ++count, one);
    return record;
}

Result<Order> Order::read(const Record &record)
{
    const auto currency = Currency::parse(record.field("currency"));
    const auto count = record.number("lines");
    if (record.kind != RecordKind::Order || !currency || !count || *count < 0 ||
        static_cast<std::size_t>(*count) > record.fields.size())
        return noOrder(record, "it has no currency, or no lines");
    Fields fields(record);
    Order order = emptyIn(*currency);
    order.id = record.id;
    order.number = record.subject;
    order.supplier = record.field("supplier");
    order.state = fields.parsed("state", parseOrderState, OrderState::Draft);
    for (std::size_t at = 1; at <= static_cast<std::size_t>(*count); ++at)
        order.lines.push_back(lineAt(fields, at));
    order.discount = fields.number("discount");
    order.freight = fields.number("freight");
    order.tax = taxIn(fields);
    order.rate = fields.number("rate");
    order.day = record.field("day");
    order.due = record.field("due");
    order.note = record.field("note");
    order.who = record.who;
    order.at = record.at;
    if (!record.field("before").empty())
        order.before = fields.parsed("before", MovementId::parse, MovementId());
    if (!fields.missed().empty())
        return noOrder(record, "its " + fields.missed() + " cannot be read");
    if (const auto fault = order.fault(); !fault.empty())
        return noOrder(record, "it " + fault);
    return order;
}

} // namespace flarestock
