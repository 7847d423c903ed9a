// SPDX-License-Identifier: MIT
//
// Template sketches: what was typed and not written down, by a name of its own each, as one text
// that the settings keep from one start of the desk to the next.

#pragma once

#include "app/desk/template/template_editor.h"

namespace flarestock {

class TemplateSketches {
public:
    /// Those of a text that text() gave; none where it is another.
    [[nodiscard]] static TemplateSketches of(const QString &text);
    [[nodiscard]] QString text() const; ///< Empty: there are none.

    [[nodiscard]] const std::map<QString, TypedTemplate> &all() const { return m_all; }
    [[nodiscard]] const TypedTemplate *find(const QString &name) const;
    void keep(const QString &name, const TypedTemplate &typed);
    void forget(const QString &name) { m_all.erase(name); }
    /// For a template that is not the shop's yet.
    [[nodiscard]] QString freshName() const;

private:
    std::map<QString, TypedTemplate> m_all;
};

} // namespace flarestock
