// SPDX-License-Identifier: MIT
//
// ScanEar: hears a barcode scanner, which types like a keyboard: faster than any hand, with Enter
// at the end. Whatever has the keyboard then, the code is told as one word, the Enter goes to
// nobody, a field into which the letters went is as it was before, and what takes no words (a
// button, a list) gets no letter of it but the first.

#pragma once

#include <QElapsedTimer>
#include <QPointer>
#include <QQuickItem>
#include <QString>

class QKeyEvent;
class QQuickWindow;

namespace flarestock {

class ScanEar : public QObject {
    Q_OBJECT
public:
    /// Milliseconds between two letters beyond which a hand has typed them. Scanners take 1 to 20,
    /// quick hands 60 and more: common practice, no source.
    static constexpr quint64 GapMost = 35;
    static constexpr int LettersLeast = 2; ///< A bin's label: "H4".

    explicit ScanEar(QObject *parent = nullptr) : QObject(parent) { m_clock.start(); }

    void listenTo(QQuickWindow &window);
    /// Whether codes are told also where words are written; while they are not, they are letters
    /// there like any others.
    void setTelling(bool telling) { m_isTelling = telling; }

    bool eventFilter(QObject *watched, QEvent *event) override;

Q_SIGNALS:
    void heard(const QString &code);

private:
    [[nodiscard]] bool hear(const QKeyEvent &key);
    void beginAnew();
    [[nodiscard]] bool isWritten() const;
    void putBack();

    QPointer<QQuickWindow> m_window;
    bool m_isTelling = true;
    QElapsedTimer m_clock; ///< For keys that do not say when they were pressed.
    QString m_letters;
    quint64 m_last = 0;           ///< When the last of them came, in milliseconds.
    QPointer<QQuickItem> m_field; ///< Into which they went; nothing where it takes none.
    const char *m_words = "text"; ///< Its property: a list that is typed on has "typed".
    QString m_before;             ///< What stood there.
};

} // namespace flarestock
