// SPDX-License-Identifier: MIT
//
// Any text as a parts file, as offers and as suppliers: a catalogue, or problems of which the first
// is the one that reading alone says.

#include "model/exchange/catalogue_csv.h"

#include <cassert>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size)
{
    using namespace flarestock;
    const std::string text(reinterpret_cast<const char *>(bytes), size);
    const std::string parts = "part,kind,description\nA,tool,x\n";
    const std::string suppliers = "supplier,name\nQ,x\n";
    const TextFiles all[] = {
        {{"parts/a.csv", text}},
        {{"parts/a.csv", parts}, {"suppliers.csv", suppliers}, {"offers.csv", text}},
        {{"parts/a.csv", parts}, {"suppliers.csv", text}},
    };
    for (const TextFiles &files : all) {
        const auto read = readCatalogue(files);
        const auto problems = catalogueProblems(files);
        assert(read.has_value() == problems.empty() && problems.size() <= 100);
        if (!read)
            assert(read.error().sentence() == problems.front().sentence());
    }
    return 0;
}
