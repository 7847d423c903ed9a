// SPDX-License-Identifier: MIT
//
// HandingOut: what a hand does with the pieces of the build on the desk: reserve, pick, issue,
// give back, call it done. Each is one action in the shop, written away from the window, said in a
// sentence, and can be taken back. It is signed with the name of who is at the desk; where nobody
// has said that yet, the deed waits until somebody has.

#pragma once

#include "app/desk/handing/handed_out.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class HandingOut : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString barrier READ barrier NOTIFY changed)
    Q_PROPERTY(QString notFound READ notFound NOTIFY changed)
    Q_PROPERTY(QString newestTest READ newestTest NOTIFY changed)
    Q_PROPERTY(QString whyNotDone READ whyNotDone NOTIFY changed)
    Q_PROPERTY(bool brakes READ brakes NOTIFY changed)
    Q_PROPERTY(bool isDone READ isDone NOTIFY changed)
    Q_PROPERTY(int tickedCount READ tickedCount NOTIFY changed)
    Q_PROPERTY(QStringList places READ places NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *steps READ steps CONSTANT)
    Q_PROPERTY(flarestock::Rows *picks READ picks CONSTANT)
    Q_PROPERTY(flarestock::Rows *inCar READ inCar CONSTANT)
public:
    explicit HandingOut(QObject *parent = nullptr);

    /// How the shop is written; whether it can be.
    void setShop(const WriteShop &write, bool readOnly);
    /// The build on the desk as it stands now.
    void show(const WorkedOut &worked, const BuildPlan &plan, Units units);
    /// Whose name stands below what is done. What waited for it is done now.
    void setWho(const QString &who);
    /// What waits for a name is not done.
    Q_INVOKABLE void forgetWaiting() { m_waiting = nullptr; }
    /// Another shop is on the desk: nothing of the one before is taken back here.
    void forgetDone() { m_done.clear(); }

    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    /// Why the last deed was not done, as a sentence with what to do; empty where it was.
    [[nodiscard]] QString problem() const { return m_problem; }
    /// Why nothing can be done at all: read-only, a template that is tried out; empty where it can.
    [[nodiscard]] QString barrier() const;
    [[nodiscard]] QString notFound() const { return saidLacking(m_handed.picks, m_units); }
    [[nodiscard]] QString newestTest() const { return saidTest(m_handed.standing.testsNow()); }
    [[nodiscard]] QString whyNotDone() const;
    [[nodiscard]] bool brakes() const { return m_handed.brakes; }
    [[nodiscard]] bool isDone() const { return m_handed.standing.isDone(); }
    [[nodiscard]] int tickedCount() const { return static_cast<int>(m_ticked.size()); }
    [[nodiscard]] QStringList places() const; ///< Ids where pieces can be put, nearest first.
    [[nodiscard]] Rows *steps() { return &m_steps; }
    [[nodiscard]] Rows *picks() { return &m_picks; }
    [[nodiscard]] Rows *inCar() { return &m_inCar; }
    [[nodiscard]] bool canTakeBack() const { return !m_done.empty(); }

    Q_INVOKABLE void reserve();
    /// Ticks a pick, or takes its tick away.
    Q_INVOKABLE void tick(int row);
    /// Ticks the first pick of a part number or lot that has none. Whether there was one.
    Q_INVOKABLE bool scan(const QString &code);
    /// Brings what is ticked to the car, or all of the list.
    Q_INVOKABLE void issue(bool all);
    /// A row of inCar, so much of it as typed, to a place; `now`: what it is from now on.
    Q_INVOKABLE void giveBack(int row, const QString &typed, const QString &to, const QString &now);
    /// A leak test as "medium" "pressure" "held" "passed" "second" "note" say it; one that has
    /// passed ends the build. An empty map: with the test that stands already.
    Q_INVOKABLE void finish(const QVariantMap &test);
    Q_INVOKABLE void openAgain();
    /// Undoes the last action that was written down here.
    void takeBack();
    /// Forgets a problem that was read.
    Q_INVOKABLE void hear();

Q_SIGNALS:
    void changed();
    /// Something stands in the shop now; the desk shows the shop anew and says the sentence.
    /// `isBack`: it undid the action before.
    void wrote(const std::shared_ptr<const flarestock::Wrote> &wrote, const QString &sentence,
               bool isBack);
    /// Nobody has said who is at the desk.
    void askedWho();

private:
    struct Done {
        Action action;
        QString sentence;
    };
    using MadeBy = std::function<Result<Action>(const ShopFile &, const Workshop &, const By &)>;
    void act(const QString &sentence, MadeBy make);
    void write(const QString &sentence, const MadeBy &make, bool isBack);
    void finished(const std::shared_ptr<const Wrote> &wrote, const QString &sentence, bool isBack);
    void refuse(const QString &sentence);
    void showRows();
    [[nodiscard]] QString title() const;
    [[nodiscard]] PickList ticked(bool all) const;
    [[nodiscard]] LeakTestWords wordsOf(const QVariantMap &test) const;

    WriteShop m_write;
    bool m_readOnly = false;
    WorkedOut m_worked;
    BuildPlan m_plan;
    Units m_units = Units::Metric;
    HandedOut m_handed;
    std::set<QString> m_ticked;
    QString m_who;
    QString m_problem;
    std::function<void()> m_waiting;
    std::vector<Done> m_done;
    Rows m_steps;
    Rows m_picks;
    Rows m_inCar;
    Errand m_errand; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
