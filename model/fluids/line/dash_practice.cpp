// SPDX-License-Identifier: MIT

#include "model/fluids/line/dash_practice.h"

#include "model/fluids/bounds.h"
#include "model/fluids/table_cells.h"

namespace flarestock {

namespace embedded {
extern const std::string_view dashPracticeCsv; // model/fluids/data/dash_practice.csv
}

namespace {

/// Of a usual size so many sizes up: -4 -6 -8 -10 -12 -16.
int sizesUp(int dash, int sizes)
{
    for (; sizes > 0; --sizes)
        dash += dash == 12 ? 4 : 2;
    return dash;
}

} // namespace

std::string DashPractice::text() const
{
    std::string said = "-" + std::to_string(dash);
    if (mostDash != dash)
        said += " to -" + std::to_string(mostDash);
    said += alcohol ? " (alcohol one to two sizes over gasoline's, which is good to about "
                    : " (to about ";
    said += shortNumber(horsepower);
    if (orHorsepower > horsepower)
        said += " to " + shortNumber(orHorsepower);
    return said + " hp)";
}

std::optional<DashPractice> practiceOf(Fluid fluid, double horsepower)
{
    static const auto Rows = rowsOfTable(embedded::dashPracticeCsv);
    const bool alcohol = fluid == Fluid::E85 || fluid == Fluid::Methanol;
    if (fluid != Fluid::Gasoline && !alcohol)
        return std::nullopt;
    for (auto row = Rows.begin() + 1; row != Rows.end(); ++row) {
        if (horsepower > numberIn(row->at(2)))
            continue;
        DashPractice practice;
        const int dash = static_cast<int>(-numberIn(row->at(0)));
        practice.dash = alcohol ? sizesUp(dash, 1) : dash;
        practice.mostDash = alcohol ? sizesUp(dash, 2) : dash;
        practice.horsepower = numberIn(row->at(1));
        practice.orHorsepower = numberIn(row->at(2));
        practice.alcohol = alcohol;
        practice.status = row->at(3);
        practice.source = row->at(4);
        return practice;
    }
    return std::nullopt;
}

} // namespace flarestock
