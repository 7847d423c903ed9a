// SPDX-License-Identifier: MIT

#include "model/buying/receipt.h"

namespace flarestock {

Record Receipt::asRecord() const
{
    Record record{id,
                  RecordKind::Receipt,
                  order,
                  {{"part", part},
                   {"quantity", std::to_string(quantity)},
                   {"value", std::to_string(value)},
                   {"lot", lot},
                   {"note", note},
                   {"action", action}},
                  who,
                  at};
    if (wrongPart)
        record.fields["is"] = "wrong part";
    if (!claim.empty())
        record.fields["claim"] = claim;
    if (inPlace)
        record.fields["comes"] = "in place";
    return record;
}

Result<Receipt> Receipt::read(const Record &record)
{
    if (record.kind != RecordKind::Receipt || record.subject.empty() ||
        record.field("part").empty())
        return problem("record " + record.id.text(), "is not a receipt",
                       "Run flarestock verify on the shop.");
    const auto quantity = record.number("quantity");
    if (!quantity)
        return tl::unexpected(quantity.error());
    const auto value = record.number("value");
    if (!value)
        return tl::unexpected(value.error());
    return Receipt{record.id,
                   record.subject,
                   record.field("part"),
                   *quantity,
                   *value,
                   record.field("lot"),
                   record.field("note"),
                   record.field("is") == "wrong part",
                   record.field("claim"),
                   record.field("comes") == "in place",
                   record.field("action"),
                   record.who,
                   record.at};
}

} // namespace flarestock
