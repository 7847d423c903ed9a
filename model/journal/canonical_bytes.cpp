// SPDX-License-Identifier: MIT

#include "model/journal/canonical_bytes.h"

namespace flarestock {

namespace {

/// First byte: what kind of record in which form.
enum class Form : std::uint8_t { Movement1 = 1, BoxCheck1 = 2, Place1 = 3, Texts1 = 4 };

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
    ByteRow row(Form::Movement1);
    row.id(movement.id).text(movement.part).number(movement.quantity).number(movement.value);
    row.text(movement.from).text(movement.to).text(movement.lot);
    row.byte(static_cast<std::uint8_t>(movement.condition));
    row.text(movement.who).text(movement.why).text(movement.document);
    row.byte(movement.reverses ? 1 : 0);
    if (movement.reverses)
        row.id(*movement.reverses);
    return row.number(movement.at).take();
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
