// SPDX-License-Identifier: MIT
//
// Shop opening: the shop of a file is read away from the window, which stays awake. One at
// a time: while one is coming another is not asked for.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

namespace flarestock {

class ShopOpening : public QObject {
    Q_OBJECT
public:
    using There = std::function<void(Result<ShopOnDesk> shop)>;

    using QObject::QObject;

    /// The file that is being read; empty where none is.
    [[nodiscard]] QString file() const { return m_file; }
    /// `there` is called by the window's thread. Whether it was begun.
    bool open(const OpenShop &deed, const QString &file, There there);

Q_SIGNALS:
    void changed();

private:
    QString m_file;
    Errand m_errand;
};

} // namespace flarestock
