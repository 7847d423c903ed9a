// SPDX-License-Identifier: MIT

#include "app/desk/papers/build_papers.h"

#include "app/buyer/whole_file.h"
#include "app/desk/language/sentences.h"
#include "app/desk/papers/desk_speech.h"
#include "app/desk/words/spoken.h"
#include "app/garage/cautions.h"
#include "app/sheet/build/build_sheet.h"
#include "app/sheet/build/pick_rows.h"
#include "app/sheet/paper_files.h"
#include "app/workshop/made_up.h"

#include <QDateTime>

namespace flarestock {

namespace {

struct PaperSize {
    const char *name;
    QPageSize::PageSizeId id;
};
/// The third is for the map alone.
constexpr PaperSize Sizes[] = {
    {"A4", QPageSize::A4}, {"Letter", QPageSize::Letter}, {"A3", QPageSize::A3}};

/// What a list is made of, for a thread of its own; `alive` keeps what the rest points into.
struct ListOf {
    WorkedOut worked;
    BuildPlan plan;
    PaperAsked asked;
    std::string day;
};

PaperMaking sheetMaking(const ListOf &of)
{
    const auto sheet = [of](const Speech &speech) {
        return buildSheet(*of.worked.built, *of.worked.workshop, of.plan, speech);
    };
    return {[of, sheet](PaperWords paper) {
                const BuildSheet said = sheet(*paper.speech); // Before the paper is moved.
                return buildSheetPaper(said, of.plan, of.day, std::move(paper));
            },
            [of, sheet] { return buildSheetRows(sheet(*plainSpeech()), of.day); }};
}

PaperMaking pickMaking(const ListOf &of)
{
    auto list =
        std::make_shared<const PickList>(pickList(*of.worked.built, *of.worked.workshop, of.plan));
    return {[of, list](PaperWords paper) {
                return pickPaper(*list, of.plan, of.day, std::move(paper));
            },
            [of, list] { return pickRows(*list, of.day); }};
}

Result<void> writeMap(const QString &path, const WorkedOut &worked, const MapPaperWords &words)
{
    const QByteArray pdf = mapPdf(worked, words);
    return writeWhole(path.toStdString(), {pdf.constData(), static_cast<std::size_t>(pdf.size())});
}

std::string today()
{
    return dayOf(QDateTime::currentMSecsSinceEpoch());
}

} // namespace

bool BuildPapers::begin()
{
    if (!m_build.isOpen() || m_build.worked().built == nullptr || isBusy())
        return false;
    pen().hear();
    QStringList papers{tr("build sheet: each step with rings and torques"),
                       tr("line map, as on the screen")};
    if (!m_build.plan().id.empty())
        papers.insert(1, tr("pick list: what lies where"));
    ask({choiceField("paper", tr("which"), papers),
         choiceField("size", tr("paper"),
                     {QStringLiteral("A4"), QStringLiteral("Letter"), tr("A3, for the map")})});
    Q_EMIT changed();
    return true;
}

QString BuildPapers::fileName() const
{
    const BuildPlan &plan = m_build.plan();
    const QString build = said(plan.id.empty() ? plan.templateId : plan.id);
    switch (m_paper) {
    case Paper::BuildSheet:
        return QStringLiteral("build-sheet-%1.pdf").arg(build);
    case Paper::PickList:
        return QStringLiteral("pick-list-%1.pdf").arg(build);
    case Paper::LineMap:
        return QStringLiteral("line-map-%1.pdf").arg(build);
    }
    return {};
}

QStringList BuildPapers::filters() const
{
    if (m_paper == Paper::LineMap)
        return {QStringLiteral("PDF (*.pdf)")};
    return {QStringLiteral("PDF (*.pdf)"), QStringLiteral("XLSX (*.xlsx)"),
            QStringLiteral("CSV (*.csv)")};
}

QString BuildPapers::title() const
{
    return tr("Papers of %1").arg(m_build.title());
}

QString BuildPapers::about() const
{
    return tr("Of the build as it stands on the desk now.");
}

QString BuildPapers::button() const
{
    return tr("Choose its file …");
}

void BuildPapers::carryOut(const QVariantMap &values)
{
    const int which = values.value(QStringLiteral("paper")).toInt();
    const bool isPlanned = !m_build.plan().id.empty();
    m_paper = which == 0                ? Paper::BuildSheet
              : which == 1 && isPlanned ? Paper::PickList
                                        : Paper::LineMap;
    m_size = std::clamp(values.value(QStringLiteral("size")).toInt(), 0, 2);
    Q_EMIT changed();
    Q_EMIT filled();
}

MapPaperWords BuildPapers::mapWords() const
{
    return {m_build.title(),
            m_build.about(),
            saidDate(today()),
            inWords(AdviceOnly),
            QPageSize(Sizes[m_size].id),
            m_build.units()};
}

void BuildPapers::write(const QUrl &file)
{
    if (isBusy() || !m_build.isOpen())
        return;
    const QString path = file.toLocalFile();
    const auto tell = [this, path](const Result<void> &written) {
        Q_EMIT changed();
        Q_EMIT told(written ? tr("Written: %1").arg(path) : saidProblem(written.error()));
    };
    if (m_paper == Paper::LineMap) {
        m_writing.run(
            [tell, path, worked = m_build.worked(), words = mapWords()]() -> Errand::Back {
                const auto written = writeMap(path, worked, words);
                return [written, tell] { tell(written); };
            });
        Q_EMIT changed();
        return;
    }
    if (!m_read)
        return;
    ListOf of{m_build.worked(), m_build.plan(), {}, today()};
    of.asked = paperInto(path.toStdString());
    of.asked.paper = Sizes[m_size == 1 ? 1 : 0].name;
    of.asked.speech = deskSpeech(m_build.units());
    m_writing.run([of, paper = m_paper, read = m_read, tell]() -> Errand::Back {
        const auto written = read([&](ShopFile &shop, const Workshop &) {
            return writePapers(of.asked, shop,
                               paper == Paper::PickList ? pickMaking(of) : sheetMaking(of));
        });
        return [written, tell] { tell(written); };
    });
    Q_EMIT changed();
}

} // namespace flarestock
