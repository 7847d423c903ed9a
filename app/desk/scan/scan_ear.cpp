// SPDX-License-Identifier: MIT

#include "app/desk/scan/scan_ear.h"

#include <QKeyEvent>
#include <QQuickWindow>

namespace flarestock {

void ScanEar::listenTo(QQuickWindow &window)
{
    m_window = &window;
    window.installEventFilter(this);
}

bool ScanEar::eventFilter(QObject *, QEvent *event)
{
    return event->type() == QEvent::KeyPress && hear(*static_cast<QKeyEvent *>(event));
}

/// What has the keyboard before the first letter comes.
void ScanEar::beginAnew()
{
    m_letters.clear();
    QQuickItem *focused = m_window ? m_window->activeFocusItem() : nullptr;
    const bool isField = focused != nullptr && focused->property("cursorPosition").isValid();
    m_words = isField ? "text" : "typed";
    while (focused != nullptr && !focused->property(m_words).isValid())
        focused = focused->parentItem(); // A line of a list has the keyboard for it.
    m_field = focused;
    m_before = focused != nullptr ? focused->property(m_words).toString() : QString();
}

/// Where codes are not told, who writes words there gets it.
bool ScanEar::isWritten() const
{
    return !m_isTelling && m_field;
}

void ScanEar::putBack()
{
    if (m_field)
        m_field->setProperty(m_words, m_before);
}

/// Whether the key goes to nobody else.
bool ScanEar::hear(const QKeyEvent &key)
{
    const quint64 at =
        key.timestamp() != 0 ? key.timestamp() : static_cast<quint64>(m_clock.elapsed());
    const bool isQuick = at - m_last <= GapMost;
    if (key.key() == Qt::Key_Shift) { // On the way to a capital; of one that comes later nothing.
        m_last = isQuick ? at : m_last;
        return false;
    }
    m_last = at;
    if (key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) {
        const QString code = m_letters.trimmed();
        const bool isCode = isQuick && code.size() >= LettersLeast;
        m_letters.clear();
        if (!isCode || isWritten())
            return false;
        putBack();
        Q_EMIT heard(code);
        return true;
    }
    const bool withKeys = (key.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) != 0;
    const QString text = key.text();
    if (withKeys || key.isAutoRepeat() || text.size() != 1 || !text.front().isPrint()) {
        m_letters.clear();
        return false;
    }
    if (!isQuick || m_letters.isEmpty())
        beginAnew();
    m_letters += text;
    // A blank within a code would press the button that has the keyboard, a minus count a line.
    return m_letters.size() > 1 && !m_field;
}

} // namespace flarestock
