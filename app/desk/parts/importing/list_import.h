// SPDX-License-Identifier: MIT
//
// ListImport: a supplier's list, or the shop's own, taken into the catalogue. The file is read away
// from the window and can be stopped; each row that is not clear becomes one question with two
// answers; what it changes is shown, each to be left out; then all that is clear is written as one
// step, by the pen. Before that nothing is in the shop.

#pragma once

#include "app/desk/parts/importing/list_changes.h"
#include "app/desk/rows/rows.h"
#include "app/desk/shop/pen.h"
#include "model/exchange/typed/list_reading.h"

#include <QTimer>
#include <QUrl>

#include <atomic>

namespace flarestock {

class ListImport : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool reading READ isReading NOTIFY readingChanged)
    Q_PROPERTY(double progress READ progress NOTIFY changed)
    Q_PROPERTY(bool loaded READ isLoaded NOTIFY changed)
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(bool ofBefore READ isOfBefore NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(bool asking READ isAsking NOTIFY changed)
    Q_PROPERTY(int question READ question NOTIFY changed)
    Q_PROPERTY(int questions READ questions NOTIFY changed)
    Q_PROPERTY(QString where READ where NOTIFY changed)
    Q_PROPERTY(QString wrong READ wrong NOTIFY changed)
    Q_PROPERTY(QString meant READ meant NOTIFY changed)
    Q_PROPERTY(bool canTake READ canTake NOTIFY changed)
    Q_PROPERTY(bool losesNothing READ losesNothing NOTIFY changed)
    Q_PROPERTY(QString answeredWords READ answeredWords NOTIFY changed)
    Q_PROPERTY(QString takeWords READ takeWords NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *cells READ cells CONSTANT)
    Q_PROPERTY(flarestock::ListChanges *changes READ changes CONSTANT)
public:
    explicit ListImport(Pen &pen, QObject *parent = nullptr);
    ~ListImport() override;

    void setShop(const ShopOnDesk &shop);

    [[nodiscard]] bool isReading() const { return m_working.isUnderWay(); }
    [[nodiscard]] double progress() const; ///< From 0 to 1.
    [[nodiscard]] bool isLoaded() const { return m_list != nullptr; }
    [[nodiscard]] QString file() const { return m_file; }
    /// Answered in part when the desk ended in the midst of it.
    [[nodiscard]] bool isOfBefore() const { return m_isOfBefore; }
    [[nodiscard]] QString about() const; ///< "412 rows: 398 as the shop has them, 9 new …"
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool isAsking() const; ///< A question has no answer yet.
    [[nodiscard]] int question() const { return m_question + 1; }
    [[nodiscard]] int questions() const;
    [[nodiscard]] QString where() const; ///< "line 17, AD-66"
    [[nodiscard]] QString wrong() const;
    [[nodiscard]] QString meant() const; ///< What it would be taken as.
    [[nodiscard]] bool canTake() const;  ///< It can be taken as understood.
    /// It can be taken, and all that stands in the row means something then.
    [[nodiscard]] bool losesNothing() const;
    /// "Of the rows asked about: taken in 1, left out 10."; empty where none was.
    [[nodiscard]] QString answeredWords() const;
    [[nodiscard]] QString takeWords() const; ///< "Take in 407 rows"
    [[nodiscard]] Rows *cells() { return &m_cells; }
    /// Once no question is asked any more.
    [[nodiscard]] ListChanges *changes() { return &m_changes; }

    Q_INVOKABLE void read(const QUrl &file);
    Q_INVOKABLE void stop();
    Q_INVOKABLE void forget();
    /// Another shop is on the desk: what was answered for the one before waits there.
    void empty();
    /// The list is off the screen: what was answered or left out of it waits for the next time.
    Q_INVOKABLE void putAway();
    /// The answer to the question that is asked.
    Q_INVOKABLE void answer(bool take);
    /// The question before, to answer it anew.
    Q_INVOKABLE void goBack();
    /// Writes all that is clear.
    Q_INVOKABLE void finish();

Q_SIGNALS:
    void changed();
    void readingChanged();
    /// Another question is asked, or none any more.
    void asked();

private:
    struct Watched {
        std::atomic<bool> isStopped = false;
        std::atomic<std::size_t> done = 0;
        std::atomic<std::size_t> all = 0;
    };
    struct Read {
        std::shared_ptr<const Workshop> workshop; ///< The list points into its catalogue.
        std::shared_ptr<ListReading> list;
        Problem problem;
        QString digest = {}; ///< Of the file's text.
    };
    static Read readAll(const ListFile &file, const TextFiles &documents,
                        const std::shared_ptr<const Workshop> &workshop, Watched &watched);
    [[nodiscard]] const AskedRow *askedRow() const;
    [[nodiscard]] std::vector<ListRow> answered() const;
    [[nodiscard]] std::vector<ListRow> taken() const;
    void show();
    void showChanges();
    void takeUpAnswers(); ///< Of a desk that ended while the same file was asked about.
    void keepAnswers();
    [[nodiscard]] QString keptName() const;
    void refuse(const QString &why);

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<TextFiles>()> m_documents;
    QString m_file;
    QString m_digest; ///< Of its text.
    bool m_isOfBefore = false;
    QString m_problem;
    std::shared_ptr<const Workshop> m_readFor;
    std::shared_ptr<ListReading> m_list;
    std::vector<bool> m_answers; ///< Of the first questions.
    int m_question = 0;
    std::shared_ptr<Watched> m_watched;
    QTimer m_look; ///< How far it is.
    Rows m_cells;  ///< title value wrong says
    ListChanges m_changes;
    QString m_sentence; ///< What was given to the pen.
    Errand m_working;   ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
