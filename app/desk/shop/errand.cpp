// SPDX-License-Identifier: MIT

#include "app/desk/shop/errand.h"

#include <QThread>

#include <cassert>
#include <memory>

namespace flarestock {

Errand::~Errand()
{
    if (m_worker != nullptr)
        m_worker->wait();
}

void Errand::run(Work work)
{
    assert(m_worker == nullptr);
    const auto back = std::make_shared<Back>();
    m_worker = QThread::create([done = std::move(work), back] { *back = done(); });
    m_worker->setParent(this);
    connect(m_worker, &QThread::finished, this, [this, back] {
        m_worker->deleteLater();
        m_worker = nullptr;
        (*back)();
    });
    m_worker->start();
}

} // namespace flarestock
