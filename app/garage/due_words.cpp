// SPDX-License-Identifier: MIT

#include "app/garage/due_words.h"

#include "app/stockroom/asked.h"
#include "model/exchange/papers/order_csv.h"

namespace flarestock {

namespace {

std::string joined(const std::vector<std::string> &all, const char *between)
{
    std::string text;
    for (const std::string &one : all)
        text += (text.empty() ? "" : between) + one;
    return text;
}

} // namespace

std::string_view doText(Work work) noexcept
{
    return work == Work::Washed ? "wash" : work == Work::Inspected ? "inspect" : "replace";
}

std::string partsText(const DueLine &line)
{
    std::string text;
    for (const DuePart &one : line.parts)
        text += (text.empty() ? "" : "; ") + one.part->number + " " + spoken(one.need, *one.part) +
                (one.shortBy() > 0 ? ", " + spoken(one.shortBy(), *one.part) + " short" : "");
    return text;
}

std::string whyText(const DueWork &work)
{
    std::string text = joined(work.why, "; ");
    if (!work.stops.empty())
        text += (text.empty() ? "" : "; ") + ("stops " + joined(work.stops, ", "));
    return text;
}

std::string dueNeeds(const std::vector<DueLine> &lines)
{
    std::string table = "part,quantity,day,for\n";
    for (const DueLine &line : lines) {
        for (const DuePart &one : line.parts) {
            if (one.shortBy() > 0)
                table += csvCell(one.part->number) + "," + amountText(one.shortBy(), *one.part) +
                         "," + line.by + "," + csvCell(line.car) + "\n";
        }
    }
    return table;
}

} // namespace flarestock
