// SPDX-License-Identifier: MIT
//
// A load list for the hand that walks with it: a paper, a table or a sheet for a spreadsheet
// program, by the ending of its file.

#include "app/desk/papers/desk_speech.h"
#include "app/desk/trailer/drawers/load_list.h"
#include "app/desk/words/spoken.h"
#include "app/sheet/load_rows.h"
#include "app/sheet/paper_files.h"

#include <QLocale>

namespace flarestock {

namespace {

/// The size of paper that the person's country uses.
std::string usualPaper()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? "Letter" : "A4";
}

PaperMaking makingOf(const std::shared_ptr<const TrailerBook> &book, LoadList::Way way)
{
    const LoadFor what{book->asked.day, book->workshop->season.event(book->event)};
    if (way == LoadList::Way::In)
        return {[book, what](PaperWords paper) {
                    return loadPaper(book->load, what, std::move(paper));
                },
                [book, what] { return loadRows(book->load, what.day); }};
    return {[book, what](PaperWords paper) {
                return unloadPaper(book->unload, what, std::move(paper));
            },
            [book, what] { return unloadRows(book->unload, what.day); }};
}

} // namespace

QString LoadList::fileName() const
{
    return m_way == Way::In ? QStringLiteral("load-list.pdf") : QStringLiteral("unload-list.pdf");
}

void LoadList::writeTo(const QUrl &file)
{
    if (!m_book || !m_readShop || m_writing.isUnderWay())
        return;
    const QString path = file.toLocalFile();
    PaperAsked asked = paperInto(path.toStdString());
    asked.paper = usualPaper();
    asked.speech = deskSpeech(m_units);
    m_writing.run(
        [this, asked, path, book = m_book, way = m_way, read = m_readShop]() -> Errand::Back {
            const auto written = read([&](ShopFile &shop, const Workshop &) {
                return writePapers(asked, shop, makingOf(book, way));
            });
            return [this, written, path] {
                Q_EMIT told(written ? tr("Written: %1").arg(path) : saidProblem(written.error()));
            };
        });
}

} // namespace flarestock
