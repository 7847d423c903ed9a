// SPDX-License-Identifier: MIT
//
// Text read: a template's text as far as it can be read. Where it is no TOML there is no document;
// where it is, each fault that the reader of templates finds has its line.

#pragma once

#include "model/exchange/toml/document.h"
#include "model/systems/template.h"

#include <QString>

#include <memory>

namespace flarestock {

struct TextRead {
    std::shared_ptr<const std::string> text;      ///< The document points into it.
    std::shared_ptr<const TomlDocument> document; ///< Nothing: it is no TOML.
    std::shared_ptr<const Template> form;         ///< Nothing: there are faults.
    std::vector<Problem> faults;                  ///< By line.

    [[nodiscard]] bool isWhole() const { return form != nullptr; }
    /// A text that stands at the top, "id" or "title"; empty where it is not there.
    [[nodiscard]] std::string top(std::string_view key) const;
};

/// `file`: what it is called in a fault.
[[nodiscard]] TextRead readText(std::string text, const std::string &file);

/// "Line 12: there is no station "pomp" here. Did you mean "pump"?"
[[nodiscard]] QString saidFault(const Problem &fault);

} // namespace flarestock
