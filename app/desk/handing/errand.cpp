// SPDX-License-Identifier: MIT

#include "app/desk/handing/errand.h"

#include <QThread>

#include <cassert>

namespace flarestock {

Errand::~Errand()
{
    if (m_worker != nullptr)
        m_worker->wait();
}

void Errand::run(const WriteShop &write, MakeAction make, Back back)
{
    assert(m_worker == nullptr);
    const auto result = std::make_shared<std::optional<Result<std::shared_ptr<const Wrote>>>>();
    m_worker =
        QThread::create([write, made = std::move(make), result] { result->emplace(write(made)); });
    m_worker->setParent(this);
    connect(m_worker, &QThread::finished, this, [this, result, back = std::move(back)] {
        m_worker->deleteLater();
        m_worker = nullptr;
        back(**result);
    });
    m_worker->start();
}

} // namespace flarestock
