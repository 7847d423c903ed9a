// SPDX-License-Identifier: MIT

#include "app/desk/keeping/shop_texts.h"

#include "app/desk/keeping/paths.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/taking_in.h"
#include "app/workshop/whole/edited_folder.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What was edited in a folder, and the shop's texts as they are.
struct LookedAt {
    TextFiles changed;
    TextFiles before;
};

Result<LookedAt> lookedAt(const std::string &folder, const ShopFile &file)
{
    auto before = file.documents();
    if (!before)
        return tl::unexpected(before.error());
    auto edited = EditedFolder::of(folder, *before);
    if (!edited)
        return tl::unexpected(edited.error());
    if (const auto can = canBeTakenIn(edited->changed, *before, file); !can)
        return tl::unexpected(can.error());
    return LookedAt{std::move(edited->changed), std::move(*before)};
}

QString lines(int count, const QString &one, const QString &several)
{
    return count == 1 ? one : several.arg(count);
}

/// "3 lines changed, 1 new"
QString saidChange(const std::string *before, const std::string &now)
{
    if (before == nullptr)
        return ShopTexts::tr("not in the shop yet");
    const ChangedLines all = changedLines(*before, now);
    QStringList said;
    if (all.changed > 0)
        said.append(
            lines(all.changed, ShopTexts::tr("1 line changed"), ShopTexts::tr("%1 lines changed")));
    if (all.added > 0)
        said.append(lines(all.added, ShopTexts::tr("1 line new"), ShopTexts::tr("%1 lines new")));
    if (all.gone > 0)
        said.append(lines(all.gone, ShopTexts::tr("1 line gone"), ShopTexts::tr("%1 lines gone")));
    return said.isEmpty() ? ShopTexts::tr("the same lines in another order")
                          : said.join(QStringLiteral(", "));
}

/// What was looked at, unless the folder or the shop has gone on since.
Result<TextFiles> asLookedAt(const std::string &folder, const TextFiles &looked,
                             const TextFiles &newest)
{
    auto edited = EditedFolder::of(folder, newest);
    if (!edited)
        return tl::unexpected(edited.error());
    if (edited->changed != looked)
        return problem(folder, "is not as it was when it was looked at",
                       "Look at what was edited once more.");
    return std::move(edited->changed);
}

} // namespace

