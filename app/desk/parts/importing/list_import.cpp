// SPDX-License-Identifier: MIT

#include "app/desk/parts/importing/list_import.h"

#include "app/desk/parts/importing/answers_kept.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/documents.h"

#include <QFileInfo>

namespace flarestock {

namespace {

constexpr std::size_t RowsAtOnce = 200;
constexpr int LookMs = 80;

QStringList askedCells()
{
    return {QStringLiteral("title"), QStringLiteral("value"), QStringLiteral("wrong"),
            QStringLiteral("says")};
}

} // namespace

ListImport::ListImport(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_cells(askedCells())
{
    m_look.setInterval(LookMs);
    connect(&m_look, &QTimer::timeout, this, &ListImport::changed);
    connect(&m_changes, &ListChanges::toggled, this, [this] {
        m_problem.clear();
        keepAnswers();
        Q_EMIT changed();
    });
    connect(&m_pen, &Pen::wrote, this, [this](const auto &, const QString &sentence, bool isBack) {
        if (!isBack && sentence == m_sentence)
            forget();
    });
}

ListImport::~ListImport()
{
    stop();
}

void ListImport::setShop(const ShopOnDesk &shop)
{
    m_workshop = shop.workshop;
    m_documents = shop.documents;
}

void ListImport::stop()
{
    if (m_watched)
        m_watched->isStopped = true;
}

void ListImport::forget()
{
    m_pen.unwritten().forget(keptName());
    empty();
}

void ListImport::empty()
{
    stop();
    m_list = nullptr;
    m_readFor = nullptr;
    m_file.clear();
    m_digest.clear();
    m_isOfBefore = false;
    m_problem.clear();
    m_answers.clear();
    m_question = 0;
    m_sentence.clear();
    m_changes.forget();
    show();
}

void ListImport::putAway()
{
    if (!m_list || (m_answers.empty() && !m_changes.leavesSomeOut()))
        forget();
}

void ListImport::refuse(const QString &why)
{
    m_problem = why;
    show();
}

ListImport::Read ListImport::readAll(const ListFile &file, const TextFiles &documents,
                                     const std::shared_ptr<const Workshop> &workshop,
                                     Watched &watched)
{
    Read read{workshop, nullptr, {}};
    auto list = ListReading::begin(file, documents, workshop->catalogue);
    if (!list) {
        read.problem = list.error();
        return read;
    }
    read.list = std::make_shared<ListReading>(std::move(*list));
    watched.all = read.list->rowCount();
    for (bool goesOn = true; goesOn && !watched.isStopped;) {
        const auto more = read.list->readOn(RowsAtOnce);
        if (!more) {
            read.problem = more.error();
            read.list = nullptr;
            return read;
        }
        goesOn = *more;
        watched.done = read.list->readCount();
    }
    if (watched.isStopped)
        read.list = nullptr;
    return read;
}

void ListImport::read(const QUrl &file)
{
    if (m_working.isUnderWay() || !m_workshop || !m_documents)
        return;
    forget();
    m_file = file.fileName();
    m_watched = std::make_shared<Watched>();
    m_look.start();
    m_working.run([this, path = file.toLocalFile(), name = m_file, documents = m_documents,
                   workshop = m_workshop, watched = m_watched]() -> Errand::Back {
        const auto text = textOfFile(path.toStdString());
        const auto shop = documents();
        Read read;
        if (!text || !shop)
            read.problem = text ? shop.error() : text.error();
        else
            read = readAll({*text, name.toStdString()}, *shop, workshop, *watched);
        if (text)
            read.digest = digestOf(*text);
        return [this, read, watched] {
            m_look.stop();
            m_list = read.list;
            m_readFor = read.workshop;
            m_digest = read.digest;
            if (watched->isStopped)
                m_problem = tr("Stopped. Nothing was taken in.");
            else if (!m_list)
                m_problem = saidProblem(read.problem);
            takeUpAnswers();
            showChanges();
            show();
            Q_EMIT readingChanged();
        };
    });
    Q_EMIT changed();
    Q_EMIT readingChanged();
}

double ListImport::progress() const
{
    const std::size_t all = m_watched ? m_watched->all.load() : 0;
    return all == 0 ? 0 : static_cast<double>(m_watched->done) / static_cast<double>(all);
}

int ListImport::questions() const
{
    return m_list ? static_cast<int>(m_list->asking().size()) : 0;
}

bool ListImport::isAsking() const
{
    return m_question < questions();
}

const AskedRow *ListImport::askedRow() const
{
    return isAsking() ? &m_list->asking()[static_cast<std::size_t>(m_question)] : nullptr;
}

bool ListImport::canTake() const
{
    return askedRow() != nullptr && askedRow()->meant.has_value();
}

bool ListImport::losesNothing() const
{
    return canTake() && !askedRow()->meant->leavesOut();
}

void ListImport::answer(bool take)
{
    if (!isAsking() || (take && !canTake()))
        return;
    m_answers.resize(static_cast<std::size_t>(m_question));
    m_answers.push_back(take);
    ++m_question;
    m_problem.clear();
    keepAnswers();
    showChanges();
    show();
    Q_EMIT asked();
}

void ListImport::goBack()
{
    if (m_question == 0)
        return;
    --m_question;
    m_problem.clear();
    keepAnswers();
    showChanges();
    show();
    Q_EMIT asked();
}

/// In the order of the file, so that of two rows about one thing the later one counts.
std::vector<ListRow> ListImport::answered() const
{
    std::vector<ListRow> rows = m_list->clear();
    for (std::size_t at = 0; at < m_answers.size(); ++at) {
        const AskedRow &asked = m_list->asking()[at];
        if (m_answers[at])
            rows.push_back({asked.row.line, asked.meant->cells, asked.row.before});
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const ListRow &a, const ListRow &b) { return a.line < b.line; });
    return rows;
}

std::vector<ListRow> ListImport::taken() const
{
    std::vector<ListRow> rows = answered();
    std::erase_if(rows, [this](const ListRow &row) { return m_changes.isLeftOut(row); });
    return rows;
}

void ListImport::showChanges()
{
    const bool isSettled = m_list && !isAsking();
    m_changes.show(m_list ? m_list->kind() : SheetKind::Parts,
                   isSettled ? answered() : std::vector<ListRow>());
}

void ListImport::finish()
{
    if (!m_list || isAsking() || m_pen.isBusy())
        return;
    const auto rows = std::make_shared<const std::vector<ListRow>>(taken());
    if (rows->empty())
        return refuse(tr("There is nothing to take in."));
    m_sentence = rows->size() == 1
                     ? tr("1 row of %1 taken in.").arg(m_file)
                     : tr("%1 rows of %2 taken in.")
                           .arg(QLocale().toString(static_cast<int>(rows->size())), m_file);
    m_pen.rewrite(
        m_sentence, [rows, kind = m_list->kind()](const TextFiles &newest) -> Result<TextFiles> {
            auto shop = CatalogueRows::read(newest, kind);
            if (!shop)
                return tl::unexpected(shop.error());
            std::vector<RowCells> all;
            for (const ListRow &row : *rows) {
                if (shop->find(keyOf(kind, row.cells)) != row.before)
                    return flarestock::problem(cellOf(row.cells, keyHeadings(kind).front()),
                                               "was changed at another seat meanwhile",
                                               "Read the file again.");
                all.push_back(row.cells);
            }
            return shop->with(all);
        });
}

} // namespace flarestock
