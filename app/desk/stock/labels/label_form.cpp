// SPDX-License-Identifier: MIT

#include "app/desk/stock/labels/label_form.h"

#include "app/desk/papers/desk_speech.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"
#include "app/workshop/clock.h"

namespace flarestock {

Row labelRow()
{
    const QString label = LabelForm::tr("Label");
    const QString detail =
        LabelForm::tr("With a code that scans, for the part, its lot or its place, as a PDF.");
    return {QStringLiteral("label"),
            {label, true, detail, QString(label + QStringLiteral(". ") + detail)}};
}

std::vector<LabelForm::For> LabelForm::choices() const
{
    std::vector<For> all;
    if (m_begun.entry->part != nullptr)
        all.push_back(For::Part);
    if (m_begun.pieces && !m_begun.pieces->lot.empty() && m_begun.entry->part != nullptr &&
        m_begun.pieces->lot != m_begun.entry->number) // A made-up hose: its tag is both.
        all.push_back(For::Lot);
    if (m_begun.place() != nullptr && isStock(m_begun.place()->kind))
        all.push_back(For::Place);
    if (!m_begun.book->places.empty())
        all.push_back(For::AllPlaces);
    return all;
}

bool LabelForm::begin()
{
    if (m_subject.entry == nullptr || isBusy())
        return false;
    pen().hear();
    m_begun = m_subject;
    QStringList titles;
    for (const For one : choices())
        titles.append(saidFor(one));
    if (titles.isEmpty())
        return false;
    ask({choiceField("for", tr("for what"), titles),
         figureField("count", tr("how many of each"), QStringLiteral("1")),
         figureField("size", tr("size, width by height in mm"), localised(said(m_file.size)),
                     QStringLiteral("50x25"))});
    Q_EMIT changed();
    return true;
}

QString LabelForm::saidFor(For what) const
{
    switch (what) {
    case For::Part:
        return tr("the part %1").arg(said(m_begun.entry->number));
    case For::Lot:
        return tr("its lot %1").arg(said(m_begun.pieces->lot));
    case For::Place:
        return tr("the place %1").arg(said(m_begun.pieces->place));
    case For::AllPlaces:
        break;
    }
    return tr("every bin, shelf and drawer");
}

std::vector<Label> LabelForm::labels(For what) const
{
    const Workshop &shop = *m_begun.book->workshop;
    const std::string &number = m_begun.entry->number;
    const std::string here = m_begun.pieces && m_begun.place() && isStock(m_begun.place()->kind)
                                 ? m_begun.pieces->place
                                 : std::string();
    const Speaking speech = deskSpeech(m_begun.units);
    std::vector<Label> all;
    switch (what) {
    case For::Part:
        all.push_back(partLabel(*m_begun.entry->part, lyingIn(number, {}, shop.ledger), *speech));
        break;
    case For::Lot:
        all.push_back(lotLabel(*m_begun.entry->part, m_begun.pieces->lot, here, {shop, *speech}));
        break;
    case For::Place:
        all.push_back(placeLabel(*m_begun.place()));
        break;
    case For::AllPlaces:
        for (const std::string &id : m_begun.book->places)
            all.push_back(placeLabel(*shop.ledger.place(id)));
        break;
    }
    return all;
}

QString LabelForm::fileName() const
{
    if (m_begun.entry == nullptr)
        return {};
    QString what = said(m_begun.entry->number);
    if (m_for == For::Lot)
        what += u'-' + said(m_begun.pieces->lot);
    else if (m_for == For::Place)
        what = said(m_begun.pieces->place);
    else if (m_for == For::AllPlaces)
        what = QStringLiteral("places");
    for (QChar &letter : what) {
        if (!letter.isLetterOrNumber() && letter != u'.')
            letter = u'-';
    }
    return QStringLiteral("labels-%1.pdf").arg(what);
}

QString LabelForm::title() const
{
    return m_begun.entry == nullptr ? QString()
                                    : tr("Labels for %1").arg(said(m_begun.entry->number));
}

QString LabelForm::about() const
{
    return tr("A page a label. The code is what a hand would type, and the scanner types it for "
              "one.");
}

QString LabelForm::button() const
{
    return tr("Choose its file …");
}

void LabelForm::carryOut(const QVariantMap &values)
{
    const auto all = choices();
    const int chosen = values.value(QStringLiteral("for")).toInt();
    bool isNumber = false;
    const int count = said(figuresTyped(values, "count")).toInt(&isNumber);
    if (!isNumber || count < 1 || count > LabelsMost)
        return pen().refuse(tr("Say how many of each: 1 to %1.").arg(LabelsMost));
    const std::string size = figuresTyped(values, "size");
    if (const auto right = labelSizeAsked(size); !right)
        return pen().refuse(saidProblem(right.error()));
    if (chosen < 0 || chosen >= static_cast<int>(all.size()))
        return;
    m_for = all[static_cast<std::size_t>(chosen)];
    m_count = count;
    m_file.size = size;
    pen().hear();
    Q_EMIT changed();
    Q_EMIT filled();
}

void LabelForm::write(const QUrl &file)
{
    if (m_begun.entry == nullptr || isBusy())
        return;
    m_file.labels = file.toLocalFile().toStdString();
    std::vector<Label> all;
    for (const Label &one : labels(m_for))
        all.insert(all.end(), static_cast<std::size_t>(m_count), one);
    m_writing.run([this, all, asked = m_file, what = saidFor(m_for)]() -> Errand::Back {
        const auto written = writeLabels(asked, all, nowMilliseconds());
        const QString count =
            all.size() == 1
                ? tr("1 label")
                : tr("%1 labels").arg(QLocale().toString(static_cast<qulonglong>(all.size())));
        const QString sentence =
            written ? tr("%1 for %2 written: %3").arg(count, what, said(asked.labels))
                    : saidProblem(written.error());
        return [this, sentence] {
            Q_EMIT changed();
            Q_EMIT told(sentence);
        };
    });
    Q_EMIT changed();
}

} // namespace flarestock
