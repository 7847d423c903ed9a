// SPDX-License-Identifier: MIT

#include "model/journal/promise.h"

namespace flarestock {

Record Promise::asRecord() const
{
    return {id,    RecordKind::Promise,
            build, {{"part", part}, {"quantity", std::to_string(quantity)}, {"why", why}},
            who,   at};
}

Result<Promise> Promise::read(const Record &record)
{
    const auto quantity = record.number("quantity");
    if (record.kind != RecordKind::Promise || !quantity)
        return problem("record " + record.id.text(), "is not a promise",
                       "Run flarestock verify on the shop.");
    return Promise{record.id,           record.subject, record.field("part"), *quantity, record.who,
                   record.field("why"), record.at};
}

std::optional<Issued> issuedBy(const Movement &movement)
{
    if (movement.document.empty())
        return std::nullopt;
    const ClaimKey claim{movement.part, movement.document};
    if (movement.deed == Deed::Issue)
        return Issued{claim, movement.quantity};
    if (movement.deed == Deed::Return)
        return Issued{claim, -movement.quantity};
    return std::nullopt;
}

} // namespace flarestock
