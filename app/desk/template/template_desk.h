// SPDX-License-Identifier: MIT
//
// TemplateDesk: the templates of the shop, to be opened, copied or begun anew, and those that were
// typed and not written down. What is typed is never lost: it waits here, from one start of the
// desk to the next, until it is written or thrown away.

#pragma once

#include "app/desk/template/template_sketches.h"

#include <QTimer>

namespace flarestock {

class TemplateDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *choices READ choices CONSTANT)
    Q_PROPERTY(flarestock::TemplateEditor *editor READ editor CONSTANT)
public:
    explicit TemplateDesk(Pen &pen, QObject *parent = nullptr);
    ~TemplateDesk() override;

    void setShop(const ShopOnDesk &shop, bool isOther);
    /// What waits to be written down in this shop, as sketchesKept() gave it.
    void setSketches(const QString &text);

    [[nodiscard]] bool isLoading() const { return m_reading.isUnderWay(); }
    [[nodiscard]] QString problem() const { return m_problem; }
    /// title detail section; those that wait first.
    [[nodiscard]] Rows *choices() { return &m_choices; }
    [[nodiscard]] TemplateEditor *editor() { return &m_editor; }

    /// Reads the templates as they are now, and lets one be chosen.
    Q_INVOKABLE void ask();
    Q_INVOKABLE void begin(const QString &choice);
    Q_INVOKABLE void beginCopy(const QString &choice);
    Q_INVOKABLE void beginNew();
    /// What waits under that choice is not kept any longer.
    Q_INVOKABLE void throwAway(const QString &choice);
    /// Whether something waits there.
    Q_INVOKABLE bool isWaiting(const QString &choice) const;
    /// Keeps what is typed, now.
    void keepNow();

Q_SIGNALS:
    void changed();
    void asked();
    /// What waits in that shop is this now.
    void sketchesKept(const QString &shop, const QString &text);
    void told(const QString &sentence);

private:
    /// One template of the shop.
    struct Known {
        std::string file;
        std::string id;
        std::string title;
    };
    struct ReadTexts {
        TextFiles texts;
        std::vector<Known> all;
    };
    [[nodiscard]] static Result<ReadTexts> readTexts(const Result<TextFiles> &documents);
    void readAgain(const std::function<void()> &then);
    void showChoices();
    void beginWith(const QString &name, const TypedTemplate &typed);
    void saveSketches();
    [[nodiscard]] std::set<std::string, std::less<>> ids() const;

    std::function<Result<TextFiles>()> m_documents;
    std::shared_ptr<const Workshop> m_workshop;
    QString m_shop;
    QString m_problem;
    ReadTexts m_read;
    TemplateSketches m_sketches;
    QString m_name; ///< Of the sketch that is typed.
    QTimer m_keepSoon;
    bool m_isToRead = false; ///< The shop is another since the texts were read.
    Rows m_choices;
    TemplateEditor m_editor;
    Errand m_reading; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
