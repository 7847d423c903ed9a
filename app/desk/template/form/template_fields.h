// SPDX-License-Identifier: MIT
//
// Template fields: what a paragraph of a template says, as fields to fill in: those that belong to
// what it is now, and whatever else stands in it. A value that depends on the answers is a field
// for each condition and one for each value.

#pragma once

#include "app/desk/template/form/paragraphs.h"

#include <functional>

namespace flarestock {

enum class FieldForm : std::uint8_t {
    Text,
    Word,  ///< One of a few words.
    Texts, ///< "-6; -8": a list of texts, as cells of the catalogue have it.
    YesNo,
    Whole,     ///< A number without quotes.
    Varying,   ///< A text, or one for each condition.
    Condition, ///< "fluid is methanol"
};

[[nodiscard]] FieldForm formOf(Paragraph kind, std::string_view key, const TomlValue &table);
/// The keys of a paragraph's fields, in the order in which they are written.
[[nodiscard]] std::vector<std::string_view> fieldsOf(Paragraph kind, const TomlValue &table);
/// What may be chosen in a field of the form Word or YesNo; an empty one first where it need not be
/// said, or what stands there is none of them.
[[nodiscard]] std::vector<std::string> choicesOf(Paragraph kind, std::string_view key,
                                                 const TomlValue &table);
/// Whether a measure can stand there; elsewhere a name or a sentence does.
[[nodiscard]] bool canBeMeasured(std::string_view key);
/// Whether there are words to choose from at a key's place, beside what is typed.
[[nodiscard]] bool isOffered(Paragraph kind, std::string_view key, const TomlValue &table);
/// Whether it is a list of values with conditions.
[[nodiscard]] bool areAlternatives(const TomlValue &value);

/// title form choices value hint problem deeds deedWords offered
///
/// The key is the place, "station/2/part/0/when". `form` is "typed" or "choice", `value` a choice's
/// number; `deeds` are "vary", "more" and "fewer", as deedWords say them; `offered`: there are
/// words to choose from.
[[nodiscard]] QStringList templateFieldCells();

struct FormRead {
    const TomlValue &root;
    const std::vector<Problem> &faults;
    /// What a module is asked, by the ids of its questions with their titles.
    std::function<std::vector<std::pair<QString, QString>>(const std::string &templateId)> asked;
};
[[nodiscard]] std::vector<Row> templateFieldRows(const ParagraphAt &at, const FormRead &read);
/// What is wrong with a paragraph beside its fields; empty where nothing is.
[[nodiscard]] QString paragraphProblem(const ParagraphAt &at, const FormRead &read);

/// What a key is called on the form.
[[nodiscard]] QString fieldName(Paragraph kind, std::string_view key);
/// An example of what belongs there; may be empty.
[[nodiscard]] QString fieldHint(Paragraph kind, std::string_view key);

} // namespace flarestock
