// SPDX-License-Identifier: MIT
//
// Any text: a template whose every value can be worked out with its default answers, or a problem
// with its place. The same text is also read as builds and as a shop.

#include "model/exchange/shop_toml.h"
#include "model/exchange/template_toml.h"

#include <cassert>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size)
{
    using namespace flarestock;
    const std::string text(reinterpret_cast<const char *>(bytes), size);
    if (const auto builds = readBuilds(text, "f.toml"))
        assert(writeBuilds(readBuilds(writeBuilds(*builds), "g").value()) == writeBuilds(*builds));
    (void)readShop(text, "f.toml");
    (void)readTemplates({{"templates/f.toml", text}});
    const auto read = readTemplate(text, "f.toml");
    if (!read) {
        assert(read.error().line >= 1 && read.error().column >= 1);
        assert(!read.error().text().empty());
        return 0;
    }
    Answers answers;
    for (const Question &question : (*read)->questions)
        answers[question.id] = question.standard;
    for (const Station &station : (*read)->stations) {
        (void)station.when.holds(answers);
        for (const Varying *varying : {&station.demand.part, &station.demand.micron,
                                       &station.demand.flow, &station.demand.pressure})
            (void)varying->with(answers);
    }
    for (const Run &run : (*read)->runs) {
        (void)run.when.holds(answers);
        for (const Varying *varying : {&run.length, &run.dash, &run.tubing, &run.construction})
            (void)varying->with(answers);
    }
    return 0;
}
