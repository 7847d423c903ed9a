// SPDX-License-Identifier: MIT

#include "model/journal/canonical_bytes.h"

namespace flarestock {

namespace {

/// First byte: what kind of record in which form.
enum class Form : std::uint8_t {
    Movement1 = 1,
    BoxCheck1 = 2,
    Place1 = 3,
    Texts1 = 4,
    Movement2 = 5, ///< With what the first form cannot say.
    Record1 = 6,
};

/// Whether a movement says nothing that the first form does not hold.
bool fitsFirstForm(const Movement &movement)
{
    return movement.deed == Deed::Move && !movement.newLot && !movement.newCondition &&
           !movement.action && movement.until.empty();
}

class ByteRow {
public:
    explicit ByteRow(Form form) : m_bytes{static_cast<std::uint8_t>(form)} {}

    /// Big-endian, two's complement.
    ByteRow &number(std::int64_t number)
    {
        const auto bits = static_cast<std::uint64_t>(number);
        for (int shift = 56; shift >= 0; shift -= 8)
            m_bytes.push_back(static_cast<std::uint8_t>(bits >> shift));
        return *this;
    }
    ByteRow &text(std::string_view text)
    {
        number(static_cast<std::int64_t>(text.size()));
        m_bytes.insert(m_bytes.end(), text.begin(), text.end());
        return *this;
    }
    ByteRow &id(const MovementId &id)
    {
        m_bytes.insert(m_bytes.end(), id.bytes().begin(), id.bytes().end());
        return *this;
    }
    ByteRow &byte(std::uint8_t byte)
    {
        m_bytes.push_back(byte);
        return *this;
    }
    [[nodiscard]] std::vector<std::uint8_t> take() { return std::move(m_bytes); }

private:
    std::vector<std::uint8_t> m_bytes;
};

} // namespace

std::vector<std::uint8_t> canonicalBytes(const Movement &movement)
{
    const bool first = fitsFirstForm(movement);
    ByteRow row(first ? Form::Movement1 : Form::Movement2);
    row.id(movement.id).text(movement.part).number(movement.quantity).number(movement.value);
    row.text(movement.from).text(movement.to).text(movement.lot);
    row.byte(static_cast<std::uint8_t>(movement.condition));
    row.text(movement.who).text(movement.why).text(movement.document);
    row.byte(movement.reverses ? 1 : 0);
    if (movement.reverses)
        row.id(*movement.reverses);
    row.number(movement.at);
    if (first)
        return row.take();
    row.text(text(movement.deed)).byte(movement.newLot ? 1 : 0);
    if (movement.newLot)
        row.text(*movement.newLot);
    row.byte(movement.newCondition ? 1 : 0);
    if (movement.newCondition)
        row.byte(static_cast<std::uint8_t>(*movement.newCondition));
    row.byte(movement.action ? 1 : 0);
    if (movement.action)
        row.id(*movement.action);
    return row.text(movement.until).take();
}

std::vector<std::uint8_t> canonicalBytes(const Record &record)
{
    ByteRow row(Form::Record1);
    row.id(record.id).text(text(record.kind)).text(record.subject);
    row.number(static_cast<std::int64_t>(record.fields.size()));
    for (const auto &[name, value] : record.fields)
        row.text(name).text(value);
    return row.text(record.who).number(record.at).take();
}

std::vector<std::uint8_t> canonicalBytes(const BoxCheck &check)
{
    ByteRow row(Form::BoxCheck1);
    row.id(check.id).text(check.part).text(check.lot);
    row.number(static_cast<std::int64_t>(check.missing.size()));
    for (const std::string &part : check.missing)
        row.text(part);
    return row.text(check.who).number(check.at).take();
}

std::vector<std::uint8_t> canonicalBytes(const Place &place)
{
    return ByteRow(Form::Place1).text(place.id).text(place.title).text(text(place.kind)).take();
}

std::vector<std::uint8_t> canonicalBytes(const std::vector<std::string> &texts)
{
    ByteRow row(Form::Texts1);
    row.number(static_cast<std::int64_t>(texts.size()));
    for (const std::string &text : texts)
        row.text(text);
    return row.take();
}

} // namespace flarestock
