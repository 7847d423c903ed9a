// SPDX-License-Identifier: MIT
//
// Tables beside the tests (tests/fluids/*.csv), each row with its source; and nearness in percent.

#pragma once

#include "model/fluids/table_cells.h"

#include <QFile>

#include <cmath>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace flarestock {

class TableFile {
public:
    explicit TableFile(const char *name)
    {
        QFile file(QStringLiteral(FLARESTOCK_SOURCE_DIR "/tests/fluids/") +
                   QString::fromUtf8(name));
        if (!file.open(QIODevice::ReadOnly))
            throw std::runtime_error(std::string(name) + " cannot be read");
        m_text = file.readAll().toStdString();
        m_rows = rowsOfTable(m_text);
    }

    TableFile(const TableFile &) = delete;
    TableFile &operator=(const TableFile &) = delete;

    [[nodiscard]] std::size_t size() const { return m_rows.size() - 1; } ///< Without the header.
    [[nodiscard]] std::string cell(std::size_t row, std::string_view column) const
    {
        for (std::size_t at = 0; at < m_rows.front().size(); ++at) {
            if (m_rows.front()[at] == column)
                return std::string(m_rows.at(row + 1).at(at));
        }
        throw std::runtime_error("there is no column " + std::string(column));
    }
    /// Throws where the cell is no number; QByteArray reads it in the C locale.
    [[nodiscard]] double number(std::size_t row, std::string_view column) const
    {
        bool isNumber = false;
        const std::string text = cell(row, column);
        const double value = QByteArray::fromStdString(text).toDouble(&isNumber);
        if (!isNumber)
            throw std::runtime_error("no number: " + text);
        return value;
    }

private:
    std::string m_text;
    std::vector<TableRow> m_rows;
};

inline bool isWithinPercent(double computed, double published, double percent)
{
    return std::abs(computed - published) <= std::abs(published) * percent / 100;
}

} // namespace flarestock

/// Shows what was computed where it is not near.
#define NEAR_PERCENT(computed, published, percent)                                                 \
    QVERIFY2(flarestock::isWithinPercent(computed, published, percent),                            \
             qPrintable(QString::number(computed, 'g', 12) + QStringLiteral(" against ") +         \
                        QString::number(published, 'g', 12)))
