// SPDX-License-Identifier: MIT
//
// Templates on screen: what a test stands on that works in the real window on the templates of a
// demo shop, with the keyboard only.

#pragma once

#include "parts_on_screen.h"

namespace flarestock {

class TemplatesOnScreen : protected PartsOnScreen {
protected:
    [[nodiscard]] TemplateDesk &templates() const { return *m_desk->templates(); }
    [[nodiscard]] TemplateEditor &editor() const { return *templates().editor(); }
    /// The list of templates, with that one in hand.
    void choose(const QString &title)
    {
        key(Qt::Key_T, Qt::ControlModifier);
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("templateLine"));
        const Rows &all = *templates().choices();
        QVERIFY(all.count() > 10);
        for (int row = 0; row < all.count(); ++row) {
            if (all.cell(row, QStringLiteral("title")).toString() == title)
                break;
            key(Qt::Key_Down);
        }
        const int at = item("templateList")->property("currentIndex").toInt();
        QCOMPARE(all.cell(at, QStringLiteral("title")).toString(), title);
    }
    void openTemplate(const QString &title)
    {
        choose(title);
        key(Qt::Key_Return);
        awaitDrawn();
    }
    void awaitDrawn()
    {
        QTRY_VERIFY(editor().isOpen());
        QTRY_VERIFY_WITH_TIMEOUT(!editor().isDrawing(), 30000);
    }
    void awaitTemplate() { QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 30000); }
    [[nodiscard]] QString text() const
    {
        return item("templateText") ? item("templateText")->property("text").toString() : QString();
    }
    /// The cursor of the text goes behind the first of these words.
    void goBehind(const QString &words)
    {
        QTRY_VERIFY(item("templateText") != nullptr);
        const qsizetype at = text().indexOf(words);
        QVERIFY2(at >= 0, qPrintable(words));
        item("templateText")->forceActiveFocus(Qt::TabFocusReason);
        item("templateText")->setProperty("cursorPosition", static_cast<int>(at + words.size()));
    }
    void typeLines(const QString &lines)
    {
        for (const QString &line : lines.split(u'\n')) {
            type(line.toLatin1().constData());
            key(Qt::Key_Return);
        }
    }
    [[nodiscard]] int stations() const { return platesBut(false); }
    void pictureOfTemplates(const char *name, const QSize &size = QSize(1440, 900)) const
    {
        QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
        QVERIFY(pictureOf(*m_window, size)
                    .save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/templates-%1.png")
                              .arg(QString::fromLatin1(name))));
    }

private:
    [[nodiscard]] int platesBut(bool echo) const
    {
        const auto &plates = editor().map()->layout().plates;
        return static_cast<int>(
            std::count_if(plates.begin(), plates.end(),
                          [echo](const MapPlate &one) { return one.echo == echo; }));
    }
};

} // namespace flarestock
