// SPDX-License-Identifier: MIT
//
// Sentences: what the model says, in the language that the desk speaks. The model knows no language
// but English and makes its sentences out of pieces; a table has each form that they take, with
// places for what changes, and what stands in a place is looked for itself.
//
//   The level is worth %1; the line takes %2.	Der Höhenunterschied bringt %1; die Leitung nimmt
//   %2.
//
// A text that no line has is looked for sentence by sentence, and stays English where none has it.

#pragma once

#include <QString>
#include <QStringList>

#include <string_view>

namespace flarestock {

/// From now on by these tables (resources or files of `English<TAB>other`); none: English. `words`
/// are tables of words that are only looked for as a whole. May be called from any thread.
void setSentences(const QStringList &tables, const QStringList &words);

/// The model's sentence or word in the language of the tables. May be called from any thread.
[[nodiscard]] QString inWords(const QString &english);
/// The same of UTF-8.
[[nodiscard]] QString inWords(std::string_view english);

} // namespace flarestock
