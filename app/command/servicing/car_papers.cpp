// SPDX-License-Identifier: MIT

#include "app/command/servicing/car_papers.h"

#include "app/workshop/made_up.h"

#include <QJsonDocument>

namespace flarestock {

namespace {

/// What would stand on it, for a terminal.
std::string toldOf(const PaperWords &paper)
{
    std::string told;
    for (const auto &row : paper.rows) {
        for (const std::string &cell : row) {
            std::string line = cell;
            if (const auto at = line.find('\n'); at != std::string::npos)
                line.replace(at, 1, ": ");
            told += "  " + line;
        }
        told += "\n";
    }
    return told + paper.note + "\n" + paper.foot + "\n";
}

} // namespace

void answerCarPaper(CarPaperKind kind, const CarPaperAsked &asked, OpenShop &shop)
{
    const auto garage = Garage::of(*shop.workshop, shop.file);
    if (!garage)
        return shop.outcome.refuse(garage.error());
    const auto paper = carPaper(kind, asked, {*garage, shop.file, dayOf(shop.by.at)});
    if (!paper)
        return shop.outcome.refuse(paper.error());
    if (!asked.pdf.empty()) {
        if (const auto written = writeCarPaper(asked.pdf, *paper); !written)
            return shop.outcome.refuse(written.error());
    }
    if (shop.asked.json)
        return shop.outcome.print(QJsonDocument::fromJson(paperDocument(*paper)).object());
    shop.outcome.out += asked.pdf.empty() ? toldOf(*paper) : "written: " + asked.pdf + "\n";
}

} // namespace flarestock
