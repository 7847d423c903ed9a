// SPDX-License-Identifier: MIT

#include "app/desk/template/text_read.h"

#include "app/desk/words/spoken.h"
#include "model/exchange/templates/template_reader.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

/// More of them nobody reads before the first ones are mended.
constexpr std::size_t FaultsMost = 40;

} // namespace

std::string TextRead::top(std::string_view key) const
{
    const TomlEntry *const entry = document ? document->root().find(key) : nullptr;
    return entry == nullptr ? std::string() : entry->value.text;
}

TextRead readText(std::string text, const std::string &file)
{
    TextRead read;
    read.text = std::make_shared<const std::string>(std::move(text));
    auto document = TomlDocument::read(*read.text, file);
    if (!document) {
        read.faults.push_back(std::move(document.error()));
        return read;
    }
    read.document = std::make_shared<const TomlDocument>(std::move(*document));
    Problems problems(FaultsMost);
    auto form = std::make_shared<const Template>(readTemplateTable(*read.document, problems));
    if (problems.isEmpty())
        read.form = std::move(form);
    read.faults = std::move(problems.all());
    std::stable_sort(read.faults.begin(), read.faults.end(),
                     [](const Problem &a, const Problem &b) { return a.line < b.line; });
    return read;
}

QString saidFault(const Problem &fault)
{
    Problem told = fault;
    told.thing.clear();
    told.line = 0;
    told.column = 0;
    QString sentence = saidProblem(told);
    if (fault.line == 0)
        return sentence;
    return QCoreApplication::translate("TemplateEditor", "Line %1: %2")
        .arg(fault.line)
        .arg(sentence);
}

} // namespace flarestock
