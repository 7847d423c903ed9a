// SPDX-License-Identifier: MIT

#include "model/journal/notes/made_hose.h"

namespace flarestock {

Record MadeHose::asRecord() const
{
    return {id,
            RecordKind::MadeHose,
            tag,
            {{"hose", hose},
             {"hose lot", hoseLot},
             {"start end", startEnd},
             {"far end", farEnd},
             {"cut", std::to_string(cut)},
             {"between seats", std::to_string(seats)},
             {"clocking", clocking},
             {"proof pressure", pressure},
             {"proof medium", medium},
             {"proof", pressure.empty() ? ""
                       : passed         ? "passed"
                                        : "failed"},
             {"tested by", testedBy},
             {"made on", madeOn},
             {"use by", useBy},
             {"action", action}},
            who,
            at};
}

Result<MadeHose> MadeHose::read(const Record &record)
{
    const auto cut = record.number("cut");
    const auto seats = record.number("between seats");
    if (record.kind != RecordKind::MadeHose || record.subject.empty() || !cut || !seats)
        return problem("record " + record.id.text(), "is not a made-up hose",
                       "Run flarestock verify on the shop.");
    return MadeHose{record.id,
                    record.subject,
                    record.field("hose"),
                    record.field("hose lot"),
                    record.field("start end"),
                    record.field("far end"),
                    *cut,
                    *seats,
                    record.field("clocking"),
                    record.field("proof pressure"),
                    record.field("proof medium"),
                    record.field("proof") == "passed",
                    record.field("tested by"),
                    record.field("made on"),
                    record.field("use by"),
                    record.who,
                    record.field("action"),
                    record.at};
}

} // namespace flarestock
