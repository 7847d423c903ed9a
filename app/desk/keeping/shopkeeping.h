// SPDX-License-Identifier: MIT
//
// Shopkeeping: what is done with a shop as a whole: made out of a backup or out of texts, proved
// whole, its texts written out and taken in.

#pragma once

#include "app/desk/keeping/shop_maker.h"
#include "app/desk/keeping/shop_proof.h"
#include "app/desk/keeping/shop_texts.h"

#include <QUrl>

namespace flarestock {

class Shopkeeping : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::ShopMaker *maker READ maker CONSTANT)
    Q_PROPERTY(flarestock::ShopProof *proof READ proof CONSTANT)
    Q_PROPERTY(flarestock::ShopTexts *texts READ texts CONSTANT)
    Q_PROPERTY(QUrl backupsFolder READ backupsFolder NOTIFY shopChanged)
public:
    explicit Shopkeeping(Pen &pen, QObject *parent = nullptr) : QObject(parent), m_texts(pen) {}

    void setShop(const ShopOnDesk &shop, bool isOther)
    {
        m_proof.setShop(shop, isOther);
        m_texts.setShop(shop, isOther);
        m_shop = QString::fromStdString(shop.file);
        Q_EMIT shopChanged();
    }

    [[nodiscard]] ShopMaker *maker() { return &m_maker; }
    [[nodiscard]] ShopProof *proof() { return &m_proof; }
    [[nodiscard]] ShopTexts *texts() { return &m_texts; }
    /// Where the shop on the desk keeps its backups; the person's folder where it has none.
    [[nodiscard]] QUrl backupsFolder() const;

    /// The path of a file or folder that was chosen.
    Q_INVOKABLE static QString pathOf(const QUrl &chosen) { return chosen.toLocalFile(); }

Q_SIGNALS:
    void shopChanged();

private:
    QString m_shop; ///< The file of the one on the desk.
    ShopMaker m_maker;
    ShopProof m_proof;
    ShopTexts m_texts;
};

} // namespace flarestock
