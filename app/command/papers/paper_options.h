// SPDX-License-Identifier: MIT
//
// Paper options: the words by which a command is told to which files it writes what it says.

#pragma once

#include "app/buyer/papers/label_file.h"
#include "app/command/command.h"
#include "app/sheet/paper_files.h"

namespace flarestock {

/// --pdf, --paper, --csv and --xlsx; `what` is what stands in them: "the order's lines".
void addPaperOptions(CLI::App &command, PaperAsked &asked, const std::string &what);
/// --size, of a label.
void addLabelSize(CLI::App &command, LabelFile &asked);

} // namespace flarestock
