// SPDX-License-Identifier: MIT

#include "app/desk/service/papers/paper_form.h"

#include "app/desk/papers/desk_speech.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

/// The whole file or nothing. Problem: what is wrong with car, event, letterhead or file.
Result<void> writePaper(CarPaperKind kind, const CarPaperAsked &asked, const GarageBook &book,
                        const ReadShop &read)
{
    const auto paper = readOf<PaperWords>(read, [&](ShopFile &file) {
        return carPaper(kind, asked, {book.garage, file, book.today});
    });
    if (!paper)
        return tl::unexpected(paper.error());
    return writeCarPaper(asked.pdf, *paper);
}

} // namespace

void PaperForm::setBook(const std::shared_ptr<const GarageBook> &book, const ReadShop &read)
{
    m_book = book;
    m_read = read;
}

/// Those that the car is still to go to, the next first.
std::vector<const Event *> PaperForm::events() const
{
    std::vector<const Event *> all;
    if (!m_book)
        return all;
    for (const Event *one : m_book->workshop->season.from(m_book->today)) {
        if (one->takes(m_asked.car))
            all.push_back(one);
    }
    return all;
}

bool PaperForm::begin(const QString &paper, const QString &car)
{
    const bool isFilled = m_book && !m_book->garage.life(car.toStdString()).fitted.empty();
    if (!isFilled || isBusy())
        return false;
    pen().hear();
    m_kind = paper == QStringLiteral("sheet") ? CarPaperKind::Sheet : CarPaperKind::Card;
    m_asked = {};
    m_asked.car = car.toStdString();
    QStringList titles;
    for (const Event *one : events())
        titles.append(tr("%1, %2").arg(said(one->title), saidDate(one->firstDay)));
    titles.append(tr("no event: as it stands today"));
    ask({{QStringLiteral("event"),
          {tr("for"), QStringLiteral("choice"), titles, QStringLiteral("0"), QString()}},
         {QStringLiteral("size"),
          {tr("paper"), QStringLiteral("choice"),
           QStringList{QStringLiteral("A4"), QStringLiteral("Letter")}, QStringLiteral("0"),
           QString()}}});
    Q_EMIT changed();
    return true;
}

QString PaperForm::fileName() const
{
    const QString car = said(m_asked.car);
    return m_kind == CarPaperKind::Card ? QStringLiteral("service-card-%1.pdf").arg(car)
                                        : QStringLiteral("inspection-sheet-%1.pdf").arg(car);
}

QString PaperForm::title() const
{
    const Place *place = m_book ? m_book->car(m_asked.car) : nullptr;
    const QString car = said(place ? place->title : m_asked.car);
    return m_kind == CarPaperKind::Card ? tr("Service card of %1").arg(car)
                                        : tr("Inspection sheet of %1").arg(car);
}

QString PaperForm::about() const
{
    return m_kind == CarPaperKind::Card
               ? tr("For the bench: what is due until then, why, what it takes, a box to tick.")
               : tr("For the scrutineer: each piece with its lot, since when and until when.");
}

QString PaperForm::button() const
{
    return tr("Choose its file …");
}

void PaperForm::carryOut(const QVariantMap &values)
{
    const auto all = events();
    const int event = values.value(QStringLiteral("event")).toInt();
    const bool isOne = event >= 0 && event < static_cast<int>(all.size());
    m_asked.event = isOne ? all[static_cast<std::size_t>(event)]->id : std::string();
    m_asked.size = values.value(QStringLiteral("size")).toInt() == 1 ? "Letter" : "A4";
    Q_EMIT filled();
}

void PaperForm::write(const QUrl &file)
{
    if (!m_book || !m_read || isBusy())
        return;
    m_asked.pdf = file.toLocalFile().toStdString();
    m_asked.speech = deskSpeech(m_units);
    m_writing.run([this, kind = m_kind, asked = m_asked, book = m_book, read = m_read,
                   what = title()]() -> Errand::Back {
        const auto written = writePaper(kind, asked, *book, read);
        const QString sentence = written ? tr("%1 written: %2").arg(what, said(asked.pdf))
                                         : saidProblem(written.error());
        return [this, sentence] {
            Q_EMIT changed();
            Q_EMIT told(sentence);
        };
    });
    Q_EMIT changed();
}

} // namespace flarestock
