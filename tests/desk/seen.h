// SPDX-License-Identifier: MIT
//
// Seen: what is on the screen, looked up as a person would: only what is visible.

#pragma once

#include <QQuickItem>
#include <QQuickWindow>

#include <vector>

namespace flarestock {

/// All visible items, parents before children. Delegates belong to their view, not to the window,
/// so children are walked by the scene.
inline std::vector<QQuickItem *> allSeen(const QQuickWindow &window)
{
    std::vector<QQuickItem *> seen = {window.contentItem()};
    for (std::size_t at = 0; at < seen.size(); ++at) {
        for (QQuickItem *child : seen[at]->childItems()) {
            if (child->isVisible())
                seen.push_back(child);
        }
    }
    return seen;
}

/// A visible item of that name; nullptr where there is none.
inline QQuickItem *seen(const QQuickWindow &window, const char *name)
{
    for (QQuickItem *item : allSeen(window)) {
        if (item->objectName() == QLatin1String(name))
            return item;
    }
    return nullptr;
}

/// The name of what has the focus; empty where nothing has.
inline QString focusName(const QQuickWindow &window)
{
    const QQuickItem *focused = window.activeFocusItem();
    return focused == nullptr ? QString() : focused->objectName();
}

} // namespace flarestock
