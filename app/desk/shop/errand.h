// SPDX-License-Identifier: MIT
//
// Errand: work with the shop's file that is done away from the window, which stays awake meanwhile.
// One at a time.

#pragma once

#include <QObject>

#include <functional>

class QThread;

namespace flarestock {

class Errand : public QObject {
    Q_OBJECT
public:
    /// What is to be done by the window's own thread once the work is done.
    using Back = std::function<void()>;
    using Work = std::function<Back()>;

    explicit Errand(QObject *parent = nullptr) : QObject(parent) {}
    ~Errand() override; ///< Waits for the one that is under way.

    [[nodiscard]] bool isUnderWay() const { return m_worker != nullptr; }
    /// Not while another one is under way (asserted). The event loop calls what the work returns.
    void run(Work work);

private:
    QThread *m_worker = nullptr;
};

} // namespace flarestock
