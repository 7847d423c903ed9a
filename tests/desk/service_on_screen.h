// SPDX-License-Identifier: MIT
//
// Service on screen: what a test stands on that works in the real window on the cars of a demo
// shop: the fuel system of one car is issued to it, and it has run at two events since.

#pragma once

#include "app/garage/at_work.h"
#include "app/garage/due_list.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "stock_on_screen.h"

namespace flarestock {

class ServiceOnScreen : public StockOnScreen {
protected:
    static constexpr const char *Element = "coupe-fuel/prefilter.element";

    void openWithCars()
    {
        open();
        QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
        m_desk->handing()->reserve();
        awaitPen();
        m_desk->handing()->issue(true);
        awaitPen();
        carRan(3, "test day");
        carRan(4, "second test day");
        (void)pictureOf(*m_window, QSize(1440, 900));
    }
    /// The area of service, with what is due.
    void showService()
    {
        key(Qt::Key_5, Qt::AltModifier);
        QTRY_VERIFY(item("dueList") != nullptr);
        awaitRead();
    }
    void awaitPen() { QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 20000); }
    void awaitRead()
    {
        awaitPen();
        QTRY_VERIFY_WITH_TIMEOUT(!service().isLoading(), 20000);
    }
    /// From what is due to the positions of a car.
    void showCar(const char *car)
    {
        service().setTab(QString(QStringLiteral("car|") + QLatin1String(car)));
        QTRY_VERIFY(item("positionList") != nullptr);
        item("positionList")->forceActiveFocus(Qt::TabFocusReason);
    }
    /// Brings a position into hand as one would: down the list.
    void walkTo(const char *position)
    {
        key(Qt::Key_Home);
        for (int at = 0; at < service().positions()->count(); ++at) {
            if (service().selected() == QLatin1String(position))
                return;
            key(Qt::Key_Down);
        }
        QCOMPARE(service().selected(), QString::fromLatin1(position));
    }
    /// A letter by itself, and the sheet that it opens.
    void begin(char letter, const char *field)
    {
        type(std::string(1, letter).c_str());
        QTRY_COMPARE(focusName(*m_window), QString::fromLatin1(field));
    }
    /// Pictures of this area, not of the stock.
    void picture(const char *name, const QSize &size = QSize(1440, 900)) const
    {
        QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
        QVERIFY(pictureOf(*m_window, size)
                    .save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/service-%1.png")
                              .arg(QString::fromLatin1(name))));
    }
    [[nodiscard]] ServiceDesk &service() const { return *m_desk->service(); }
    [[nodiscard]] QString cell(const Rows &rows, const QString &key, const char *name) const
    {
        return rows.cell(rows.rowOf(key), QString::fromLatin1(name)).toString();
    }
    [[nodiscard]] QString standing(const char *position) const
    {
        return cell(*service().positions(), QString::fromLatin1(position), "standing");
    }
    /// All that lies in stock of a part and can be used, whatever its lot.
    [[nodiscard]] std::int64_t inStock(const char *part) const
    {
        const auto shop = Workshop::open(m_file.toStdString()).value();
        std::int64_t sum = 0;
        for (const auto &[key, held] : shop->ledger.balancesOf(part)) {
            const Place *place = shop->ledger.place(key.place);
            sum += place && isStock(place->kind) && isFree(key.condition) ? held.quantity : 0;
        }
        return sum;
    }
    [[nodiscard]] static std::string today() { return dayOf(nowMilliseconds()); }

private:
    void carRan(std::int64_t runs, const char *event)
    {
        m_desk->pen()->act(
            QStringLiteral("ran"),
            [runs, event](const ShopFile &, const Workshop &shop, const By &by) -> Result<ToWrite> {
                const auto outing = ran({"car-2", event, {}, runs, "0.25"}, shop, by);
                if (!outing)
                    return tl::unexpected(outing.error());
                return ToWrite(Action{{outing->asRecord()}, {}});
            });
        awaitPen();
    }
};

} // namespace flarestock
