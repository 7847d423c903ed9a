// SPDX-License-Identifier: MIT
//
// expand(): template, answers and catalogue become a bill. A pure function: the same request gives
// the same expansion, whatever the order of the catalogue.

#pragma once

#include "model/joints/closing.h"
#include "model/systems/expansion.h"

namespace flarestock {

struct ExpandRequest {
    std::string templateId;
    std::shared_ptr<const TemplateBook> book;
    const Catalogue *catalogue = nullptr;
    const JointCloser *closer = nullptr; ///< Of the same catalogue.
    const Shelf *shelf = nullptr;        ///< What is free; choosing "from the shelf" looks here.
    Answers answers;                     ///< Those given; the rest keep their defaults.
    Picks picks;
    Preference preference = Preference::Shelf;
    int copies = 1; ///< The same system so many times; 1 to 1000.
    /// The joints share the shelf so that they are the best together (model/joints/sharing), not
    /// one after the other in flow order.
    bool together = false;
    /// Then: by joint, as a pick says it, ways that it has where no others are better together.
    Picks waysWished;
    /// So long may be searched where joints stand in each other's way.
    std::chrono::milliseconds searchWithin = std::chrono::seconds(5);
};

/// Problem: unknown template; an answer to no question, or not one of its choices, or outside its
/// bounds; a pick of an unknown part or slot; templates nested in a circle (the path is named);
/// or deeper than 200; more than 100,000 stations; a text of the template that its answers make
/// unreadable; a quantity beyond what a journal can hold.
[[nodiscard]] Result<Expansion> expand(const ExpandRequest &request);

/// The complete answers of a template: those given, checked and spelt as the template does, and
/// the defaults of the rest, fixed or worked out without a catalogue; an empty answer to what can
/// be worked out counts as not given. Problem: as above.
[[nodiscard]] Result<Answers> completed(const Template &form, const Answers &given);

} // namespace flarestock
