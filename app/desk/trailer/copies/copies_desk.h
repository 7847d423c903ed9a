// SPDX-License-Identifier: MIT
//
// CopiesDesk: copies of the shop that go along and come back: one is taken along, one that is away
// is looked at, what disagrees is decided, then it is brought; a place or a whole copy is given up.
// All of it is done away from the window; bringing says how far it is and can be stopped.

#pragma once

#include "app/desk/form/kept_fields.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/pen.h"
#include "app/desk/trailer/copies/brought_rows.h"
#include "app/desk/trailer/copies/trips_seen.h"

#include <QTimer>
#include <QUrl>

#include <atomic>

namespace flarestock {

class CopiesDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)
    Q_PROPERTY(double share READ share NOTIFY changed)
    Q_PROPERTY(bool canStop READ canStop NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString barrier READ barrier NOTIFY changed)
    Q_PROPERTY(QString awayWords READ awayWords NOTIFY changed)
    Q_PROPERTY(int awayCount READ awayCount NOTIFY changed)
    Q_PROPERTY(QString suggested READ suggested NOTIFY changed)
    Q_PROPERTY(QString expected READ expected NOTIFY changed)
    Q_PROPERTY(QStringList places READ places NOTIFY changed)
    Q_PROPERTY(bool looked READ hasLooked NOTIFY changed)
    Q_PROPERTY(QString lookedTitle READ lookedTitle NOTIFY changed)
    Q_PROPERTY(QString lookedAbout READ lookedAbout NOTIFY changed)
    Q_PROPERTY(bool canBring READ canBring NOTIFY changed)
    Q_PROPERTY(int openCount READ openCount NOTIFY changed)
    Q_PROPERTY(flarestock::KeptFields *departure READ departure CONSTANT)
    Q_PROPERTY(flarestock::Rows *trips READ trips CONSTANT)
    Q_PROPERTY(flarestock::Rows *came READ came CONSTANT)
    Q_PROPERTY(flarestock::Rows *questions READ questions CONSTANT)
public:
    explicit CopiesDesk(Pen &pen, QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop, bool isOther);
    void show(const TripsSeen &seen, Units units);

    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    [[nodiscard]] QString progress() const; ///< What is under way; empty where nothing is.
    [[nodiscard]] double share() const;     ///< 0 to 1 of it is done; below 0: nobody knows.
    [[nodiscard]] bool canStop() const { return isBusy() && m_progress != nullptr; }
    /// Why the last deed was not done, as a sentence with what to do; empty where it was.
    [[nodiscard]] QString problem() const { return m_problem; }
    /// Why no copy is taken or brought here at all; empty where one is.
    [[nodiscard]] QString barrier() const;
    [[nodiscard]] QString awayWords() const; ///< "none is away", "2 are away"
    [[nodiscard]] int awayCount() const { return m_seen.away(); }
    [[nodiscard]] QString suggested() const; ///< A file to take a copy to.
    /// The file of a copy that is away, where it lies at this machine; else empty.
    [[nodiscard]] QString expected() const;
    [[nodiscard]] QStringList places() const; ///< Drawers that can go along: here, not away.
    [[nodiscard]] bool hasLooked() const { return m_back != nullptr; }
    /// It holds something that is not in the shop yet.
    [[nodiscard]] bool canBring() const
    {
        return m_back != nullptr && !m_back->written && !m_back->already;
    }
    [[nodiscard]] QString lookedTitle() const;
    [[nodiscard]] QString lookedAbout() const;
    [[nodiscard]] int openCount() const; ///< Questions on which nothing was decided.
    /// What is filled in of a copy to be taken along.
    [[nodiscard]] KeptFields *departure() { return &m_departure; }
    [[nodiscard]] Rows *trips() { return &m_trips; }
    [[nodiscard]] Rows *came() { return &m_came; }
    [[nodiscard]] Rows *questions() { return &m_questions; }

    /// Takes a copy along: `file` "name" "with" as typed, "places" a list of places().
    Q_INVOKABLE void take(const QVariantMap &departure);
    /// Says what a copy would bring, and what disagrees.
    Q_INVOKABLE void look(const QString &file);
    Q_INVOKABLE void choose(int question, int choice);
    Q_INVOKABLE void say(int question, const QString &more);
    /// Takes in what is new of the one that was looked at; `goesOn`: it stays away.
    Q_INVOKABLE void bring(bool goesOn);
    Q_INVOKABLE void putAway(); ///< What was looked at.
    Q_INVOKABLE void stop();
    Q_INVOKABLE void hear(); ///< Forgets a problem that was read.
    [[nodiscard]] Q_INVOKABLE static QString pathOf(const QUrl &file);
    /// The shop uses a place of a copy that is away all the same.
    Q_INVOKABLE void release(const QString &trip, const QString &place);
    Q_INVOKABLE void end(const QString &trip); ///< It does not come back, or need not.

Q_SIGNALS:
    void changed();
    /// Something stands in the shop now; the desk reads it anew.
    void wrote(const QString &sentence);

private:
    struct Progress {
        std::atomic<std::size_t> done = 0;
        std::atomic<std::size_t> of = 0;
        std::atomic<bool> isStopped = false;
    };
    using Deed = std::function<Errand::Back(ShopFile &, const Said &)>;
    void run(const QString &what, const Deed &deed);
    void begin(const QString &what, const Deed &deed);
    void bringBack(bool looks, bool goesOn);
    void takeBack(const BroughtBack &back);
    void showLooked();
    void refuse(const QString &sentence);
    /// It stands, and is not taken back as a deed is: `why`, with what to do instead.
    void stands(const QString &sentence, const QString &why);
    [[nodiscard]] std::string nameOf(const QString &trip) const;

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<ShopFile>()> m_change;
    TripsSeen m_seen;
    Units m_units = Units::Metric;
    QString m_problem;
    QString m_under; ///< What is under way.
    std::shared_ptr<Progress> m_progress;
    QTimer m_tick;
    QString m_file;                           ///< That is looked at.
    std::map<std::string, QString> m_takenTo; ///< The file of each copy that this desk has taken.
    std::shared_ptr<const BroughtBack> m_back;
    DecidedByName m_decided;
    KeptFields m_departure;
    Rows m_trips;
    Rows m_came;
    Rows m_questions;
    Errand m_errand; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
