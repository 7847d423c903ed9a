// SPDX-License-Identifier: MIT
//
// BuildDesk: one build on the desk. It holds the plan (answers, picks, preference), works it out
// anew at every change and brings all lists to the new state at once. Every change is one step that
// can be taken back, with a sentence that says what it did.
//
// A change that the template or the catalogue refuses changes nothing: the field keeps what was
// typed and says what is wrong.

#pragma once

#include "app/desk/build/answer_rows.h"
#include "app/desk/build/bill_rows.h"
#include "app/desk/build/working.h"
#include "app/desk/map/line_map.h"
#include "app/desk/opened/weighing.h"

#include <optional>

namespace flarestock {

class BuildDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(QString id READ id NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString everythingHere READ everythingHere NOTIFY changed)
    Q_PROPERTY(bool isEverythingHere READ isEverythingHere NOTIFY changed)
    Q_PROPERTY(QString anythingStopped READ anythingStopped NOTIFY changed)
    Q_PROPERTY(int stoppedMark READ stoppedMark NOTIFY changed)
    Q_PROPERTY(QString billFoot READ billFoot NOTIFY changed)
    Q_PROPERTY(QString total READ total NOTIFY changed)
    Q_PROPERTY(bool billHasGot READ billHasGot NOTIFY changed)
    Q_PROPERTY(bool billHasTrailer READ billHasTrailer NOTIFY changed)
    Q_PROPERTY(bool billHasWay READ billHasWay NOTIFY changed)
    Q_PROPERTY(QString lastStep READ lastStep NOTIFY told)
    Q_PROPERTY(bool canTakeBack READ canTakeBack NOTIFY changed)
    Q_PROPERTY(bool byKind READ byKind WRITE setByKind NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString answerProblem READ answerProblem NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *answers READ answers CONSTANT)
    Q_PROPERTY(flarestock::Rows *bill READ bill CONSTANT)
    Q_PROPERTY(flarestock::Rows *findings READ findings CONSTANT)
    Q_PROPERTY(flarestock::Rows *found READ found CONSTANT)
    Q_PROPERTY(flarestock::LineMap *map READ map CONSTANT)
    Q_PROPERTY(flarestock::Opened *opened READ opened CONSTANT)
public:
    explicit BuildDesk(QObject *parent = nullptr);

    using Told = std::function<void(const Result<void> &)>;

    /// How long a change is waited for before the window goes on without it.
    void setPatience(int milliseconds) { m_working.setPatience(milliseconds); }
    /// Puts a build on the desk, and tells. Problem: the plan cannot be worked out; the one before
    /// stays.
    void open(const BuildPlan &plan, const QString &carTitle, const WorkOut &workOut, Told told);
    void close();
    /// The same plan in a shop that has changed. Problem: it cannot be worked out there.
    void workAnew(const WorkOut &workOut, Told told);
    /// Something is being worked out that is not on the screen yet.
    [[nodiscard]] bool isWorking() const { return m_working.isBusy(); }
    /// The same, in the language that the desk speaks now.
    void sayAgain();
    /// Says what has happened to the build, as the last step.
    void tell(const QString &sentence);

    [[nodiscard]] const BuildPlan &plan() const { return m_plan; }
    [[nodiscard]] const WorkedOut &worked() const { return m_worked; }

