// SPDX-License-Identifier: MIT
//
// Pen: what is written into the shop from this desk, whichever area it comes from. One deed at a
// time is made out of the newest state of the shop, away from the window, signed with the name of
// who is at the desk, said in a sentence, and can be taken back. Where nobody has said who is at
// the desk, the deed waits until somebody has.
//
//   pen.act(tr("2 of AD-66 moved to C4."), [words](const ShopFile &, const Workshop &shop,
//                                                  const By &by) { return moved(words, shop, by);
//                                                  });

#pragma once

#include "app/desk/form/unwritten.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/stockroom/deed.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class Pen : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(flarestock::Unwritten *unwritten READ shownUnwritten CONSTANT)
public:
    using MadeBy = std::function<Result<ToWrite>(const ShopFile &, const Workshop &, const By &)>;
    /// What is said of an action once it is written down.
    using Sentence = std::function<QString(const Wrote &wrote)>;
    using CountBy = std::function<Result<Count>(const Workshop &, const By &)>;
    /// What is said of a count once it is written down.
    using CountSaid = std::function<QString(const Counted &counted)>;

    explicit Pen(QObject *parent = nullptr) : QObject(parent) {}

    /// How the shop is written; whether it can be.
    void setShop(const ShopOnDesk &shop);
    /// Whose name stands below what is done. What waited for it is done now.
    void setWho(const QString &who);
    /// What waits for a name is not done.
    Q_INVOKABLE void forgetWaiting() { m_waiting = nullptr; }
    /// Another shop is on the desk: nothing of the one before is taken back here.
    void forgetDone()
    {
        m_done.clear();
        m_stays.clear();
        m_unsure->tried.clear();
    }
    /// Something was written that is not taken back here: what was done before it is no more taken
    /// back as the last. `why`: a sentence with what to do instead.
    void stays(const QString &why);

    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    /// Why the last deed was not done, as a sentence with what to do; empty where it was.
    [[nodiscard]] QString problem() const { return m_problem; }
    /// Why nothing can be written at all; empty where it can.
    [[nodiscard]] QString barrier() const;
    /// Also where the last stays: then it says so.
    [[nodiscard]] bool canTakeBack() const { return !m_done.empty() || !m_stays.isEmpty(); }

    /// Writes an action; `sentence` is what it does. Nothing while another is under way.
    void act(const QString &sentence, MadeBy make);
    void act(const Sentence &sentence, MadeBy make);
    /// Writes a count, then says what it found.
    void count(CountSaid said, CountBy make);
    /// Writes changed documents: parts, offers, suppliers.
    void rewrite(const QString &sentence, MakeTexts make);
    /// Undoes the last action that was written down here.
    void takeBack();
    Q_INVOKABLE void refuse(const QString &sentence);
    /// Does something that is written by other ways than an action, once somebody has said who is
    /// at the desk. Not while a deed is under way.
    void whenNamed(std::function<void()> deed);
    [[nodiscard]] const QString &who() const { return m_who; }
    /// What is filled in and not written yet.
    [[nodiscard]] Unwritten &unwritten() { return m_unwritten; }
    [[nodiscard]] Unwritten *shownUnwritten() { return &m_unwritten; }
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
        Wrote::Texts texts; ///< Empty: an action.
    };
    struct Tried {
        MovementId action;
        std::int64_t at = 0; ///< Milliseconds since 1970, UTC.
    };
    /// Deeds that failed. Where a server or the network went away one may be in the shop, and only
    /// the answer was lost: the next deed asks first. By one thread at a time.
    struct Unsure {
        std::vector<Tried> tried;
        std::optional<Tried> found; ///< It is there, so that the deed that asked was not done.
    };
    static Result<void> askForTried(const ShopFile &file, Unsure &unsure);
    using Writing = std::function<Result<std::shared_ptr<const Wrote>>(const By &by)>;
    void write(const Sentence &sentence, const Writing &writing, bool isBack);
    void failed(const Problem &problem, const By &by);
    void finished(const std::shared_ptr<const Wrote> &wrote, const QString &sentence, bool isBack);

    WriteShop m_write;
    CountShop m_count;
    RewriteShop m_rewrite;
    bool m_readOnly = false;
    QString m_who;
    QString m_problem;
    std::function<void()> m_waiting;
    Unwritten m_unwritten;
    std::vector<Done> m_done;
    std::shared_ptr<Unsure> m_unsure = std::make_shared<Unsure>();
    QString m_stays; ///< Why what was written before those stays; empty: nothing was.
    Errand m_errand; ///< Last: it waits for its worker before the rest goes.
};

/// Whether there is anything in it that a later action could undo: what was only seen (a leak
/// test, a count that agreed) stays written down.
[[nodiscard]] bool canBeTakenBack(const Action &action);
/// The same of whatever was written; documents can always be as they were.
[[nodiscard]] bool canBeTakenBack(const Wrote &wrote);

} // namespace flarestock
