// SPDX-License-Identifier: MIT
//
// ShopTexts: the shop's CSV and TOML files are written into a folder, to be edited there, and taken
// in again, all that was edited as one step. What would change is said before anything is written,
// and the step is taken back like any other of the pen's.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/shop/pen.h"
#include "app/desk/shop/shop_reading.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class ShopTexts : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString written READ written NOTIFY changed)
    Q_PROPERTY(bool looked READ hasLooked NOTIFY changed)
    Q_PROPERTY(QString outlook READ outlook NOTIFY changed)
    Q_PROPERTY(QString takeWords READ takeWords NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *texts READ texts CONSTANT)
public:
    explicit ShopTexts(Pen &pen, QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    /// Why the last deed was not done, as a sentence with what to do; empty where it was.
    [[nodiscard]] QString problem() const { return m_problem; }
    /// "38 files were written into …"; empty where none were since forget().
    [[nodiscard]] QString written() const { return m_written; }
    /// Whether a folder was looked at and can be taken in, or has nothing new.
    [[nodiscard]] bool hasLooked() const { return !m_outlook.isEmpty(); }
    [[nodiscard]] QString outlook() const { return m_outlook; } ///< What taking in would do.
    [[nodiscard]] QString takeWords() const; ///< Of the button; empty where nothing was edited.
    /// What was written, or what would change: name says
    [[nodiscard]] Rows *texts() { return &m_texts; }

    /// What was said of a folder holds no more.
    Q_INVOKABLE void forget();
    /// Writes all of them; the folder is new or empty.
    Q_INVOKABLE void writeInto(const QString &folder);
    /// Reads what was edited there as it would stand in the shop. Nothing is written.
    Q_INVOKABLE void look(const QString &folder);
    /// Writes what was looked at into the shop.
    Q_INVOKABLE void takeIn();

Q_SIGNALS:
    void changed();
    /// What was edited stands in the shop now.
    void tookIn();
    void told(const QString &sentence);

private:
    struct Edited {
        QString folder;
        TextFiles texts;
    };
    [[nodiscard]] bool begin(const QString &folder);
    void sayWritten(const QString &folder, const Result<TextFiles> &texts);
    void sayEdited(const Edited &edited, const TextFiles &before);
    void heed(const Wrote &wrote, bool isBack);
    void noteNext();

    Pen &m_pen;
    std::string m_file;
    ReadShop m_read;
    std::function<Result<TextFiles>()> m_documents;
    QString m_problem;
    QString m_written;
    QString m_outlook;
    Edited m_looked;
    Edited m_asked;               ///< Given to the pen.
    std::vector<Edited> m_taken;  ///< Of which the pen may take one back.
    std::vector<Edited> m_toNote; ///< Folders that are to hear what the shop has of them.
    Rows m_texts;
    Errand m_errand;
};

} // namespace flarestock
