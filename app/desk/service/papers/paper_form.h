// SPDX-License-Identifier: MIT
//
// Paper form: which paper of a car is wanted, for which event and on which size; then it is written
// as PDF into the file that the person chooses, away from the window.

#pragma once

#include "app/desk/form/form.h"
#include "app/desk/service/garage_book.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_reading.h"
#include "app/desk/words/units.h"
#include "app/sheet/car_paper.h"

#include <QUrl>

namespace flarestock {

class PaperForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
public:
    explicit PaperForm(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    void setBook(const std::shared_ptr<const GarageBook> &book, const ReadShop &read);
    void setUnits(Units units) { m_units = units; }
    /// "card" or "sheet", of a car. Whether there is something to print.
    Q_INVOKABLE bool begin(const QString &paper, const QString &car);

    [[nodiscard]] bool isBusy() const { return m_writing.isUnderWay(); }
    /// What its file is called where nobody says: "service-card-car-2.pdf".
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    /// Keeps what was filled in; filled() asks for the file.
    void carryOut(const QVariantMap &values) override;
    Q_INVOKABLE void write(const QUrl &file);

Q_SIGNALS:
    void filled();
    /// It is written, or why it is not.
    void told(const QString &sentence);

private:
    [[nodiscard]] std::vector<const Event *> events() const;

    std::shared_ptr<const GarageBook> m_book;
    ReadShop m_read;
    CarPaperKind m_kind = CarPaperKind::Card;
    CarPaperAsked m_asked;
    Units m_units = Units::Metric;
    Errand m_writing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
