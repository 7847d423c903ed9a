// SPDX-License-Identifier: MIT
//
// Build papers: which paper of the build on the desk is wanted, its build sheet, its pick list or
// its line map, and on which size; then it is written into the file that the person chooses, away
// from the window. A list may also become a table, by the ending of its file.

#pragma once

#include "app/desk/build/build_desk.h"
#include "app/desk/form/form.h"
#include "app/desk/papers/map_paper.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_reading.h"

#include <QUrl>

namespace flarestock {

class BuildPapers : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
    Q_PROPERTY(QStringList filters READ filters NOTIFY changed)
public:
    enum class Paper : std::uint8_t { BuildSheet, PickList, LineMap };

    BuildPapers(Pen &pen, const BuildDesk &build, QObject *parent = nullptr)
        : Form(pen, parent), m_build(build)
    {
    }

    void setShop(const ShopOnDesk &shop) { m_read = shop.read; }
    /// Asks which. Whether there is a build to print.
    Q_INVOKABLE bool begin();

    [[nodiscard]] bool isBusy() const { return m_writing.isUnderWay(); }
    /// What its file is called where nobody says: "build-sheet-coupe-fuel.pdf".
    [[nodiscard]] QString fileName() const;
    /// Names that its file may have, the first is usual: "*.pdf", "*.xlsx", "*.csv".
    [[nodiscard]] QStringList filters() const;
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
    [[nodiscard]] MapPaperWords mapWords() const;

    const BuildDesk &m_build;
    ReadShop m_read;
    Paper m_paper = Paper::BuildSheet;
    int m_size = 0;   ///< As in sizes().
    Errand m_writing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
