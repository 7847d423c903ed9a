// SPDX-License-Identifier: MIT
//
// Desk that ends: what a test stands on that ends a desk in the midst of what is filled in on it,
// and starts another one on a shop like it.

#pragma once

#include "stock_on_screen.h"

namespace flarestock {

/// A desk on a demo shop of its own, with what another one has left behind.
class DeskThatEnds : public StockOnScreen {
public:
    void start(const QString &left)
    {
        open();
        QObject::connect(&unwritten(), &Unwritten::kept, m_desk.get(),
                         [this](const QString &, const QString &text) { is = text; });
        unwritten().setShop(m_file, left);
        is = left;
        showStock();
    }
    /// As it lies there when the process is gone.
    QString left()
    {
        QTest::qWait(Unwritten::AfterMs * 2);
        return is;
    }
    [[nodiscard]] Unwritten &unwritten() const { return m_desk->pen()->unwritten(); }
    [[nodiscard]] Desk &desk() const { return *m_desk; }
    /// Orders something; its number.
    [[nodiscard]] QString ordered()
    {
        key(Qt::Key_3, Qt::AltModifier);
        const auto await = [this] {
            awaitWritten();
            return QTest::qWaitFor([this] { return !m_desk->buying()->isLoading(); }, 60000);
        };
        OrdersPage &orders = *m_desk->buying()->orders();
        if (!await() || !orders.begin(QStringLiteral("new")))
            return {};
        orders.form()->finish({{QStringLiteral("supplier"), 5},
                               {QStringLiteral("part"), QStringLiteral("AD-6-6")},
                               {QStringLiteral("quantity"), QStringLiteral("12")}});
        if (!await() || !orders.begin(QStringLiteral("place")))
            return {};
        orders.form()->finish({});
        return await() ? orders.selected() : QString();
    }
    [[nodiscard]] BoxPage &box() const { return *m_desk->buying()->box(); }
    [[nodiscard]] CardEditor &card() const { return *m_desk->parts()->editor(); }

    using StockOnScreen::awaitWritten;
    using StockOnScreen::item;
    using StockOnScreen::key;
    using StockOnScreen::lies;
    using StockOnScreen::m_folder;
    using StockOnScreen::press;
    using StockOnScreen::take;
    using StockOnScreen::type;
    using StockOnScreen::words;
    using StockOnScreen::write;

private:
    QString is;
};

} // namespace flarestock
