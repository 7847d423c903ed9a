// SPDX-License-Identifier: MIT
//
// Errand: work with the shop's file that is done away from the window, which stays awake meanwhile.
// One at a time.

#pragma once

#include <QObject>

#include <functional>
#include <memory>

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
    /// Waits for the one that is under way, if there is one, and calls what it returns. Not longer
    /// than so long, where that is said: then the event loop calls it.
    void finish(int milliseconds = -1);

private:
    void end();

    QThread *m_worker = nullptr;
    std::shared_ptr<Back> m_back;
};

} // namespace flarestock
