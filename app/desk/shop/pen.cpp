// SPDX-License-Identifier: MIT

#include "app/desk/shop/pen.h"

#include "app/desk/rows/pace.h"
#include "app/desk/words/spoken.h"
#include "app/stockroom/undone/taking_back.h"
#include "app/workshop/clock.h"

#include <QDateTime>
#include <QLocale>

#include <algorithm>

namespace flarestock {

namespace {

bool isOnlySeen(const Record &record)
{
    return record.kind == RecordKind::LeakTest || record.kind == RecordKind::Count;
}

/// The documents as they were before. Problem: one has gone on since.
Result<TextFiles> textsBack(const Wrote::Texts &done, const TextFiles &newest)
{
    for (const auto &[name, text] : done.now) {
        const auto is = newest.find(name);
        if (is == newest.end() || is->second != text)
            return problem(name, "was changed at another seat since, so that this stays",
                           "Look at the card as it is now, and change it again.");
    }
    return done.before;
}

} // namespace

bool canBeTakenBack(const Action &action)
{
    return !action.movements.empty() ||
           !std::all_of(action.records.begin(), action.records.end(), isOnlySeen);
}

bool canBeTakenBack(const Wrote &wrote)
{
    return !wrote.texts.now.empty() || canBeTakenBack(wrote.action);
}

void Pen::setShop(const ShopOnDesk &shop)
{
    m_write = shop.write;
    m_count = shop.count;
    m_rewrite = shop.rewrite;
    m_readOnly = shop.readOnly;
}

void Pen::setWho(const QString &who)
{
    m_who = who;
    const auto waiting = std::exchange(m_waiting, nullptr);
    if (waiting && !who.isEmpty())
        waiting();
}

QString Pen::barrier() const
{
    if (m_readOnly)
        return tr("The shop file can only be read. Ask whoever keeps it for the right to write.");
    return m_write ? QString() : tr("Nothing can be written down here.");
}

void Pen::refuse(const QString &sentence)
{
    m_problem = sentence;
    Q_EMIT changed();
}

void Pen::hear()
{
    if (!m_problem.isEmpty())
        refuse({});
}

void Pen::whenNamed(std::function<void()> deed)
{
    if (isBusy())
        return;
    if (const QString why = barrier(); !why.isEmpty())
        return refuse(why);
    if (!m_who.isEmpty())
        return deed();
    m_waiting = std::move(deed);
    Q_EMIT askedWho();
}

void Pen::act(const QString &sentence, MadeBy make)
{
    act([sentence](const Wrote &) { return sentence; }, std::move(make));
}

void Pen::act(const Sentence &sentence, MadeBy make)
{
    whenNamed([this, sentence, made = std::move(make)] {
        write(
            sentence,
            [made, unsure = m_unsure, writeShop = m_write](const By &by) {
                return writeShop([made, unsure, by](const ShopFile &file,
                                                    const Workshop &workshop) -> Result<ToWrite> {
                    if (const auto asked = askForTried(file, *unsure); !asked)
                        return tl::unexpected(asked.error());
                    return made(file, workshop, by);
                });
            },
            false);
    });
}

void Pen::count(CountSaid said, CountBy make)
{
    if (!m_count)
        return refuse(tr("Nothing can be written down here."));
    whenNamed([this, saying = std::move(said), made = std::move(make)] {
        write([saying](const Wrote &wrote) { return saying(*wrote.counted); },
              [made, countShop = m_count](const By &by) {
                  return countShop([made, by](const Workshop &shop) { return made(shop, by); });
              },
              false);
    });
}

void Pen::rewrite(const QString &sentence, MakeTexts make)
{
    if (!m_rewrite)
        return refuse(tr("Nothing can be written down here."));
    whenNamed([this, sentence, made = std::move(make)] {
        write([sentence](const Wrote &) { return sentence; },
              [made, rewriteShop = m_rewrite](const By &by) { return rewriteShop(made, by.who); },
              false);
    });
}

void Pen::write(const Sentence &sentence, const Writing &writing, bool isBack)
{
    const By by{m_who.toStdString(), {}, nowMilliseconds(), freshId()};
    m_problem.clear();
    m_errand.run([this, sentence, isBack, writing, by]() -> Errand::Back {
        const auto result = writing(by);
        return [this, sentence, isBack, result, by] {
            if (result)
                finished(*result, sentence(**result), isBack);
            else
                failed(result.error(), by);
        };
    });
    Q_EMIT changed();
}

Result<void> Pen::askForTried(const ShopFile &file, Unsure &unsure)
{
    for (const Tried &one : unsure.tried) {
        const auto movement = file.movement(one.action);
        if (!movement)
            return tl::unexpected(movement.error());
        const auto record = file.recordOf(one.action);
        if (!record)
            return tl::unexpected(record.error());
        if (*movement || *record)
            unsure.found = one;
    }
    unsure.tried.clear();
    if (unsure.found)
        return tl::unexpected(Problem{}); // failed() has the words.
    return {};
}

void Pen::failed(const Problem &problem, const By &by)
{
    if (const auto found = std::exchange(m_unsure->found, std::nullopt)) {
        const QTime at = QDateTime::fromMSecsSinceEpoch(found->at).time();
        return refuse(tr("What was to be written at %1 is in the shop: only the answer was lost. "
                         "Look at it as it is now; another Enter writes it once more.")
                          .arg(QLocale().toString(at, QLocale::ShortFormat)));
    }
    m_unsure->tried.push_back({*by.action, by.at});
    refuse(saidProblem(problem));
}

void Pen::finished(const std::shared_ptr<const Wrote> &wrote, const QString &sentence, bool isBack)
{
    const auto &records = wrote->action.records;
    const bool holdsTest = std::any_of(records.begin(), records.end(), [](const Record &record) {
        return record.kind == RecordKind::LeakTest;
    });
    if (isBack)
        m_done.pop_back();
    else if (canBeTakenBack(*wrote)) // What was seen stays written down.
        m_done.push_back(
            {wrote->action,
             holdsTest ? tr("%1 Its leak test stays written down.").arg(sentence) : sentence,
             wrote->texts});
    Q_EMIT this->wrote(wrote, isBack ? tr("Taken back: %1").arg(sentence) : sentence, isBack);
    Pace::instance().later(this, [this] { Q_EMIT changed(); });
}

void Pen::stays(const QString &why)
{
    m_done.clear();
    m_stays = why;
    Q_EMIT changed();
}

void Pen::takeBack()
{
    if (isBusy())
        return;
    if (m_done.empty())
        return refuse(m_stays);
    const auto sentence = [said = m_done.back().sentence](const Wrote &) { return said; };
    if (!m_done.back().texts.now.empty())
        return write(
            sentence,
            [texts = m_done.back().texts, rewriteShop = m_rewrite](const By &by) {
                return rewriteShop(
                    [texts](const TextFiles &newest) { return textsBack(texts, newest); }, by.who);
            },
            true);
    write(
        sentence,
        [done = m_done.back().action, writeShop = m_write](const By &by) {
            return writeShop([done, by](const ShopFile &file, const Workshop &workshop) {
                return actionTakenBack(done, file, workshop, by);
            });
        },
        true);
}

} // namespace flarestock
