// SPDX-License-Identifier: MIT
//
// Parts on screen: what a test stands on that works in the real window on the card index of a demo
// shop, with the keyboard only.

#pragma once

#include "stock_on_screen.h"

namespace flarestock {

class PartsOnScreen : protected StockOnScreen {
protected:
    /// The card index, with its cards.
    void showParts()
    {
        key(Qt::Key_6, Qt::AltModifier);
        QTRY_VERIFY(item("cardList") != nullptr);
        QTRY_VERIFY_WITH_TIMEOUT(parts().rows()->count() > 100, 30000);
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("cardTab"));
    }
    /// Brings a card into hand as one would: find it, Enter.
    void takeCard(const char *number)
    {
        key(Qt::Key_F, Qt::ControlModifier);
        key(Qt::Key_A, Qt::ControlModifier);
        type(number);
        QTRY_COMPARE(parts().selected(), QString::fromLatin1(number));
        key(Qt::Key_Return);
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("cardTab"));
    }
    void awaitCards()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 30000);
        QTRY_VERIFY_WITH_TIMEOUT(!parts().isLoading(), 30000);
    }
    [[nodiscard]] PartsDesk &parts() const { return *m_desk->parts(); }
    [[nodiscard]] std::shared_ptr<const Workshop> inFile() const
    {
        return Workshop::open(m_file.toStdString()).value();
    }
    void pictureOfParts(const char *name, const QSize &size = QSize(1440, 900)) const
    {
        QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
        QVERIFY(pictureOf(*m_window, size)
                    .save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/parts-%1.png")
                              .arg(QString::fromLatin1(name))));
    }
};

} // namespace flarestock
