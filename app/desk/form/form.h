// SPDX-License-Identifier: MIT
//
// Form: what is filled in on a sheet before something is written into the shop: its title, its
// fields, its button, and what is done with what was filled in. FormSheet.qml shows one.

#pragma once

#include "app/desk/form/kept_fields.h"
#include "app/desk/rows/rows.h"
#include "app/desk/shop/pen.h"

#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class Form : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString button READ button NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    Q_PROPERTY(QString outlook READ outlook NOTIFY outlookChanged)
    Q_PROPERTY(flarestock::Rows *fields READ fields CONSTANT)
public:
    explicit Form(Pen &pen, QObject *parent = nullptr);

    [[nodiscard]] virtual QString title() const = 0;
    [[nodiscard]] virtual QString about() const { return {}; }
    [[nodiscard]] virtual QString button() const = 0; ///< What finish() does, in a word or two.
    [[nodiscard]] virtual QString caution() const { return {}; } ///< Where it can hurt somebody.
    /// What it would come to as it is filled in now, a sentence a line; empty: nobody says.
    [[nodiscard]] virtual QString outlook() const { return {}; }
    /// In the order in which they are filled in; the columns are fieldCells().
    [[nodiscard]] Rows *fields() { return &m_fields; }

    /// Which field a scanned code belongs to; empty where to none.
    Q_INVOKABLE virtual QString fieldOf(const QString &code) const;
    /// Hears what is filled in so far, and may say its outlook(). A figure that can be read in two
    /// ways counts as not filled in yet.
    Q_INVOKABLE void consider(const QVariantMap &values);
    /// The sheet is on the screen, filled in so. What stood in it when the desk ended in the midst
    /// of it, by the keys of fields(); empty: nothing did.
    Q_INVOKABLE QVariantMap takenUp(const QVariantMap &values) { return m_kept.takenUp(values); }
    /// What is filled in now, for a desk that ends in the midst of it.
    Q_INVOKABLE void keep(const QVariantMap &values) { m_kept.keep(values); }
    /// The sheet is off the screen: what was filled in is written, or not wanted.
    Q_INVOKABLE void putAway() { m_kept.putAway(); }
    /// Does it, by the pen; `values` by the keys of fields(), a choice as its number. A figure that
    /// can be read in two ways is refused (typed_figures.h).
    Q_INVOKABLE void finish(const QVariantMap &values);

Q_SIGNALS:
    void changed();
    void outlookChanged();

protected:
    /// What consider() and finish() do, once every figure can be read in one way only.
    virtual void lookAhead(const QVariantMap &values);
    virtual void carryOut(const QVariantMap &values) = 0;
    [[nodiscard]] Pen &pen() { return m_pen; }
    [[nodiscard]] const Rows &shownFields() const { return m_fields; }
    /// Other fields; what was typed into those before is gone.
    void ask(std::vector<Row> fields);
    /// Another value in one field; what was typed into the others stays.
    void put(const QString &key, const QString &value);

private:
    /// Why what stands in that field is no figure to go by; nothing: it is, or wants none.
    [[nodiscard]] std::optional<QString> whyUnclear(int row, const QVariantMap &values) const;

    Pen &m_pen;
    Rows m_fields;
    KeptFields m_kept; ///< While the sheet is on the screen.
};

/// title form choices value hint; `form` is "typed", "figure" (typed, with figures in it) or
/// "choice", a choice's value its number.
[[nodiscard]] QStringList fieldCells();
/// A row of those for words that are typed, for figures …
[[nodiscard]] Row typedField(const char *key, const QString &title, const QString &value = {},
                             const QString &hint = {});
[[nodiscard]] Row figureField(const char *key, const QString &title, const QString &value = {},
                              const QString &hint = {});
/// … and for a choice.
[[nodiscard]] Row choiceField(const char *key, const QString &title, const QStringList &choices,
                              int chosen = 0);

} // namespace flarestock
