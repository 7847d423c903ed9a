// SPDX-License-Identifier: MIT

#include "app/desk/coming/at_server.h"

#include "app/desk/words/spoken.h"
#include "model/storage/server/server_address.h"

namespace flarestock {

void AtServer::open(const QString &address, const QString &password, bool keep)
{
    if (!m_deeds.open || isBusy())
        return;
    m_address = address.trimmed();
    m_problem.clear();
    if (!isServer(m_address.toStdString())) {
        const QString wrong = m_address.isEmpty()
                                  ? tr("The address of the server is missing.")
                                  : tr("%1 is not the address of a server.").arg(m_address);
        m_problem = tr("%1 Write it like postgresql://anna@shop.example/shop.").arg(wrong);
        Q_EMIT changed();
        return;
    }
    if (m_deeds.usePassword)
        m_deeds.usePassword(m_address.toStdString(), password.toStdString());
    m_errand.run([this, keep, open = m_deeds.open, at = m_address.toStdString()]() -> Errand::Back {
        const auto shop = std::make_shared<const Result<ShopOnDesk>>(open(at));
        return [this, keep, shop] { finished(*shop, keep); };
    });
    Q_EMIT changed();
}

void AtServer::finished(const Result<ShopOnDesk> &shop, bool keep)
{
    if (!shop) {
        m_problem = saidProblem(shop.error());
        Q_EMIT changed();
        return;
    }
    const bool kept =
        !keep || (m_deeds.keepPassword && m_deeds.keepPassword(m_address.toStdString()));
    Q_EMIT changed();
    Q_EMIT opened(*shop, kept ? QString() : tr("The keyring does not take the password."));
}

} // namespace flarestock
