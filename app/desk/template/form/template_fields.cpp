// SPDX-License-Identifier: MIT

#include "app/desk/template/form/template_fields.h"

#include "app/desk/template/form/template_form.h"
#include "app/desk/template/text_read.h"
#include "app/desk/words/spoken.h"
#include "model/exact/case_fold.h"

#include <algorithm>
#include <tuple>

namespace flarestock {

namespace {

using Spot = std::pair<std::uint32_t, std::uint32_t>; ///< Line and column.

bool isWithin(const Problem &fault, const Spot &begin, const TomlValue &value)
{
    const Spot at(fault.line, fault.column);
    return fault.line > 0 && begin <= at && at <= Spot(value.endLine, value.endColumn);
}

/// One row after the other of a paragraph.
class FieldRows {
public:
    FieldRows(const ParagraphAt &at, const FormRead &read) : m_at(at), m_read(read) {}

    std::vector<Row> rows(const TomlValue &table)
    {
        for (const std::string_view key : fieldsOf(m_at.kind, table))
            addField(key, table);
        if (m_at.kind == Paragraph::Module)
            addAnswers(table);
        return std::move(m_rows);
    }

private:
    struct Field {
        std::string place;
        QString title;
        QString hint;
        const TomlEntry *entry = nullptr; ///< Nothing: it does not stand there.
        QStringList deeds = {};
        bool isOffered = true;
    };

    void addField(std::string_view key, const TomlValue &table)
    {
        const Field field{m_at.place(key),
                          fieldName(m_at.kind, key),
                          fieldHint(m_at.kind, key),
                          table.find(key),
                          {},
                          isOffered(m_at.kind, key, table)};
        const FieldForm form = formOf(m_at.kind, key, table);
        if (form == FieldForm::Word || form == FieldForm::YesNo)
            addChoice(field, choicesOf(m_at.kind, key, table));
        else if (form == FieldForm::Varying)
            addVarying(field);
        else
            addTyped(field);
    }

    void addAnswers(const TomlValue &table)
    {
        const TomlEntry *const answers = table.find("answers");
        const TomlEntry *const inside = table.find("template");
        for (const auto &[id, title] : m_read.asked(inside ? inside->value.text : std::string())) {
            const std::string key = id.toStdString();
            addVarying({m_at.place("answers/" + key), title,
                        TemplateForm::tr("as it answers itself"),
                        answers ? answers->value.find(key) : nullptr});
        }
    }

    void addVarying(Field field)
    {
        if (field.entry == nullptr || !areAlternatives(field.entry->value)) {
            if (field.entry != nullptr)
                field.deeds = {QStringLiteral("vary")};
            return addTyped(field);
        }
        const auto &items = field.entry->value.items;
        for (std::size_t at = 0; at < items.size(); ++at) {
            const std::string place = field.place + '/' + std::to_string(at);
            const bool isLast = at + 1 == items.size();
            const TomlEntry *const when = items[at].find("when");
            if (!isLast || when != nullptr)
                addTyped({place + "/when", TemplateForm::tr("%1, when").arg(field.title),
                          fieldHint(m_at.kind, "when"), when});
            Field is{place + "/is",
                     isLast && when == nullptr ? TemplateForm::tr("%1, else").arg(field.title)
                                               : TemplateForm::tr("%1, then").arg(field.title),
                     field.hint,
                     items[at].find("is"),
                     {QStringLiteral("fewer")},
                     field.isOffered};
            if (isLast)
                is.deeds.append(QStringLiteral("more"));
            addTyped(is);
        }
    }

    void addTyped(const Field &field)
    {
        add(field, QStringLiteral("typed"), {}, shown(field.entry));
    }

    void addChoice(const Field &field, const std::vector<std::string> &choices)
    {
        const QString now = shown(field.entry);
        QStringList words;
        int chosen = 0;
        for (const std::string &one : choices) {
            if (sameFolded(one, now.toStdString()))
                chosen = static_cast<int>(words.size());
            words.append(one.empty() ? TemplateForm::tr("not said") : said(one));
        }
        add(field, QStringLiteral("choice"), words, QString::number(chosen));
    }

    void add(const Field &field, const QString &form, const QStringList &choices,
             const QString &value)
    {
        QStringList deedWords;
        for (const QString &deed : field.deeds)
            deedWords.append(deed == QStringLiteral("vary")   ? TemplateForm::tr("by answers")
                             : deed == QStringLiteral("more") ? TemplateForm::tr("one more")
                                                              : TemplateForm::tr("without it"));
        m_rows.push_back({said(field.place),
                          {field.title, form, choices, value, field.hint, problemAt(field),
                           field.deeds, deedWords, field.isOffered}});
    }

    static QString shown(const TomlEntry *entry)
    {
        if (entry == nullptr)
            return {};
        const TomlValue &value = entry->value;
        switch (value.form) {
        case TomlValue::Form::Whole:
            return QString::number(value.whole);
        case TomlValue::Form::YesNo:
            return value.yes ? QStringLiteral("yes") : QStringLiteral("no");
        case TomlValue::Form::List: {
            QStringList items;
            for (const TomlValue &item : value.items)
                items.append(said(item.text));
            return items.join(QStringLiteral("; "));
        }
        default:
            return said(value.text);
        }
    }

    [[nodiscard]] QString problemAt(const Field &field) const
    {
        if (field.entry == nullptr)
            return {};
        for (const Problem &fault : m_read.faults) {
            if (isWithin(fault, {field.entry->line, field.entry->column}, field.entry->value))
                return saidFault(fault);
        }
        return {};
    }

    const ParagraphAt &m_at;
    const FormRead &m_read;
    std::vector<Row> m_rows;
};

} // namespace

QStringList templateFieldCells()
{
    return {QStringLiteral("title"), QStringLiteral("form"),      QStringLiteral("choices"),
            QStringLiteral("value"), QStringLiteral("hint"),      QStringLiteral("problem"),
            QStringLiteral("deeds"), QStringLiteral("deedWords"), QStringLiteral("offered")};
}

std::vector<Row> templateFieldRows(const ParagraphAt &at, const FormRead &read)
{
    const TomlValue *const table = at.in(read.root);
    return table == nullptr ? std::vector<Row>() : FieldRows(at, read).rows(*table);
}

QString paragraphProblem(const ParagraphAt &at, const FormRead &read)
{
    const TomlValue *const table = at.in(read.root);
    if (table == nullptr)
        return {};
    const LinesOf lines = linesOf(at, read.root);
    const auto rows = templateFieldRows(at, read);
    for (const Problem &fault : read.faults) {
        const QString sentence = saidFault(fault);
        const bool isAtField = std::any_of(rows.begin(), rows.end(), [&sentence](const Row &row) {
            return row.cells.at(5).toString() == sentence;
        });
        if (lines.has(fault.line) && !isAtField)
            return sentence;
    }
    return {};
}

} // namespace flarestock
