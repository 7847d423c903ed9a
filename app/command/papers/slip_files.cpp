// SPDX-License-Identifier: MIT

#include "app/command/papers/slip_files.h"

#include "app/stockroom/asked.h"

#include <CLI/CLI.hpp>

namespace flarestock {

namespace {

std::vector<Label> labelsOf(const SlipOfReceipt &came, const Workshop &workshop)
{
    std::vector<Label> labels;
    for (const SlipOfReceipt::Row &row : came.rows)
        labels.push_back(row.lot.empty() ? partLabel(*row.part, row.to)
                                         : lotLabel(*row.part, row.lot, row.to, {workshop}));
    return labels;
}

/// It is booked; only its papers are not written.
Problem afterwards(Problem problem)
{
    problem.remedy += " What came is booked in.";
    return problem;
}

} // namespace

void addSlipOptions(CLI::App &command, SlipAsked &asked)
{
    addPaperOptions(command, asked, "what came in");
    command.add_option("--labels", asked.labels, "writes a label for each piece to this file");
    addLabelSize(command, asked);
}

Result<void> canWriteSlip(const SlipAsked &asked, const OpenShop &shop)
{
    if (auto can = canWritePapers(asked, shop.file); !can)
        return can;
    return canWriteLabels(asked);
}

void writeSlip(const SlipAsked &asked, SlipOfReceipt came, OpenShop &shop)
{
    if (shop.outcome.ending != Ending::Done)
        return; // It was refused.
    const auto today = dayAsked({}, shop.by.at);
    if (!today)
        return shop.outcome.refuse(today.error());
    came.day = *today;
    const Workshop &workshop = *shop.workshop;
    const auto written = writePapers(
        asked, shop.file,
        {[&](PaperWords paper) { return receivingSlip(came, workshop, std::move(paper)); },
         [&] { return receiptRows(came, workshop); }});
    if (!written)
        return shop.outcome.refuse(afterwards(written.error()));
    if (asked.labels.empty() || came.rows.empty())
        return;
    const auto now = Workshop::read(shop.file); // With what was said of the lots.
    if (!now)
        return shop.outcome.refuse(afterwards(now.error()));
    const auto done = writeLabels(asked, labelsOf(came, **now), shop.by.at);
    if (!done)
        shop.outcome.refuse(afterwards(done.error()));
}

} // namespace flarestock