    [[nodiscard]] bool isOpen() const { return m_worked.expansion != nullptr; }
    [[nodiscard]] QString id() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const; ///< Car, date, template.
    [[nodiscard]] QString everythingHere() const;
    [[nodiscard]] bool isEverythingHere() const;
    [[nodiscard]] QString anythingStopped() const;
    [[nodiscard]] int stoppedMark() const;
    [[nodiscard]] QString billFoot() const;
    [[nodiscard]] QString total() const;
    /// Whether any line has a figure in that column: in the car, in the trailer, on the way.
    [[nodiscard]] bool billHasGot() const { return isOpen() && billColumns(m_worked).got; }
    [[nodiscard]] bool billHasTrailer() const
    {
        return isOpen() && billColumns(m_worked).inTrailer;
    }
    [[nodiscard]] bool billHasWay() const { return isOpen() && billColumns(m_worked).onTheWay; }
    [[nodiscard]] QString lastStep() const { return m_lastStep; }
    [[nodiscard]] bool canTakeBack() const { return !m_steps.empty(); }
    [[nodiscard]] bool byKind() const { return m_grouping == Grouping::Kind; }
    void setByKind(bool byKind);
    /// Whether lengths and what parts are known for are said in inches, psi and gph; else in mm,
    /// bar and L/h.
    [[nodiscard]] bool inInches() const { return m_units == Units::Inch; }
    [[nodiscard]] Units units() const { return m_units; }
    void setInInches(bool inInches);
    /// The first refused field's sentence; empty where all are good.
    [[nodiscard]] QString answerProblem() const;
    [[nodiscard]] Rows *answers() { return &m_answers; }
    [[nodiscard]] Rows *bill() { return &m_bill; }
    [[nodiscard]] Rows *findings() { return &m_findings; }
    [[nodiscard]] Rows *found() { return &m_found; }
    [[nodiscard]] LineMap *map() { return &m_map; }
    [[nodiscard]] Opened *opened() { return &m_opened; }

    /// `typed` for a measure, or the number of the choice for a choice or yes/no. Whether it was
    /// taken.
    Q_INVOKABLE bool answer(const QString &question, const QString &typed);
    /// Forgets what was refused in a field; it shows the answer that holds again.
    Q_INVOKABLE void giveUp(const QString &question);
    Q_INVOKABLE bool choose(const QString &question, int choice);
    /// A piece for a slot (station, run or joint), as Rows::cell("pick") says it.
    Q_INVOKABLE bool pick(const QString &slot, const QString &value);
    Q_INVOKABLE bool letGo(const QString &slot);
    /// Does what the finding's button says.
    Q_INVOKABLE bool mend(int finding);
    Q_INVOKABLE void takeBack();
    /// Opens a spot of the map, or whatever a finding's or bill line's `where` names.
    Q_INVOKABLE void openSpot(const QString &spot);
    Q_INVOKABLE void openAt(const QString &id);
    Q_INVOKABLE void find(const QString &typed);

Q_SIGNALS:
    void changed();
    void told(); ///< lastStep
    /// Another build is coming onto the desk; the one before is still there.
    void leaving();
    /// The plan is another one now and is to be kept.
    void planChanged();
    /// A step was taken that can be taken back.
    void stepped();

private:
    struct Step {
        BuildPlan plan; ///< As it was before.
        QString what;   ///< What the step did.
    };
    [[nodiscard]] bool take(BuildPlan plan, const QString &what);
    [[nodiscard]] bool takeIn(const BuildPlan &plan, const QString &what, Result<WorkedOut> worked);
    void takeBackTo(Result<WorkedOut> worked);
    void sayWorking();
    /// The plan with what is being worked out.
    [[nodiscard]] const BuildPlan &wanted() const { return isWorking() ? m_wanted : m_plan; }
    [[nodiscard]] const Question *question(const QString &id) const;
    [[nodiscard]] QString nameOf(const std::string &slot) const;
    [[nodiscard]] QString worstSpot() const;
    /// Lets go of the builder's own answer to what can be worked out.
    bool workOutAgain(const Question &asked);
    void refuse(const QString &question, const QString &typed, const Problem &problem);
    void show();
    void refreshOpened();
    [[nodiscard]] bool isSpot(const QString &spot) const;
    [[nodiscard]] Detail detailOf(const QString &spot) const;

    WorkOut m_workOut;
    BuildPlan m_plan;
    QString m_carTitle;
    BuildPlan m_wanted;
    WorkedOut m_worked;
    std::vector<Step> m_steps;
    RefusedAnswers m_refused;
    QString m_lastStep;
    Grouping m_grouping = Grouping::Station;
    Rows m_answers;
    Rows m_bill;
    Rows m_findings;
    Rows m_found;
    LineMap m_map;
    Opened m_opened;
    Units m_units = Units::Metric;
    Weighing m_weighing;
    Working m_working;
    bool m_isOpening = false; ///< Another build, so that this one is not changed any more.
};

} // namespace flarestock
