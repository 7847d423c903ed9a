// SPDX-License-Identifier: MIT
//
// Speech: in which words, figures and lengths a paper is said. Plain it is English, with days as
// "2026-11-28", a point before decimals and lengths as the shop keeps them: so commands say it. Who
// has a language and units of his own brings a speech that knows them.
//
//   speech.say("use by %1", {speech.day(facts.useBy)})
//
// A paper's words stand in English where they are said, so that the translation's program finds
// them there. What comes from the shop (names, numbers, notes) is put into their places as it is.

#pragma once

#include "model/exact/quantity.h"

#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>

namespace flarestock {

class Speech {
public:
    Speech() = default;
    virtual ~Speech() = default;
    Speech(const Speech &) = delete;
    Speech &operator=(const Speech &) = delete;
    Speech(Speech &&) = delete;
    Speech &operator=(Speech &&) = delete;

    /// The words of a paper, with what belongs into %1, %2 …
    [[nodiscard]] std::string say(const char *english,
                                  std::initializer_list<std::string> places = {}) const;
    /// A word that comes out of a table of the model, as text(fault) does.
    [[nodiscard]] std::string word(std::string_view english) const
    {
        return own(std::string(english).c_str());
    }
    /// A sentence of the model, or a name that it made: a reason, a caution, a position of a car.
    [[nodiscard]] virtual std::string sentence(std::string_view english) const;
    /// A text of ours with its decimals and days: "45.2–54.2 N·m", "to be done by 2026-12-12".
    [[nodiscard]] virtual std::string figures(std::string_view plain) const;
    /// "2026-11-28"; the text itself where it is no day.
    [[nodiscard]] virtual std::string day(std::string_view iso) const;
    /// Every digit of it.
    [[nodiscard]] virtual std::string number(const Decimal &number) const;
    /// "5 ft 6 in", "3"
    [[nodiscard]] virtual std::string amount(const Quantity &quantity) const;

protected:
    /// The words of papers, still with their %1.
    [[nodiscard]] virtual std::string own(const char *english) const;
};

using Speaking = std::shared_ptr<const Speech>;
/// As commands say it.
[[nodiscard]] const Speaking &plainSpeech();

} // namespace flarestock
