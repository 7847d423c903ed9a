// SPDX-License-Identifier: MIT
//
// Load list: what to bring into the drawers, or what to take out of them, ticked off by touch, key
// or scan, and written down as one action.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_reading.h"
#include "app/desk/trailer/drawers/load_rows.h"

#include <QUrl>

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class LoadList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::Rows *rows READ rows CONSTANT)
    Q_PROPERTY(int tickedCount READ tickedCount NOTIFY changed)
    Q_PROPERTY(int tickableCount READ tickableCount NOTIFY changed)
    Q_PROPERTY(int toBuyCount READ toBuyCount NOTIFY changed)
    Q_PROPERTY(QStringList homes READ homes NOTIFY changed)
    Q_PROPERTY(bool wantsHome READ wantsHome NOTIFY changed)
    Q_PROPERTY(int home READ home WRITE setHome NOTIFY changed)
public:
    enum class Way : std::uint8_t { In, Out };
    LoadList(Way way, Pen &pen, QObject *parent = nullptr);

    /// Ticks of lines that are no more are gone.
    void show(const std::shared_ptr<const TrailerBook> &book, Units units);
    void clear(); ///< Another shop is on the desk.
    /// How the shop is opened to read its letterhead.
    void setRead(ReadShop read) { m_readShop = std::move(read); }

    [[nodiscard]] Rows *rows() { return &m_rows; }
    [[nodiscard]] int tickedCount() const { return static_cast<int>(m_ticked.size()); }
    [[nodiscard]] int tickableCount() const;
    [[nodiscard]] int toBuyCount() const { return m_rows.count() - tickableCount(); }
    /// Where what has no bin can go: ids, nearest first, drawers left out.
    [[nodiscard]] QStringList homes() const;
    /// Something that is ticked has no bin.
    [[nodiscard]] bool wantsHome() const;
    /// Where that goes: one of homes(); -1 nobody has said.
    [[nodiscard]] int home() const { return static_cast<int>(homes().indexOf(m_home)); }
    void setHome(int home);

    /// Ticks a line, or takes its tick away.
    Q_INVOKABLE void tick(int row);
    Q_INVOKABLE void tickAll(); ///< Or none, where all are.
    /// Ticks the first line of a part number, lot or both (LabelCode) that has none. A place is
    /// where what has no bin goes, if that waits for one; else it only brings its first line into
    /// hand that has no tick. Whether it was any of it.
    Q_INVOKABLE bool scan(const QString &code);
    /// Writes down that what is ticked was brought, or taken out; `home` is one of homes(), -1
    /// none.
    Q_INVOKABLE void finish(int home);
    /// The same of all that one drawer lacks, without ticking it.
    Q_INVOKABLE void finishDrawer(const QString &drawer);
    /// What its file is called where nobody says; and the list into a file, by its ending.
    Q_INVOKABLE QString fileName() const;
    Q_INVOKABLE void writeTo(const QUrl &file);

Q_SIGNALS:
    void changed();
    void found(int row); ///< By a code: it is in hand now.
    /// The file is written, or why it is not.
    void told(const QString &sentence);

private:
    [[nodiscard]] LoadShown shown() const { return {*m_book, m_ticked, m_units}; }
    [[nodiscard]] bool isTickable(int row) const;
    /// The first line without a tick that lies at a place, or goes there; -1: none does.
    [[nodiscard]] int lineOf(const QString &place) const;
    [[nodiscard]] bool becomesHome(const QString &place);
    [[nodiscard]] bool scanPlace(const QString &place);
    void showRows();
    void settle(); ///< After other ticks or lines.
    void write(const std::set<QString> &ticked, const std::string &home);

    Way m_way;
    Pen &m_pen;
    std::shared_ptr<const TrailerBook> m_book;
    Units m_units = Units::Metric;
    std::set<QString> m_ticked; ///< Keys of rows.
    QString m_home;             ///< One of homes(); empty: nobody has said.
    Rows m_rows;
    ReadShop m_readShop;
    Errand m_writing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
