// SPDX-License-Identifier: MIT

#include "app/desk/template/form/template_form.h"

#include "app/desk/words/spoken.h"
#include "app/workshop/workshop.h"

#include <algorithm>

namespace flarestock {

namespace {

/// "station/2/part/0/when" is of the key "part", "module/0/answers/fluid" of "answers".
std::string keyOfPlace(const std::string &place)
{
    const auto at = ParagraphAt::of(place.substr(0, place.find('/')) + "/0");
    if (!at)
        return place.substr(0, place.find('/'));
    const QString key = said(place).section(u'/', 2, 2);
    return key.toStdString();
}

} // namespace

TemplateForm::TemplateForm(QObject *parent)
    : QObject(parent), m_paragraphs(paragraphCells()), m_fields(templateFieldCells())
{
}

void TemplateForm::setShop(const std::shared_ptr<const Workshop> &workshop)
{
    m_workshop = workshop;
}

void TemplateForm::begin()
{
    m_at = {};
    m_drawn = {};
    m_source = {};
    m_fields.become({});
    m_paragraphs.become({}); // The heads of its groups are those of another template.
}

FormRead TemplateForm::read() const
{
    return {m_source.document->root(), m_source.faults, [this](const std::string &id) {
                std::vector<std::pair<QString, QString>> all;
                const auto form =
                    m_workshop ? m_workshop->templates->find(id) : TemplateBook::const_iterator();
                if (!m_workshop || form == m_workshop->templates->end())
                    return all;
                for (const ::flarestock::Question &asked : form->second->questions)
                    all.emplace_back(said(asked.id), said(asked.title));
                return all;
            }};
}

void TemplateForm::show(const FormSource &source)
{
    m_source = source;
    if (m_source.document) {
        const std::size_t count = countOf(m_at.kind, m_source.document->root());
        if (m_at.kind != Paragraph::Top && count == 0)
            m_at = {};
        else if (m_at.kind != Paragraph::Top)
            m_at.index = std::min(m_at.index, count - 1);
        m_paragraphs.become(paragraphRows(m_source.document->root(), m_source.faults));
    }
    showFields();
}

void TemplateForm::showFields()
{
    if (m_source.document) {
        m_fields.become(templateFieldRows(m_at, read()));
        m_problem = paragraphProblem(m_at, read());
    }
    Q_EMIT changed();
}

const TomlValue *TemplateForm::table() const
{
    return m_source.document ? m_at.in(m_source.document->root()) : nullptr;
}

QString TemplateForm::chosenTitle() const
{
    return m_paragraphs.cell(m_paragraphs.rowOf(chosen()), QStringLiteral("title")).toString();
}

bool TemplateForm::canRemove() const
{
    return m_at.kind != Paragraph::Top && table() != nullptr && !m_source.isStale;
}

bool TemplateForm::canMoveDown() const
{
    return canRemove() && m_at.index + 1 < countOf(m_at.kind, m_source.document->root());
}

void TemplateForm::choose(const QString &paragraph)
{
    const auto at = ParagraphAt::of(paragraph.toStdString());
    if (!at || !m_source.document || *at == m_at || at->in(m_source.document->root()) == nullptr)
        return;
    m_at = *at;
    showFields();
    if (m_source.isStale)
        return;
    const TomlPlaces places(*m_source.document);
    Q_EMIT chose(at->kind == Paragraph::Top ? 0 : places.value(*table()).begin);
}

void TemplateForm::chooseSpot(const QString &spot)
{
    const QString kind = spot.section(u'|', 0, 0);
    QString id = spot.section(u'|', 1).section(u'/', 0, 0);
    const bool isInside = spot.contains(u'/');
    if (kind == QStringLiteral("joint"))
        id = id.startsWith(QStringLiteral("plug:")) ? id.mid(5).section(u'.', 0, 0)
                                                    : id.section(u'.', 0, -2);
    if (!m_source.document)
        return;
    const bool isRun = kind == QStringLiteral("run") ||
                       (kind == QStringLiteral("joint") && !spot.contains(QStringLiteral("plug:")));
    const Paragraph wanted = isInside ? Paragraph::Module
                             : isRun  ? Paragraph::Run
                                      : Paragraph::Station;
    const TomlValue &root = m_source.document->root();
    for (std::size_t at = 0; at < countOf(wanted, root); ++at) {
        const ParagraphAt one{wanted, at};
        const TomlValue *const table = one.in(root);
        const TomlEntry *const named = table == nullptr ? nullptr : table->find("id");
        if (named != nullptr && said(named->value.text) == id)
            return choose(said(one.name()));
    }
}

void TemplateForm::put(const std::optional<TextEdit> &edit, const QString &place)
{
    if (edit && (edit->removed > 0 || !edit->put.empty()))
        Q_EMIT edited(*edit, place);
}

void TemplateForm::fill(const QString &place, const QVariant &filled)
{
    const int row = m_fields.rowOf(place);
    if (m_source.isStale || row < 0 || m_fields.cell(row, QStringLiteral("value")) == filled ||
        m_fields.cell(row, QStringLiteral("value")).toString() == filled.toString())
        return;
    put(filledIn(place.toStdString(), filled), place);
}

std::optional<TextEdit> TemplateForm::filledIn(const std::string &place,
                                               const QVariant &filled) const
{
    const TomlValue *const now = table();
    if (now == nullptr)
        return std::nullopt;
    const FieldForm form = formOf(m_at.kind, keyOfPlace(place), *now);
    if (form == FieldForm::Word || form == FieldForm::YesNo)
        return chosenIn(place, filled.toInt());
    // The text has points, and the field shows the text: a point is never taken for a group's.
    const QString typed = filled.toString();
    const bool isMeasure = canBeMeasured(keyOfPlace(place));
    return typedIn(place, (isMeasure ? unlocalised(typed) : typed).toStdString());
}

std::optional<TextEdit> TemplateForm::chosenIn(const std::string &place, int choice) const
{
    const std::string key = keyOfPlace(place);
    const auto choices = choicesOf(m_at.kind, key, *table());
    if (choice < 0 || static_cast<std::size_t>(choice) >= choices.size())
        return std::nullopt;
    const TomlEdit edit(*m_source.document);
    const std::string &word = choices[static_cast<std::size_t>(choice)];
    if (word.empty())
        return edit.drop(place);
    const TomlValue *const was = edit.find(place);
    const bool isFlag = formOf(m_at.kind, key, *table()) == FieldForm::YesNo ||
                        (was != nullptr && was->form == TomlValue::Form::YesNo);
    if (isFlag)
        return edit.set(place, word == "yes" ? "true" : "false", keysOf(m_at.kind));
    return edit.setText(place, word, keysOf(m_at.kind));
}

} // namespace flarestock
