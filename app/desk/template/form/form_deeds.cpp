// SPDX-License-Identifier: MIT
//
// Deeds of the form on the text: what is typed in a field, and paragraphs that come, go and move.

#include "app/desk/template/form/offered_words.h"
#include "app/desk/template/form/template_form.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/workshop.h"
#include "model/exact/case_fold.h"
#include "model/exchange/editing/toml_literal.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 2> AlternativeOrder = {"when", "is"};

std::vector<std::string> listOf(const std::string &typed)
{
    std::vector<std::string> items;
    for (const QString &item : said(typed).split(u';', Qt::SkipEmptyParts))
        if (const QString bare = item.trimmed(); !bare.isEmpty())
            items.push_back(bare.toStdString());
    return items;
}

bool areDigits(const std::string &typed)
{
    return !typed.empty() && typed.size() < 10 &&
           typed.find_first_not_of("0123456789") == std::string::npos &&
           (typed.size() == 1 || typed.front() != '0');
}

/// "station/2/part/0/when" of "station/2/part/0/when"; the list's own place.
std::string listPlace(const QString &place)
{
    return place.section(u'/', 0, -3).toStdString();
}

} // namespace

/// What is empty is not said: its key goes.
std::optional<TextEdit> TemplateForm::typedIn(const std::string &place,
                                              const std::string &typed) const
{
    const TomlEdit edit(*m_source.document);
    const TomlValue *const was = edit.find(place);
    const QString key = said(place).section(u'/', m_at.kind == Paragraph::Top ? 0 : 2);
    const FieldForm form = formOf(m_at.kind, key.toStdString(), *table());
    const bool isAlternative = place.ends_with("/when") || place.ends_with("/is");
    const KeyOrder order =
        isAlternative && key.count(u'/') > 1 ? KeyOrder(AlternativeOrder) : keysOf(m_at.kind);
    if (trimmed(typed).empty() && !place.ends_with("/is"))
        return was == nullptr ? std::nullopt : edit.drop(place);
    if (form == FieldForm::Texts) {
        const bool isPlain =
            was == nullptr ||
            std::all_of(was->items.begin(), was->items.end(),
                        [](const TomlValue &item) { return item.form == TomlValue::Form::Text; });
        return isPlain ? edit.setTexts(place, listOf(typed), order) : std::nullopt;
    }
    if (form == FieldForm::Whole && areDigits(typed))
        return edit.set(place, typed, order);
    return edit.setText(place, typed, order);
}

void TemplateForm::vary(const QString &place, const QString &deed)
{
    if (m_source.isStale || table() == nullptr)
        return;
    const TomlEdit edit(*m_source.document);
    const TomlValue *const value = edit.find(place.toStdString());
    const std::string condition = tomlText(likelyCondition(m_source.document->root(), m_at));
    if (deed == QStringLiteral("vary") && value != nullptr) {
        const std::string text = tomlText(value->text);
        return put(edit.set(
            place.toStdString(),
            "[ { when = " + condition + ", is = " + text + " }, { is = " + text + " } ]", {}));
    }
    const std::string list = listPlace(place);
    const TomlValue *const all = edit.find(list);
    const auto at = place.section(u'/', -2, -2).toUInt();
    if (all == nullptr || at >= all->items.size() || value == nullptr)
        return;
    if (deed == QStringLiteral("more"))
        return put(
            edit.addItem(list + '/' + std::to_string(at),
                         "{ when = " + condition + ", is = " + tomlText(value->text) + " }"));
    if (all->items.size() > 2)
        return put(edit.drop(list + '/' + std::to_string(at)));
    // What is left of two stands by itself, if it has no condition.
    const TomlValue &left = all->items[all->items.size() == 2 ? 1 - at : at];
    const TomlEntry *const is = left.find("is");
    if (all->items.size() == 2 && left.find("when") != nullptr)
        return put(edit.drop(list + '/' + std::to_string(at)));
    put(edit.set(list, tomlText(is == nullptr ? std::string() : is->value.text), {}));
}

void TemplateForm::add(Kind kind)
{
    if (m_source.isStale || !m_source.document)
        return;
    const auto wanted = static_cast<Paragraph>(kind);
    const TomlValue &root = m_source.document->root();
    const std::string lines =
        freshParagraph(wanted, {root, m_at, m_workshop.get(), m_drawn.expansion});
    const bool isBehind = m_at.kind == wanted;
    const std::size_t count = countOf(wanted, root);
    const auto edit = TomlEdit(*m_source.document)
                          .addTable(headerOf(wanted), lines, headers(),
                                    isBehind ? std::optional(m_at.index) : std::nullopt);
    if (!edit)
        return;
    const ParagraphAt at{wanted, isBehind ? m_at.index + 1 : count};
    put(edit);
    choose(said(at.name()));
}

void TemplateForm::remove()
{
    if (!canRemove())
        return;
    const auto edit = TomlEdit(*m_source.document).dropTable(headerOf(m_at.kind), m_at.index);
    if (m_at.index > 0)
        --m_at.index;
    put(edit);
}

void TemplateForm::move(bool down)
{
    if (down ? !canMoveDown() : !canMoveUp())
        return;
    const std::size_t upper = down ? m_at.index : m_at.index - 1;
    const auto edit = TomlEdit(*m_source.document).swapWithNext(headerOf(m_at.kind), upper);
    if (!edit)
        return;
    m_at.index = down ? m_at.index + 1 : upper;
    put(edit);
}

QStringList TemplateForm::offers(const QString &place) const
{
    if (table() == nullptr)
        return {};
    const std::string key = place.section(u'/', m_at.kind == Paragraph::Top ? 0 : 2).toStdString();
    return offeredWords(m_at, key,
                        {m_source.document->root(), m_at, m_workshop.get(), m_drawn.expansion});
}

/// One more where a list stands, else instead of what stands there.
QString TemplateForm::withOffered(const QString &place, const QString &word) const
{
    const QString key = place.section(u'/', m_at.kind == Paragraph::Top ? 0 : 2);
    const QString now = m_fields.cell(m_fields.rowOf(place), QStringLiteral("value")).toString();
    if (table() == nullptr || now.isEmpty() ||
        formOf(m_at.kind, key.toStdString(), *table()) != FieldForm::Texts)
        return word;
    const auto items = listOf(now.toStdString());
    return std::find(items.begin(), items.end(), word.toStdString()) != items.end()
               ? now
               : QString(now + QStringLiteral("; ") + word);
}

} // namespace flarestock
