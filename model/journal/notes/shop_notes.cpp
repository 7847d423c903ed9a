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

void noteAt(ShopNotes &notes, LevelSeen one)
{
    const PartAt at{one.part, one.place};
    notes.levels.insert_or_assign(at, std::move(one));
}

void noteAt(ShopNotes &notes, Keeping one)
{
    const PartAt at{one.part, one.place};
    if (one.most == 0)
        notes.keepings.erase(at);
    else
        notes.keepings.insert_or_assign(at, std::move(one));
}

Result<void> note(ShopNotes &notes, const Record &record)
{
    switch (record.kind) {
    case RecordKind::Promise: // The ledger's.
    case RecordKind::Count:   // Its movement says what has changed.
    case RecordKind::Order:   // What is bought has its own fold.
    case RecordKind::Receipt:
    case RecordKind::SupplierClaim:
    case RecordKind::LateCost:
    case RecordKind::Outing: // What was done to the cars has its own fold.
    case RecordKind::Servicing:
    case RecordKind::Trip: // What is with a copy, too.
    case RecordKind::Decision:
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
        return readAs<BuildDone>(record, [&](const BuildDone &one) {
            BuildStanding &build = notes.builds[one.build];
            build.done = one;
            if (one.changed)
                build.outdated = build.tests.size();
        });
    case RecordKind::Instead:
        return readAs<Instead>(
            record, [&](const Instead &one) { notes.builds[one.build].instead.push_back(one); });
    case RecordKind::OpenedBox:
        return readAs<OpenedBox>(record,
                                 [&](const OpenedBox &one) { notes.opened.push_back(one); });
    case RecordKind::MadeHose:
        return readAs<MadeHose>(
            record, [&](const MadeHose &one) { notes.hoses.insert_or_assign(one.tag, one); });
    case RecordKind::Level:
        return readAs<LevelSeen>(record, [&](const LevelSeen &one) { noteAt(notes, one); });
    case RecordKind::Keeping:
        return readAs<Keeping>(record, [&](const Keeping &one) { noteAt(notes, one); });
    }
    return {};
}

bool wasTakenBack(const Record &record, const Ledger &ledger)
{
    const auto action = MovementId::parse(record.field("action"));
    return action && ledger.isTakenBack(*action);
}

} // namespace

std::vector<LeakTest> BuildStanding::testsNow() const
{
    return {tests.begin() + static_cast<std::ptrdiff_t>(outdated), tests.end()};
}

Result<ShopNotes> ShopNotes::of(const std::vector<Record> &records, const Ledger &ledger)
{
    ShopNotes notes;
    for (const Record &record : records) {
        if (wasTakenBack(record, ledger))
            continue;
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
