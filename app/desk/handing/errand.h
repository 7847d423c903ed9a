// SPDX-License-Identifier: MIT
//
// Errand: one action that is written into the shop away from the window, which stays awake
// meanwhile. One at a time.

#pragma once

#include "app/desk/shop/shop_on_desk.h"

#include <QObject>

#include <optional>

class QThread;

namespace flarestock {

class Errand : public QObject {
    Q_OBJECT
public:
    /// What comes back: the shop with the action written down, or why it was not.
    using Back = std::function<void(const Result<std::shared_ptr<const Wrote>> &)>;

    explicit Errand(QObject *parent = nullptr) : QObject(parent) {}
    ~Errand() override; ///< Waits for the one that is under way.

    [[nodiscard]] bool isUnderWay() const { return m_worker != nullptr; }
    /// Not while another one is under way (asserted). `back` is called by the event loop.
    void run(const WriteShop &write, MakeAction make, Back back);

private:
    QThread *m_worker = nullptr;
};

} // namespace flarestock
