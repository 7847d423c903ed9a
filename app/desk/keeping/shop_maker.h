// SPDX-License-Identifier: MIT
//
// ShopMaker: a new shop file is made away from the window, out of a backup or out of a folder of
// CSV and TOML files, and then opened. What it is made of stays as it is.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class ShopMaker : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(bool ofBackup READ isOfBackup NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    Q_PROPERTY(QString suggested READ suggested NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    explicit ShopMaker(QObject *parent = nullptr) : QObject(parent) {}

    void setOpening(OpenShop open) { m_open = std::move(open); }

    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    /// Else of a folder.
    [[nodiscard]] bool isOfBackup() const { return m_isOfBackup; }
    /// What it is made of, as far as that was said when it was asked for.
    [[nodiscard]] QString source() const { return m_source; }
    [[nodiscard]] QString suggested() const; ///< A new file that is not there yet.
    /// Why none was made, as a sentence with what to do; empty where one was.
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Nothing is made by that.
    Q_INVOKABLE void begin(bool ofBackup, const QString &source = {});
    /// opened() has the shop, or problem() says why there is none.
    Q_INVOKABLE void make(const QString &source, const QString &file);

Q_SIGNALS:
    void changed();
    void opened(const flarestock::ShopOnDesk &shop, const QString &says);

private:
    [[nodiscard]] QString wrongIn(const QString &source, const QString &file) const;
    void finished(const Result<ShopOnDesk> &shop);

    OpenShop m_open;
    bool m_isOfBackup = false;
    QString m_source;
    QString m_file;
    QString m_problem;
    Errand m_errand;
};

} // namespace flarestock
