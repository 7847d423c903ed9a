// SPDX-License-Identifier: MIT
//
// Any text: a condition that prints as one that prints the same, or a problem with its column.

#include "model/systems/condition.h"

#include <cassert>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size)
{
    using namespace flarestock;
    const std::string text(reinterpret_cast<const char *>(bytes), size);
    const auto read = Condition::parse(text);
    if (!read) {
        assert(read.error().column >= 1 && read.error().column <= size + 1);
        return 0;
    }
    const auto again = Condition::parse(read->text());
    assert(again && again->text() == read->text());
    Answers answers;
    for (const Condition::Mention &mention : read->mentions()) {
        assert(mention.values.size() == mention.valueColumns.size());
        answers[mention.question] = mention.values.front();
    }
    assert(read->holds(answers) == again->holds(answers));
    return 0;
}
