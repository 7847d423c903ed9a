// SPDX-License-Identifier: MIT

#include "app/desk/plot/pressure/pressure_panels.h"

#include "model/fluids/measure.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr double PanelsApart = 16;
constexpr double ColumnLeast = 58; ///< For a drop in words, and a finger with its neighbour.
constexpr double RightMargin = 26; ///< For half of the last station's name.
constexpr double MarkHeight = 26;  ///< Least height between two marks of a scale.
constexpr double SmallBar = 20e3;  ///< Below so many pascal a metric scale counts mbar.

/// What goes on from a regulator has the pressure's own scale.
bool isOfSamePanel(PressurePart::Side before, PressurePart::Side side)
{
    return side == PressurePart::Side::Onwards && before == PressurePart::Side::Pressure;
}

std::vector<PressurePanel> partsAsPanels(const PressureLine &line)
{
    std::vector<PressurePanel> panels;
    for (const PressurePart &part : line.parts) {
        if (panels.empty() || !isOfSamePanel(panels.back().side, part.side)) {
            panels.emplace_back();
            panels.back().side = part.side;
        }
        PressurePanel &panel = panels.back();
        for (const PressureStep &step : part.steps)
            panel.columns.push_back({&step, 0, 0});
        panel.limits.insert(panel.limits.end(), part.limits.begin(), part.limits.end());
    }
    return panels;
}

void placeColumns(std::vector<PressurePanel> &panels, double width)
{
    std::size_t count = 0;
    double allM = 0;
    for (const PressurePanel &panel : panels) {
        count += panel.columns.size();
        for (const PressureColumn &column : panel.columns)
            allM += column.step->lengthM;
    }
    const auto number = static_cast<double>(panels.size());
    const double room = width - RightMargin - number * PanelGutter - (number - 1) * PanelsApart;
    const double least = std::min(ColumnLeast, room / static_cast<double>(count));
    const double rest = room - least * static_cast<double>(count);
    double x = 0;
    for (PressurePanel &panel : panels) {
        x += PanelGutter;
        for (PressureColumn &column : panel.columns) {
            const double share =
                allM > 0 ? column.step->lengthM / allM : 1 / static_cast<double>(count);
            column.left = x;
            x += least + share * rest;
            column.right = x;
        }
        x += PanelsApart;
    }
}

void takeUnit(PressurePanel &panel, double spanPa, Units units)
{
    const char *unit = units == Units::Inch ? "psi" : spanPa < SmallBar ? "mbar" : "bar";
    panel.unit = QString::fromLatin1(unit);
    panel.unitPa = 1 / in({Dimension::Pressure, 1, {}}, unit);
}

void takeScale(PressurePanel &panel, Units units)
{
    double least = 0; // The zero line is always in the picture.
    double most = 0;
    for (const PressureColumn &column : panel.columns)
        for (const PressureStep::Along &point : column.step->line) {
            least = std::min(least, point.pa);
            most = std::max(most, point.pa);
        }
    for (const PressureLimit &limit : panel.limits) {
        const bool isRange = limit.what == PressureLimit::What::LeastSet ||
                             limit.what == PressureLimit::What::MostSet;
        if (isRange) // They are said; drawn they would leave the line no height.
            continue;
        least = std::min(least, limit.pa);
        most = std::max(most, limit.pa);
    }
    takeUnit(panel, most - least, units);
    const int marks = std::clamp(static_cast<int>((panel.bottom - panel.top) / MarkHeight), 3, 8);
    panel.scale = roundScale(least / panel.unitPa, most / panel.unitPa, marks);
}

} // namespace

std::vector<PressurePanel> pressurePanels(const PressureLine &line, const PanelSpace &space,
                                          Units units)
{
    std::vector<PressurePanel> panels = partsAsPanels(line);
    placeColumns(panels, space.width);
    for (PressurePanel &panel : panels) {
        panel.top = space.top;
        panel.bottom = space.bottom;
        takeScale(panel, units);
    }
    return panels;
}

} // namespace flarestock
