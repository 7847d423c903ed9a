// SPDX-License-Identifier: MIT

#include "model/journal/notes/shop_notes.h"

namespace flarestock {

namespace {

/// Reads a record as a T and lets `keep` have it.
template <class T, class Keep>
Result<void> readAs(const Record &record, Keep &&keep)
{
    auto read = T::read(record);
    if (!read)
        return tl::unexpected(read.error());
    keep(std::move(*read));
    return {};
}

Result<void> note(ShopNotes &notes, const Record &record)
{
    switch (record.kind) {
    case RecordKind::Promise: // The ledger's.
    case RecordKind::Count:   // Its movement says what has changed.
        return {};
    case RecordKind::Lot:
        return readAs<LotFacts>(record, [&](LotFacts one) {
            const LotKey key = one.lot;
            notes.lots.insert_or_assign(key, std::move(one));
        });
    case RecordKind::LeakTest:
        return readAs<LeakTest>(
            record, [&](const LeakTest &one) { notes.builds[one.build].tests.push_back(one); });
    case RecordKind::Done:
        return readAs<BuildDone>(record,
                                 [&](const BuildDone &one) { notes.builds[one.build].done = one; });
    }
    return {};
}

} // namespace

Result<ShopNotes> ShopNotes::of(const std::vector<Record> &records)
{
    ShopNotes notes;
    for (const Record &record : records) {
        if (auto read = note(notes, record); !read)
            return tl::unexpected(read.error());
    }
    return notes;
}

const BuildStanding &ShopNotes::build(std::string_view id) const
{
    static const BuildStanding nothing;
    const auto at = builds.find(id);
    return at == builds.end() ? nothing : at->second;
}

} // namespace flarestock
