// SPDX-License-Identifier: MIT
//
// TemplateForm: a template's text as a form: its paragraphs, and the fields of the one in hand.
// Each deed is one edit of the text at one place, handed on to whoever holds the text; what the
// form shows is always read from that text again.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/template/form/template_fields.h"
#include "model/exchange/editing/toml_edit.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

/// What the text was read as, and what the shop has.
struct FormSource {
    std::shared_ptr<const std::string> text; ///< The document points into it.
    std::shared_ptr<const TomlDocument> document;
    std::vector<Problem> faults;
    bool isStale = false; ///< What is typed is another text, which cannot be read.
};

class TemplateForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString chosen READ chosen NOTIFY changed)
    Q_PROPERTY(QString chosenTitle READ chosenTitle NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(bool stale READ isStale NOTIFY changed)
    Q_PROPERTY(bool canMoveUp READ canMoveUp NOTIFY changed)
    Q_PROPERTY(bool canMoveDown READ canMoveDown NOTIFY changed)
    Q_PROPERTY(bool canRemove READ canRemove NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *paragraphs READ paragraphs CONSTANT)
    Q_PROPERTY(flarestock::Rows *fields READ fields CONSTANT)
public:
    enum Kind { Question = 1, Station, Run, Module, Extra };
    Q_ENUM(Kind)

    explicit TemplateForm(QObject *parent = nullptr);

    /// The templates and parts to choose from.
    void setShop(const std::shared_ptr<const Workshop> &workshop);
    void begin();
    void show(const FormSource &source);
    /// What the map shows, for the ports of what stands there.
    void setDrawn(const WorkedOut &drawn) { m_drawn = drawn; }

    [[nodiscard]] QString chosen() const { return QString::fromStdString(m_at.name()); }
    [[nodiscard]] QString chosenTitle() const;
    /// What is wrong with the paragraph in hand, beside its fields.
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool isStale() const { return m_source.isStale; }
    [[nodiscard]] bool canMoveUp() const { return canRemove() && m_at.index > 0; }
    [[nodiscard]] bool canMoveDown() const;
    [[nodiscard]] bool canRemove() const;
    [[nodiscard]] Rows *paragraphs() { return &m_paragraphs; }
    [[nodiscard]] Rows *fields() { return &m_fields; }

    Q_INVOKABLE void choose(const QString &paragraph);
    /// The paragraph that a spot of the map stands for: "station|pump", "joint|supply.start".
    void chooseSpot(const QString &spot);
    /// What stands in a field now: words, or the number of a choice.
    Q_INVOKABLE void fill(const QString &place, const QVariant &filled);
    /// What could stand there: other questions, parts, ports.
    Q_INVOKABLE QStringList offers(const QString &place) const;
    /// What stands in the field once one of those is taken.
    Q_INVOKABLE QString withOffered(const QString &place, const QString &word) const;
    /// A value gets a condition, one more of them, or one less: "vary", "more", "fewer".
    Q_INVOKABLE void vary(const QString &place, const QString &deed);
    Q_INVOKABLE void add(flarestock::TemplateForm::Kind kind);
    Q_INVOKABLE void remove();
    Q_INVOKABLE void move(bool down);

Q_SIGNALS:
    void changed();
    /// The text changes so. `place`: the field in which one types, which goes on as one step.
    void edited(const flarestock::TextEdit &edit, const QString &place);
    /// Another paragraph came into hand; its first byte.
    void chose(qulonglong byte);

private:
    void showFields();
    void put(const std::optional<TextEdit> &edit, const QString &place = {});
    [[nodiscard]] const TomlValue *table() const;
    [[nodiscard]] std::optional<TextEdit> filledIn(const std::string &place,
                                                   const QVariant &filled) const;
    [[nodiscard]] std::optional<TextEdit> chosenIn(const std::string &place, int choice) const;
    [[nodiscard]] std::optional<TextEdit> typedIn(const std::string &place,
                                                  const std::string &typed) const;
    [[nodiscard]] FormRead read() const;

    std::shared_ptr<const Workshop> m_workshop;
    FormSource m_source;
    WorkedOut m_drawn;
    ParagraphAt m_at;
    QString m_problem;
    Rows m_paragraphs;
    Rows m_fields;
};

} // namespace flarestock
