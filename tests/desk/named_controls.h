// SPDX-License-Identifier: MIT
//
// Named controls: what a screen reader is told of a window: every control that a person works with
// has a name.

#pragma once

#include <QAccessible>
#include <QStringList>
#include <QtGui/private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

namespace flarestock {

/// Under the offscreen platform nothing listens, and controls would keep their names to themselves.
inline void listenAsAScreenReader()
{
    QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(true);
}

inline bool needsAName(QAccessible::Role role)
{
    switch (role) {
    case QAccessible::Button:
    case QAccessible::EditableText:
    case QAccessible::ComboBox:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::PageTab:
    case QAccessible::List:
    case QAccessible::ListItem:
    case QAccessible::Table:
    case QAccessible::Row:
    case QAccessible::Pane:
    case QAccessible::Graphic:
        return true;
    default:
        return false;
    }
}

/// Counts the controls below, and lists those without a name.
inline void visit(QAccessibleInterface *node, int &controls, QStringList &nameless)
{
    if (node == nullptr)
        return;
    if (needsAName(node->role())) {
        ++controls;
        const QString name = node->text(QAccessible::Name);
        if (name.isEmpty() && !node->state().invisible)
            nameless.append(QString(QString::number(node->role()) + u' ' +
                                    (node->object() ? node->object()->objectName() : QString())));
    }
    for (int at = 0; at < node->childCount(); ++at)
        visit(node->child(at), controls, nameless);
}

} // namespace flarestock