ShopTexts::ShopTexts(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_texts({QStringLiteral("name"), QStringLiteral("says")})
{
    connect(&m_pen, &Pen::wrote, this,
            [this](const std::shared_ptr<const Wrote> &wrote, const QString &, bool isBack) {
                heed(*wrote, isBack);
            });
}

void ShopTexts::setShop(const ShopOnDesk &shop, bool isOther)
{
    if (shop.file != m_file) {
        m_taken.clear();
        m_asked = {};
    }
    m_file = shop.file;
    m_read = shop.read;
    m_documents = shop.documents;
    if (isOther)
        forget();
}

QString ShopTexts::takeWords() const
{
    if (m_looked.texts.empty())
        return {};
    return m_looked.texts.size() == 1
               ? tr("Take in 1 text")
               : tr("Take in %1 texts").arg(static_cast<int>(m_looked.texts.size()));
}

void ShopTexts::forget()
{
    m_problem.clear();
    m_written.clear();
    m_outlook.clear();
    m_looked = {};
    m_texts.become({});
    Q_EMIT changed();
}

/// Whether there is a shop and a folder to begin with.
bool ShopTexts::begin(const QString &folder)
{
    if (!m_read || !m_documents || isBusy())
        return false;
    forget();
    m_problem = folder.isEmpty() ? tr("Choose the folder first.") : notWhole(folder);
    if (!m_problem.isEmpty())
        Q_EMIT changed();
    return m_problem.isEmpty();
}

void ShopTexts::writeInto(const QString &folder)
{
    const QString into = folder.trimmed();
    if (!begin(into))
        return;
    m_errand.run([this, into, documents = m_documents]() -> Errand::Back {
        auto texts = documents();
        if (texts) {
            if (const auto done = writeDocuments(*texts, into.toStdString()); !done)
                texts = tl::unexpected(done.error());
        }
        return [this, into, texts] {
            sayWritten(into, texts);
            noteNext();
        };
    });
    Q_EMIT changed();
}

void ShopTexts::sayWritten(const QString &folder, const Result<TextFiles> &texts)
{
    if (!texts) {
        m_problem = saidProblem(texts.error());
        Q_EMIT changed();
        return;
    }
    std::vector<Row> rows;
    for (const auto &[name, text] : *texts)
        rows.push_back({said(name), {said(name), QString()}});
    const int count = static_cast<int>(rows.size());
    m_written = count == 1 ? tr("1 text was written into %1.").arg(folder)
                           : tr("%1 texts were written into %2.").arg(count).arg(folder);
    m_texts.become(std::move(rows));
    Q_EMIT changed();
    Q_EMIT told(m_written);
}

void ShopTexts::look(const QString &folder)
{
    const QString in = folder.trimmed();
    if (!begin(in))
        return;
    m_errand.run([this, in, read = m_read]() -> Errand::Back {
        const auto looked = std::make_shared<const Result<LookedAt>>(readOf<LookedAt>(
            read, [&](const ShopFile &file) { return lookedAt(in.toStdString(), file); }));
        return [this, in, looked] {
            if (*looked)
                sayEdited({in, (*looked)->changed}, (*looked)->before);
            else
                m_problem = saidProblem(looked->error());
            Q_EMIT changed();
            noteNext();
        };
    });
    Q_EMIT changed();
}

void ShopTexts::sayEdited(const Edited &edited, const TextFiles &before)
{
    std::vector<Row> rows;
    for (const auto &[name, text] : edited.texts) {
        const auto was = before.find(name);
        rows.push_back(
            {said(name),
             {said(name), saidChange(was == before.end() ? nullptr : &was->second, text)}});
    }
    m_outlook =
        rows.empty()
            ? tr("Nothing that is taken in was edited in this folder. shop.toml, stock.csv, "
                 "kept.csv, fitted.csv and outings.csv are read only when a shop is made.")
            : tr("All of them read. They are written as one step, which can be "
                 "taken back; what lies where stays as it is.");
    m_looked = edited;
    m_texts.become(std::move(rows));
}

void ShopTexts::takeIn()
{
    if (m_looked.texts.empty() || isBusy())
        return;
    m_asked = m_looked;
    const int count = static_cast<int>(m_looked.texts.size());
    const QString sentence =
        count == 1 ? tr("1 edited text taken in from %1.").arg(m_looked.folder)
                   : tr("%1 edited texts taken in from %2.").arg(count).arg(m_looked.folder);
    m_pen.rewrite(sentence, [edited = m_looked](const TextFiles &newest) {
        return asLookedAt(edited.folder.toStdString(), edited.texts, newest);
    });
}

/// The folder goes on from what the shop has of it, so that it can be taken in again and again.
void ShopTexts::heed(const Wrote &wrote, bool isBack)
{
    if (wrote.texts.now.empty())
        return;
    if (!isBack && wrote.texts.now == m_asked.texts) {
        m_taken.push_back(m_asked);
        m_toNote.push_back(std::exchange(m_asked, {}));
        forget();
        Q_EMIT tookIn();
        return noteNext();
    }
    const auto taken = std::find_if(m_taken.begin(), m_taken.end(), [&](const Edited &one) {
        return isBack && one.texts == wrote.texts.before;
    });
    if (taken == m_taken.end())
        return;
    m_toNote.push_back({taken->folder, wrote.texts.now});
    m_taken.erase(taken);
    noteNext();
}

void ShopTexts::noteNext()
{
    if (m_toNote.empty() || isBusy())
        return;
    const Edited next = m_toNote.front();
    m_toNote.erase(m_toNote.begin());
    m_errand.run([this, next]() -> Errand::Back {
        auto exported = AsExported::in(next.folder.toStdString());
        const auto noted =
            exported ? exported->taken(next.texts) : Result<void>(tl::unexpected(exported.error()));
        return [this, noted] {
            if (!noted)
                Q_EMIT told(tr("The shop has it, but the folder does not know: %1 Write the texts "
                               "into a new folder before you edit further.")
                                .arg(saidProblem(noted.error())));
            Q_EMIT changed();
            noteNext();
        };
    });
    Q_EMIT changed();
}

} // namespace flarestock
