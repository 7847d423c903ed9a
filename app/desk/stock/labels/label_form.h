// SPDX-License-Identifier: MIT
//
// Label form: for what labels with a code that scans are wanted (the part in hand, its lot, the
// place where it lies, all places), how many and how large; then they are written as PDF, a page a
// label, into the file that the person chooses, away from the window.

#pragma once

#include "app/buyer/papers/label_file.h"
#include "app/desk/form/form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/stock/deeds/stock_deed.h"

#include <QUrl>

namespace flarestock {

/// Its button among the deeds: label ready detail says, by the key "label".
[[nodiscard]] Row labelRow();

class LabelForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
public:
    explicit LabelForm(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    /// What there is in hand now.
    void show(const DeedSubject &subject) { m_subject = subject; }
    /// Begins to fill it in. Whether there is anything that could have a label.
    Q_INVOKABLE bool begin();

    [[nodiscard]] bool isBusy() const { return m_writing.isUnderWay(); }
    /// What its file is called where nobody says: "labels-AD-8-8.pdf".
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    /// Keeps what was filled in; filled() asks for the file.
    void carryOut(const QVariantMap &values) override;
    Q_INVOKABLE void write(const QUrl &file);

Q_SIGNALS:
    void filled();
    /// They are written, or why they are not.
    void told(const QString &sentence);

private:
    enum class For : std::uint8_t { Part, Lot, Place, AllPlaces };
    [[nodiscard]] std::vector<For> choices() const;
    [[nodiscard]] QString saidFor(For what) const;
    [[nodiscard]] std::vector<Label> labels(For what) const;

    DeedSubject m_subject;
    DeedSubject m_begun; ///< As it was when the form was begun.
    For m_for = For::Part;
    int m_count = 1;
    LabelFile m_file; ///< Its size stays as it was filled in last.
    Errand m_writing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
