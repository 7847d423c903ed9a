// SPDX-License-Identifier: MIT
//
// Label words: what stands on a label, and the code on it, which is what a hand would type: a
// part's number, a place's id, and of a lot both, as `receive --lot` takes them: "EL-10=B7".

#pragma once

#include "app/buyer/papers/paper_words.h"

namespace flarestock {

struct Label {
    std::string code;
    std::vector<std::string> lines; ///< The first is the largest.
    friend bool operator==(const Label &, const Label &) = default;
};

/// mm
struct LabelSize {
    double width = 50;
    double height = 25;
};

/// "50x25", "50 x 25 mm". Problem: none, or less than 10 or more than 300 mm.
[[nodiscard]] Result<LabelSize> labelSizeAsked(const std::string &typed);

/// The place of stock where a part lies, or that lot of it, if it is one only; else empty.
[[nodiscard]] std::string lyingIn(const std::string &part, const std::string &lot,
                                  const Ledger &ledger);

/// `place`: where it lies; empty: not said.
[[nodiscard]] Label partLabel(const Part &part, const std::string &place,
                              const Speech &speech = *plainSpeech());
/// Where a lot's facts are, and how they are said.
struct LotSource {
    const Workshop &workshop;
    const Speech &speech = *plainSpeech();
};
/// With what is known of the lot: its last day, whose car it is for.
[[nodiscard]] Label lotLabel(const Part &part, const std::string &lot, const std::string &place,
                             const LotSource &source);
[[nodiscard]] Label placeLabel(const Place &place);

/// The document that flarestock-paper reads. `made`: "2026-11-28".
[[nodiscard]] QByteArray labelDocument(const std::vector<Label> &labels, const LabelSize &size,
                                       const std::string &made);

} // namespace flarestock
