// SPDX-License-Identifier: MIT

#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/fact_cells.h"
#include "model/exchange/catalogue/part_columns.h"

#include <algorithm>
#include <tuple>

namespace flarestock {

namespace {

class CurveCell {
public:
    CurveCell(const SheetRow &row, bool electric) : m_row(row), m_electric(electric) {}

    std::optional<PumpFacts::Point> point(const SheetRow::Item &item) const
    {
        const std::size_t at = item.text.find('@');
        const std::size_t equals = item.text.find('=');
        if (equals == std::string_view::npos || (at != std::string_view::npos && at > equals) ||
            (at == std::string_view::npos && m_electric)) {
            wrong({"the point \"" + std::string(item.text) + "\" of the curve cannot be read",
                   "Write for example 3 bar @ 13.5 V = 255 L/h."},
                  item.within);
            return std::nullopt;
        }
        const auto pressure = size(item, 0, std::min(at, equals), Dimension::Pressure);
        const auto flow = size(item, equals + 1, item.text.size(), Dimension::VolumeFlow);
        std::optional<double> volts = 0.0;
        if (at != std::string_view::npos)
            volts = size(item, at + 1, equals, Dimension::Voltage);
        if (!pressure || !flow || !volts)
            return std::nullopt;
        return PumpFacts::Point{*pressure / 1000, *volts, *flow * 3.6e6};
    }

    void wrong(TextFault fault, std::size_t within) const
    {
        m_row.wrong(column::Curve, std::move(fault), within);
    }

private:
    [[nodiscard]] std::optional<double> size(const SheetRow::Item &item, std::size_t from,
                                             std::size_t to, Dimension dimension) const
    {
        const std::string_view text = trimmed(item.text.substr(from, to - from));
        const std::size_t skipped =
            text.empty() ? from : static_cast<std::size_t>(text.data() - item.text.data());
        const auto read = Measure::parse(text, dimension);
        if (!read) {
            m_row.refused(column::Curve, read.error(), item.within + skipped);
            return std::nullopt;
        }
        if (read->si < 0) {
            wrong({'"' + std::string(text) + "\" is below zero", "Correct the number."},
                  item.within + skipped);
            return std::nullopt;
        }
        return read->si;
    }

    const SheetRow &m_row;
    bool m_electric;
};

} // namespace

std::vector<PumpFacts::Point> readCurve(const SheetRow &row, bool electric)
{
    const auto key = [](const PumpFacts::Point &point) {
        return std::tuple(point.volts, point.pressureKpa);
    };
    const CurveCell cell(row, electric);
    std::vector<PumpFacts::Point> curve;
    for (const SheetRow::Item &item : row.items(column::Curve)) {
        const auto point = cell.point(item);
        if (!point)
            continue;
        const bool isThere = std::any_of(curve.begin(), curve.end(), [&](const auto &other) {
            return key(other) == key(*point);
        });
        if (isThere)
            cell.wrong({"this pressure and voltage stand twice in the curve", "Remove one."},
                       item.within);
        else
            curve.push_back(*point);
    }
    std::sort(curve.begin(), curve.end(),
              [&key](const auto &a, const auto &b) { return key(a) < key(b); });
    return curve;
}

} // namespace flarestock
