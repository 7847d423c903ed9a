// SPDX-License-Identifier: MIT
//
// AtServer: a shop on a server is opened away from the window, with the password that was typed or
// that the desktop's keyring has. What was typed is kept in the keyring where the person says so.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class AtServer : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString address READ address NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    struct Deeds {
        /// Called by the window's thread before the shop is opened; an empty one: from the keyring.
        std::function<void(const std::string &address, const std::string &password)> usePassword;
        /// May be called from any thread.
        OpenShop open;
        /// Into the keyring, by the window's thread once the server has taken it; whether it is.
        std::function<bool(const std::string &address)> keepPassword;
    };

    explicit AtServer(QObject *parent = nullptr) : QObject(parent) {}

    void setDeeds(Deeds deeds) { m_deeds = std::move(deeds); }

    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    /// The one that was asked for last.
    [[nodiscard]] QString address() const { return m_address; }
    /// Why it was not opened, as a sentence; empty where it was.
    [[nodiscard]] QString problem() const { return m_problem; }

    /// opened() has the shop, or problem() says why there is none.
    Q_INVOKABLE void open(const QString &address, const QString &password, bool keep);

Q_SIGNALS:
    void changed();
    /// `says`: that the keyring has not taken the password; empty where it has, or need not.
    void opened(const flarestock::ShopOnDesk &shop, const QString &says);

private:
    void finished(const Result<ShopOnDesk> &shop, bool keep);

    Deeds m_deeds;
    QString m_address;
    QString m_problem;
    Errand m_errand;
};

} // namespace flarestock
