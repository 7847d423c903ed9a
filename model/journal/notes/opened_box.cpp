// SPDX-License-Identifier: MIT

#include "model/journal/notes/opened_box.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A part number a line: none of them holds a line end.
std::string lines(const std::vector<std::string> &numbers)
{
    std::string all;
    for (const std::string &number : numbers)
        all += (all.empty() ? "" : "\n") + number;
    return all;
}

std::vector<std::string> linesOf(const std::string &all)
{
    std::vector<std::string> numbers;
    std::size_t at = 0;
    while (at < all.size()) {
        const auto end = std::min(all.find('\n', at), all.size());
        numbers.push_back(all.substr(at, end - at));
        at = end + 1;
    }
    return numbers;
}

} // namespace

Record OpenedBox::asRecord() const
{
    return {id,
            RecordKind::OpenedBox,
            part,
            {{"box lot", boxLot},
             {"lot", lot},
             {"taken", lines(taken)},
             {"missing", lines(missing)},
             {"action", action}},
            who,
            at};
}

Result<OpenedBox> OpenedBox::read(const Record &record)
{
    if (record.kind != RecordKind::OpenedBox || record.subject.empty())
        return problem("record " + record.id.text(), "is not an opened box",
                       "Run flarestock verify on the shop.");
    return OpenedBox{record.id,
                     record.subject,
                     record.field("box lot"),
                     record.field("lot"),
                     linesOf(record.field("taken")),
                     linesOf(record.field("missing")),
                     record.who,
                     record.field("action"),
                     record.at};
}

} // namespace flarestock
