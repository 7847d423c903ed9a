// SPDX-License-Identifier: MIT
//
// Drawn template: a template's text worked out in the shop with its own answers, for the line map
// that stands beside the text, and what of it is still open. It is done away from the window.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/workshop/workshop.h"

#include <QStringList>

#include <optional>

namespace flarestock {

struct DrawnTemplate {
    WorkedOut worked;               ///< No expansion: it cannot be drawn …
    std::optional<Problem> problem; ///< … because of this.
    QStringList open; ///< Sentences: what the catalogue does not have, what nothing closes.
};

/// `texts`: all templates of the shop, the one that is typed among them; `id` is its own.
[[nodiscard]] DrawnTemplate drawTemplate(const std::shared_ptr<const Workshop> &workshop,
                                         const TextFiles &texts, const std::string &id);

} // namespace flarestock
