// SPDX-License-Identifier: MIT
//
// TradeForm: a supplier, or what one of them asks for a part: currency, freight, minimum and lead
// time; packs and price steps. What is wrong is said by the code that reads the files.

#pragma once

#include "app/desk/form/form.h"
#include "model/exchange/typed/catalogue_rows.h"

namespace flarestock {

class TradeForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::Rows *suppliers READ suppliers CONSTANT)
public:
    explicit TradeForm(Pen &pen, QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop);
    /// All suppliers, by name.
    [[nodiscard]] Rows *suppliers() { return &m_suppliers; } ///< label detail

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    /// The currency of a new offer goes with its supplier, as long as nobody wrote another.
    void lookAhead(const QVariantMap &values) override;
    void carryOut(const QVariantMap &values) override;

    /// A supplier by its id, a new one where it is empty; opened() says that it is here.
    Q_INVOKABLE void beginSupplier(const QString &id);
    /// What somebody asks for a part, by the key of an offer (offerKey()); a new one where it is
    /// empty.
    Q_INVOKABLE void beginOffer(const QString &part, const QString &key);

Q_SIGNALS:
    void opened();

private:
    void begin(SheetKind kind, const RowCells &key);
    void showFields();
    [[nodiscard]] std::vector<std::string> headings() const;
    [[nodiscard]] RowCells filled(const QVariantMap &values) const;

    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<TextFiles>()> m_documents;
    SheetKind m_kind = SheetKind::Suppliers;
    bool m_isNew = true;
    std::map<std::string, std::string> m_currencies; ///< In which a supplier asks, by its id.
    RowCells m_begun; ///< As it stood in the shop; of a new one what is known.
    Rows m_suppliers;
    Errand m_reading; ///< Last: it waits for its worker before the rest goes.
};

/// By which an offer is named on the screen.
[[nodiscard]] QString offerKey(const Offer &offer);

} // namespace flarestock
