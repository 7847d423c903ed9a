// SPDX-License-Identifier: MIT
//
// Worked examples out of textbooks and standards: rows of a table with source, inputs, printed
// answer and the tolerance that its rounding leaves; what the program makes of each stands in the
// test, by the row's name. A row that is marked as a misprint must not come out.
//
// Most examples were read in public re-typed copies that give inputs and answers; the printed books
// were not seen. The column `seen` says which.

#pragma once

#include "tests/fluids/table_file.h"

#include <QTest>

#include <functional>
#include <map>

namespace flarestock {

using Examples = std::map<std::string, std::function<double()>>;

inline void addExampleRows(const TableFile &table)
{
    QTest::addColumn<QString>("id");
    QTest::addColumn<double>("published");
    QTest::addColumn<double>("percent");
    QTest::addColumn<bool>("misprint");
    for (std::size_t row = 0; row < table.size(); ++row) {
        const std::string name = table.cell(row, "id") + ", " + table.cell(row, "source") + " " +
                                 table.cell(row, "place") + ": " + table.cell(row, "quantity");
        QTest::newRow(name.c_str())
            << QString::fromStdString(table.cell(row, "id")) << table.number(row, "published")
            << table.number(row, "percent") << (table.cell(row, "misprint") == "yes");
    }
}

/// Both have the same names, and no row is without its source.
inline bool areTheSame(const TableFile &table, const Examples &examples)
{
    for (std::size_t row = 0; row < table.size(); ++row) {
        if (examples.count(table.cell(row, "id")) == 0 || table.cell(row, "source").empty() ||
            table.cell(row, "seen").empty())
            return false;
    }
    return table.size() == examples.size();
}

} // namespace flarestock

/// The body of a test on the rows above.
#define COMES_OUT_AS_PRINTED(examples)                                                             \
    QFETCH(const QString, id);                                                                     \
    QFETCH(const double, published);                                                               \
    QFETCH(const double, percent);                                                                 \
    QFETCH(const bool, misprint);                                                                  \
    const double computed = examples.at(id.toStdString())();                                       \
    QVERIFY2(flarestock::isWithinPercent(computed, published, percent) != misprint,                \
             qPrintable(QString::number(computed, 'g', 12)))
