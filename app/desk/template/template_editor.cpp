// SPDX-License-Identifier: MIT

#include "app/desk/template/template_editor.h"

#include "app/desk/template/typed_text.h"
#include "app/desk/words/spoken.h"

#include <QTextCursor>

namespace flarestock {

namespace {

/// A template that is no document of the shop yet is read under this name.
constexpr auto NotYetWritten = "templates/ not written yet.toml";

std::string nameFor(const std::string &file)
{
    return file.empty() ? NotYetWritten : file;
}

} // namespace

TemplateEditor::TemplateEditor(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_faultRows({QStringLiteral("line"), QStringLiteral("says")}),
      m_openRows({QStringLiteral("says")})
{
    listen();
    connect(&m_form, &TemplateForm::edited, this, &TemplateEditor::apply);
    connect(&m_form, &TemplateForm::chose, this, [this](qulonglong byte) {
        Q_EMIT wentTo(placeOnSheet(*m_readable.text, static_cast<std::size_t>(byte)));
    });
    connect(&m_pen, &Pen::wrote, this,
            [this](const std::shared_ptr<const Wrote> &wrote, const QString &, bool isBack) {
                if (!isBack && m_isOpen)
                    takeWritten(*wrote);
            });
}

/// Whatever else was written through the pen is nothing to this text.
void TemplateEditor::takeWritten(const Wrote &wrote)
{
    const auto now = wrote.texts.now.find(fileName());
    if (now == wrote.texts.now.end() || now->second != typed().text)
        return;
    const QString id = said(m_read.top("id"));
    m_begun = now->second;
    close();
    Q_EMIT written(id);
}

void TemplateEditor::listen()
{
    disconnect(m_typing);
    m_typing = connect(m_sheet, &QTextDocument::contentsChanged, this, [this] {
        std::string text = textOn(*m_sheet);
        if (m_isOpen && m_read.text && text != *m_read.text) {
            m_pen.hear(); // What was refused was another text.
            m_field.clear();
            readAnew(std::move(text));
            Q_EMIT typedOn();
        }
    });
}

void TemplateEditor::setSheet(QQuickTextDocument *sheet)
{
    if (sheet == m_shown)
        return;
    const QString text = m_sheet->toRawText();
    m_shown = sheet;
    m_sheet = sheet == nullptr ? &m_own : sheet->textDocument();
    listen();
    if (m_isOpen)
        m_sheet->setPlainText(text);
    Q_EMIT sheetChanged();
}

void TemplateEditor::setShop(const std::shared_ptr<const Workshop> &workshop, TextFiles texts)
{
    m_workshop = workshop;
    m_form.setShop(workshop);
    m_texts = std::move(texts);
    if (m_isOpen)
        draw();
}

void TemplateEditor::begin(const TypedTemplate &typed)
{
    m_isOpen = true;
    m_file = typed.file;
    m_begun = typed.begun;
    m_readable = {};
    m_drawnText = nullptr;
    m_spot.clear();
    m_map.show({});
    m_form.begin();
    m_openRows.become({});
    m_read = readText({}, nameFor(m_file));
    m_sheet->setPlainText(said(typed.text)); // Its history begins here.
    readAnew(textOn(*m_sheet));
    Q_EMIT opened();
}

void TemplateEditor::setInInches(bool inInches)
{
    if (inInches == m_inInches)
        return;
    m_inInches = inInches;
    m_map.setUnits(inInches ? Units::Inch : Units::Metric);
    Q_EMIT changed();
}

TypedTemplate TemplateEditor::typed() const
{
    const std::string text = m_read.text ? *m_read.text : std::string();
    return {m_file, m_begun, asInFile(text, m_begun)};
}

bool TemplateEditor::isChanged() const
{
    return m_isOpen && (m_file.empty() || typed().text != m_begun);
}

void TemplateEditor::close()
{
    m_isOpen = false;
    m_isBehind = false;
    m_pen.hear();
    Q_EMIT closed();
    Q_EMIT changed();
}

void TemplateEditor::readAnew(std::string text)
{
    m_read = readText(std::move(text), nameFor(m_file));
    m_notDrawn.reset();
    if (m_read.document)
        m_readable = m_read;
    if (m_read.isWhole())
        draw();
    showFaults();
}

void TemplateEditor::draw()
{
    m_isBehind = m_drawing.isUnderWay();
    if (m_isBehind || !m_workshop || !m_read.isWhole())
        return;
    TextFiles texts = m_texts;
    texts.insert_or_assign(nameFor(m_file), *m_read.text);
    m_drawing.run([this, texts, text = m_read.text, id = m_read.form->id,
                   workshop = m_workshop]() -> Errand::Back {
        const auto drawn = std::make_shared<const DrawnTemplate>(drawTemplate(workshop, texts, id));
        return [this, text, drawn] { take(text, *drawn); };
    });
    Q_EMIT changed();
}

void TemplateEditor::take(const std::shared_ptr<const std::string> &text,
                          const DrawnTemplate &drawn)
{
    const bool isThis = m_isOpen && *text == *m_read.text;
    if (m_isOpen && drawn.worked.expansion != nullptr) {
        m_drawnText = text;
        m_map.show(drawn.worked);
        m_form.setDrawn(drawn.worked);
        std::vector<Row> rows;
        for (const QString &sentence : drawn.open)
            rows.push_back({QString::number(rows.size()), {sentence}});
        m_openRows.become(std::move(rows));
    }
    if (isThis)
        m_notDrawn = drawn.problem;
    showFaults();
    if (std::exchange(m_isBehind, false))
        draw();
}

std::vector<Problem> TemplateEditor::allFaults() const
{
    std::vector<Problem> all = m_read.faults;
    if (m_notDrawn) {
        all.push_back(*m_notDrawn);
        if (all.back().thing == nameFor(m_file))
            all.back().thing.clear();
    }
    return all;
}

void TemplateEditor::showFaults()
{
    std::vector<Row> rows;
    for (const Problem &fault : allFaults())
        rows.push_back(
            {QString::number(rows.size()), {static_cast<int>(fault.line), saidFault(fault)}});
    m_faultRows.become(std::move(rows));
    showForm();
    Q_EMIT changed();
}

void TemplateEditor::showForm()
{
    const bool isStale = !m_read.document;
    m_form.show({m_readable.text, m_readable.document,
                 isStale ? std::vector<Problem>() : allFaults(), isStale});
}

/// On the sheet, so that its history has it. What is typed in one field goes on as one step.
void TemplateEditor::apply(const TextEdit &edit, const QString &place)
{
    const std::string text = *m_read.text;
    QTextCursor cursor(m_sheet);
    if (!place.isEmpty() && place == m_field)
        cursor.joinPreviousEditBlock();
    else
        cursor.beginEditBlock();
    cursor.setPosition(placeOnSheet(text, edit.at));
    cursor.setPosition(placeOnSheet(text, edit.at + edit.removed), QTextCursor::KeepAnchor);
    cursor.insertText(said(edit.put));
    cursor.endEditBlock();
    m_field = place;
}

void TemplateEditor::undo()
{
    m_sheet->undo();
}

void TemplateEditor::redo()
{
    m_sheet->redo();
}

QString TemplateEditor::title() const
{
    const QString title = said(m_readable.top("title"));
    return title.isEmpty() ? tr("Template") : tr("Template: %1").arg(title);
}

QString TemplateEditor::standing() const
{
    const int faults = m_faultRows.count();
    if (faults > 0)
        return faults == 1 ? tr("One place is not right yet.")
                           : tr("%1 places are not right yet.").arg(faults);
    if (!isChanged())
        return tr("As it stands in the shop.");
    return isDrawing() ? tr("Being drawn.") : tr("Not written down yet.");
}

QString TemplateEditor::stale() const
{
    if (!m_isOpen || m_read.document)
        return {};
    return tr("The text cannot be read just now, so the form shows it as it was before.");
}

QString TemplateEditor::mapStale() const
{
    if (!m_isOpen || isDrawing() || (m_drawnText && *m_drawnText == *m_read.text))
        return {};
    return m_drawnText ? tr("The map shows the last text that could be drawn.")
                       : tr("Nothing could be drawn of this text yet.");
}

int TemplateEditor::faultLine() const
{
    return m_faultRows.cell(0, QStringLiteral("line")).toInt();
}

void TemplateEditor::goToFault(int row)
{
    const auto faults = allFaults();
    if (row < 0 || row >= static_cast<int>(faults.size()))
        return;
    const Problem &fault = faults[static_cast<std::size_t>(row)];
    if (fault.line > 0)
        Q_EMIT wentTo(placeOnSheet(*m_sheet, fault.line, fault.column));
}

void TemplateEditor::openSpot(const QString &spot)
{
    m_spot = spot;
    m_form.chooseSpot(spot);
    Q_EMIT changed();
}

} // namespace flarestock
