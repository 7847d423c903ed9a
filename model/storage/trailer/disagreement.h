// SPDX-License-Identifier: MIT
//
// Disagreement: where a copy and the shop cannot both be right, or somebody has to know. Each has a
// name, and words to choose from; whoever brings the copy says one for each.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace flarestock {

/// So much of a part, in its smallest units.
struct HowMuch {
    std::string part;
    std::int64_t quantity = 0;
};

/// More was taken from somewhere than lay there, in the smallest units of the part.
struct TakenTooMuch {
    std::string part;
    std::int64_t lacking = 0;
    std::int64_t taken = 0; ///< 0: nobody knows, as several hands took it between two counts.
};

struct Choice {
    std::string word;                 ///< "shop"; "as:" takes something behind it.
    std::string does;                 ///< What happens then.
    std::optional<HowMuch> lies = {}; ///< What then lies there; nothing: it is not about that.
    std::optional<HowMuch> has = {};  ///< What lies now where it would come from.
};

struct Disagreement {
    std::string name; ///< "count:BK-A@A1": the same at every look.
    std::string what; ///< A sentence without its full stop.
    std::vector<Choice> choices;
    std::string decided; ///< Empty: nobody has yet.
    std::optional<TakenTooMuch> tooMuch = {};
};

/// What disagrees and what was decided of it, collected while a copy is brought.
class Disagreements {
public:
    /// `words`: by name.
    explicit Disagreements(std::map<std::string, std::string> words) : m_words(std::move(words)) {}

    /// The word for it; where none was said the first choice, to go on looking by. Throws
    /// StorageFailure: the word is none of its choices.
    std::string decide(Disagreement one);
    /// What of that name disagrees, as far as it is known by now; nullptr: nothing.
    [[nodiscard]] Disagreement *named(const std::string &name);
    [[nodiscard]] const std::vector<Disagreement> &all() const noexcept { return m_all; }
    [[nodiscard]] bool isOpen() const noexcept;
    /// Names on which a word was said although nothing of that name disagrees.
    [[nodiscard]] std::vector<std::string> needless() const;

private:
    std::map<std::string, std::string> m_words;
    std::vector<Disagreement> m_all;
};

} // namespace flarestock
