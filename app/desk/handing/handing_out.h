// SPDX-License-Identifier: MIT
//
// HandingOut: what a hand does with the pieces of the build on the desk: reserve, pick, issue,
// give back, call it done. Each is one action, written by the desk's pen.

#pragma once

#include "app/desk/form/kept_fields.h"
#include "app/desk/handing/changes/another_piece.h"
#include "app/desk/handing/changes/joint_again.h"
#include "app/desk/handing/handed_out.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/pen.h"
#include "app/desk/shop/shop_reading.h"

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
    Q_PROPERTY(QString against READ against NOTIFY changed)
    Q_PROPERTY(bool brakes READ brakes NOTIFY changed)
    Q_PROPERTY(bool isDone READ isDone NOTIFY changed)
    Q_PROPERTY(int tickedCount READ tickedCount NOTIFY changed)
    Q_PROPERTY(QStringList places READ places NOTIFY changed)
    Q_PROPERTY(flarestock::AnotherPiece *another READ another CONSTANT)
    Q_PROPERTY(flarestock::JointAgain *joint READ joint CONSTANT)
    Q_PROPERTY(flarestock::KeptFields *test READ test CONSTANT)
    Q_PROPERTY(flarestock::Rows *steps READ steps CONSTANT)
    Q_PROPERTY(flarestock::Rows *picks READ picks CONSTANT)
    Q_PROPERTY(flarestock::Rows *inCar READ inCar CONSTANT)
public:
    explicit HandingOut(Pen &pen, QObject *parent = nullptr);

    /// How the shop is looked up to see where what is in the car came from.
    void setReading(ReadShop read) { m_read = std::move(read); }
    /// The build on the desk as it stands now.
    void show(const WorkedOut &worked, const BuildPlan &plan, Units units);

    /// In the language that there is now.
    void sayAgain() { showRows(); }

    [[nodiscard]] bool isBusy() const { return m_pen.isBusy(); }
    /// Why the last deed was not done, as a sentence with what to do; empty where it was.
    [[nodiscard]] QString problem() const { return m_pen.problem(); }
    /// Why nothing can be done at all: read-only, a template that is tried out; empty where it can.
    [[nodiscard]] QString barrier() const;
    [[nodiscard]] QString notFound() const { return saidLacking(m_handed.picks, m_units); }
    [[nodiscard]] QString newestTest() const { return saidTest(m_handed.standing.testsNow()); }
    [[nodiscard]] QString whyNotDone() const;
    /// What speaks against calling the build done, as a sentence; empty where nothing does.
    [[nodiscard]] QString against() const { return saidAgainst(m_handed); }
    [[nodiscard]] bool brakes() const { return m_handed.brakes; }
    [[nodiscard]] bool isDone() const { return m_handed.standing.isDone(); }
    [[nodiscard]] int tickedCount() const { return static_cast<int>(m_ticked.size()); }
    [[nodiscard]] QStringList places() const; ///< Ids where pieces can be put, nearest first.
    [[nodiscard]] AnotherPiece *another() { return &m_another; }
    [[nodiscard]] JointAgain *joint() { return &m_joint; }
    [[nodiscard]] KeptFields *test() { return &m_test; } ///< What is filled in of a leak test.
    [[nodiscard]] Rows *steps() { return &m_steps; }
    [[nodiscard]] Rows *picks() { return &m_picks; }
    [[nodiscard]] Rows *inCar() { return &m_inCar; }

    Q_INVOKABLE void reserve();
    /// Ticks a pick, or takes its tick away.
    Q_INVOKABLE void tick(int row);
    /// Ticks the first pick of a part number, lot or both (LabelCode) that has none; of a bin only
    /// brings its first into hand that has none. Whether there was one.
    Q_INVOKABLE bool scan(const QString &code);
    /// Brings what is ticked to the car, or all of the list.
    Q_INVOKABLE void issue(bool all);
    /// A row of inCar, so much of it as typed, to a place; `now`: what it is from now on.
    Q_INVOKABLE void giveBack(int row, const QString &typed, const QString &to, const QString &now);
    /// Begins another() for a row of inCar. Whether it can be done.
    Q_INVOKABLE bool beginAnother(int row);
    /// Begins joint() for a spot of the map. Whether it is a joint of a build in the shop.
    Q_INVOKABLE bool beginJoint(const QString &spot);
    /// A leak test as "medium" "pressure" "held" "result" "second" "note" say it, the result as
    /// "passed" or "failed"; one that has passed ends the build. An empty map: with the test that
    /// stands already.
    Q_INVOKABLE void finish(const QVariantMap &test);
    Q_INVOKABLE void openAgain();
    /// Forgets a problem that was read.
    Q_INVOKABLE void hear() { m_pen.hear(); }

Q_SIGNALS:
    void changed();
    void found(int row); ///< By a code: it is in hand now.

private:
    void act(const QString &sentence, Pen::MadeBy make);
    void refuse(const QString &sentence) { m_pen.refuse(sentence); }
    void showRows();
    void takeUpTicks(); ///< Of a desk that ended while this was picked.
    void keepTicks();
    void readOrigins();
    [[nodiscard]] QString title() const;
    [[nodiscard]] PickList ticked(bool all) const;
    [[nodiscard]] LeakTestWords wordsOf(const QVariantMap &test) const;

    Pen &m_pen;
    ReadShop m_read;
    WorkedOut m_worked;
    BuildPlan m_plan;
    Units m_units = Units::Metric;
    HandedOut m_handed;
    std::set<QString> m_ticked;
    Rows m_steps;
    Rows m_picks;
    Rows m_inCar;
    AnotherPiece m_another;
    JointAgain m_joint;
    KeptFields m_test;
    bool m_readAgain = false; ///< The shop has changed while it was looked up.
    Errand m_reading;
};

} // namespace flarestock
