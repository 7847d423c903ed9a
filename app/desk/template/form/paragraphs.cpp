// SPDX-License-Identifier: MIT

#include "app/desk/template/form/paragraphs.h"

#include "app/desk/template/form/template_form.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::string_view TopName = "top";

QString sectionOf(Paragraph kind)
{
    switch (kind) {
    case Paragraph::Top:
        return TemplateForm::tr("template");
    case Paragraph::Question:
        return TemplateForm::tr("questions");
    case Paragraph::Station:
        return TemplateForm::tr("stations");
    case Paragraph::Run:
        return TemplateForm::tr("runs");
    case Paragraph::Module:
        return TemplateForm::tr("modules");
    case Paragraph::Extra:
        break;
    }
    return TemplateForm::tr("extras");
}

QString textOf(const TomlValue &table, std::string_view key)
{
    const TomlEntry *const entry = table.find(key);
    return entry == nullptr ? QString() : said(entry->value.text);
}

QString titleOf(Paragraph kind, const TomlValue &table)
{
    const char *key = kind == Paragraph::Extra                              ? "why"
                      : kind == Paragraph::Run || kind == Paragraph::Module ? "id"
                                                                            : "title";
    const QString title = textOf(table, key);
    return title.isEmpty() ? TemplateForm::tr("without a name") : title;
}

QString detailOf(Paragraph kind, const TomlValue &table)
{
    switch (kind) {
    case Paragraph::Top:
        return textOf(table, "system");
    case Paragraph::Question:
        return textOf(table, "default");
    case Paragraph::Station:
        return textOf(table, "kind");
    case Paragraph::Run:
        return TemplateForm::tr("%1 to %2").arg(textOf(table, "from"), textOf(table, "to"));
    case Paragraph::Module:
        return textOf(table, "template");
    case Paragraph::Extra:
        break;
    }
    return textOf(table, "part");
}

} // namespace

std::optional<ParagraphAt> ParagraphAt::of(std::string_view name)
{
    if (name == TopName)
        return ParagraphAt();
    const std::size_t slash = std::min(name.find('/'), name.size());
    for (std::size_t kind = 1; kind < ParagraphCount; ++kind) {
        if (headerOf(static_cast<Paragraph>(kind)) != name.substr(0, slash))
            continue;
        const QString number = said(name.substr(std::min(slash + 1, name.size())));
        return ParagraphAt{static_cast<Paragraph>(kind), number.toUInt()};
    }
    return std::nullopt;
}

std::string ParagraphAt::name() const
{
    return kind == Paragraph::Top ? std::string(TopName)
                                  : std::string(headerOf(kind)) + '/' + std::to_string(index);
}

std::string ParagraphAt::place(std::string_view key) const
{
    return kind == Paragraph::Top ? std::string(key) : name() + '/' + std::string(key);
}

const TomlValue *ParagraphAt::in(const TomlValue &root) const
{
    if (kind == Paragraph::Top)
        return &root;
    const TomlEntry *const list = root.find(headerOf(kind));
    const bool isThere = list != nullptr && index < list->value.items.size() &&
                         list->value.items[index].form == TomlValue::Form::Table;
    return isThere ? &list->value.items[index] : nullptr;
}

std::size_t countOf(Paragraph kind, const TomlValue &root)
{
    const TomlEntry *const list = kind == Paragraph::Top ? nullptr : root.find(headerOf(kind));
    return list == nullptr ? 0 : list->value.items.size();
}

LinesOf linesOf(const ParagraphAt &at, const TomlValue &root)
{
    const TomlValue *const table = at.in(root);
    LinesOf lines{at.kind == Paragraph::Top || table == nullptr ? 1 : table->line, 0};
    for (std::size_t kind = 1; kind < ParagraphCount; ++kind) {
        const TomlEntry *const list = root.find(headerOf(static_cast<Paragraph>(kind)));
        for (std::size_t i = 0; list != nullptr && i < list->value.items.size(); ++i) {
            const std::uint32_t line = list->value.items[i].line;
            const bool isThis = ParagraphAt{static_cast<Paragraph>(kind), i} == at;
            if (!isThis && line >= lines.first && (lines.behind == 0 || line < lines.behind))
                lines.behind = line;
        }
    }
    return lines;
}

QStringList paragraphCells()
{
    return {QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("section"),
            QStringLiteral("wrong")};
}

std::vector<Row> paragraphRows(const TomlValue &root, const std::vector<Problem> &faults)
{
    std::vector<Row> rows;
    const auto add = [&](const ParagraphAt &at) {
        const TomlValue *const table = at.in(root);
        if (table == nullptr)
            return;
        const LinesOf lines = faults.empty() ? LinesOf() : linesOf(at, root);
        const bool isWrong =
            std::any_of(faults.begin(), faults.end(),
                        [&lines](const Problem &fault) { return lines.has(fault.line); });
        rows.push_back({said(at.name()),
                        {titleOf(at.kind, *table), detailOf(at.kind, *table), sectionOf(at.kind),
                         isWrong && !faults.empty()}});
    };
    add({});
    for (const Paragraph kind : {Paragraph::Question, Paragraph::Station, Paragraph::Run,
                                 Paragraph::Module, Paragraph::Extra}) {
        for (std::size_t at = 0; at < countOf(kind, root); ++at)
            add({kind, at});
    }
    return rows;
}

} // namespace flarestock
