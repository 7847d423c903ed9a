// SPDX-License-Identifier: MIT

#include "model/journal/notes/build_log.h"

namespace flarestock {

Record LeakTest::asRecord() const
{
    return {id,
            RecordKind::LeakTest,
            build,
            {{"medium", medium},
             {"pressure", pressure},
             {"held", held},
             {"result", passed ? "passed" : "failed"},
             {"second", second},
             {"note", note}},
            who,
            at};
}

Result<LeakTest> LeakTest::read(const Record &record)
{
    const std::string &result = record.field("result");
    if (record.kind != RecordKind::LeakTest || (result != "passed" && result != "failed"))
        return problem("record " + record.id.text(), "is not a leak test",
                       "Run flarestock verify on the shop.");
    return LeakTest{record.id,
                    record.subject,
                    record.field("medium"),
                    record.field("pressure"),
                    record.field("held"),
                    result == "passed",
                    record.who,
                    record.field("second"),
                    record.field("note"),
                    record.at};
}

Record BuildDone::asRecord() const
{
    Record record{id,    RecordKind::Done,
                  build, {{"car", car}, {"state", open ? "open" : "done"}, {"why", why}},
                  who,   at};
    if (changed)
        record.fields["pieces"] = "changed";
    return record;
}

Result<BuildDone> BuildDone::read(const Record &record)
{
    const std::string &state = record.field("state");
    if (record.kind != RecordKind::Done || (state != "open" && state != "done"))
        return problem("record " + record.id.text(), "does not say whether a build is done",
                       "Run flarestock verify on the shop.");
    return BuildDone{record.id,
                     record.subject,
                     record.field("car"),
                     state == "open",
                     record.field("pieces") == "changed",
                     record.who,
                     record.field("why"),
                     record.at};
}

Record Instead::asRecord() const
{
    return {id,
            RecordKind::Instead,
            build,
            {{"planned", planned},
             {"used", used},
             {"quantity", std::to_string(quantity)},
             {"why", why},
             {"action", action}},
            who,
            at};
}

Result<Instead> Instead::read(const Record &record)
{
    const auto quantity = record.number("quantity");
    if (record.kind != RecordKind::Instead || !quantity || record.field("used").empty())
        return problem("record " + record.id.text(), "does not say what a build has instead",
                       "Run flarestock verify on the shop.");
    return Instead{record.id, record.subject, record.field("planned"), record.field("used"),
                   *quantity, record.who,     record.field("why"),     record.field("action"),
                   record.at};
}

std::string notDoneBecause(const std::vector<LeakTest> &tests, bool brakes)
{
    if (tests.empty())
        return "no leak test of it as it stands is written down";
    const LeakTest &newest = tests.back();
    if (!newest.passed)
        return "its newest leak test has failed";
    if (newest.who.empty())
        return "nobody's name stands below its leak test";
    if (brakes && (newest.second.empty() || newest.second == newest.who))
        return "a leak test of brakes needs the name of a second person below it";
    return {};
}

} // namespace flarestock
