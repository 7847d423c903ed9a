// SPDX-License-Identifier: MIT
//
// Any bytes: a table whose rows are as wide as its header, or a problem with its place.

#include "model/exchange/csv.h"

#include <cassert>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size)
{
    using namespace flarestock;
    const std::string text(reinterpret_cast<const char *>(bytes), size);
    const auto table = readCsv(text, "f.csv");
    if (!table) {
        assert(table.error().line >= 1 && table.error().column >= 1);
        assert(!table.error().text().empty());
        return 0;
    }
    assert(!table->header().empty());
    for (std::size_t i = 0; i < table->recordCount(); ++i) {
        const auto record = table->record(i);
        assert(record.size() == table->header().size());
        for (const CsvField &field : record) {
            assert(field.begin <= text.size());
            const Problem end = table->at(field, {"w", ""}, field.text.size());
            assert(end.line >= 1 && end.column >= 1);
        }
    }
    return 0;
}
