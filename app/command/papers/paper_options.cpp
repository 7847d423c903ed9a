// SPDX-License-Identifier: MIT

#include "app/command/papers/paper_options.h"

#include <CLI/CLI.hpp>

namespace flarestock {

void addPaperOptions(CLI::App &command, PaperAsked &asked, const std::string &what)
{
    command.add_option("--pdf", asked.pdf, "writes " + what + " to this file, as a paper");
    command.add_option("--paper", asked.paper, "A4 (without it), or Letter");
    command.add_option("--csv", asked.csv, "writes " + what + " to this file, as CSV");
    command.add_option("--xlsx", asked.xlsx,
                       "writes " + what + " to this file, as a sheet for a spreadsheet program");
}

void addLabelSize(CLI::App &command, LabelFile &asked)
{
    command.add_option("--size", asked.size, "of a label, width and height in mm; 50x25");
}

} // namespace flarestock
