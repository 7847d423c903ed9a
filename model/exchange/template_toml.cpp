// SPDX-License-Identifier: MIT

#include "model/exchange/template_toml.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/exchange/templates/template_reader.h"

#include <algorithm>
#include <functional>

namespace flarestock {

namespace {

/// A template with the document that it was read from, to point into it.
struct ReadFile {
    TomlDocument document;
    std::shared_ptr<const Template> form;
};

Result<ReadFile> readFile(std::string_view text, std::string file)
{
    auto document = TomlDocument::read(text, std::move(file));
    if (!document)
        return tl::unexpected(std::move(document.error()));
    Problems problems(1);
    auto form = std::make_shared<const Template>(readTemplateTable(*document, problems));
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return ReadFile{std::move(*document), std::move(form)};
}

bool isTemplateFile(std::string_view name)
{
    const std::size_t slash = name.rfind('/');
    const std::string_view folder = slash == std::string_view::npos ? "" : name.substr(0, slash);
    return name.ends_with(".toml") && (folder == "templates" || folder.ends_with("/templates"));
}

/// What only shows when all templates are there: modules, and runs that end inside one.
class BookChecks {
public:
    BookChecks(const std::vector<ReadFile> &files, const TemplateBook &book)
        : m_files(files), m_book(book), m_problems(1)
    {
    }
    std::optional<Problem> first();

private:
    void checkModules(const ReadFile &file);
    void checkAnswers(const Module &inner, const Template &form, const TomlFields &fields);
    void checkRuns(const ReadFile &file);
    void checkPumps(const ReadFile &file);
    /// nullptr where it is not there, which is said, or cannot be told.
    const Station *checkPlace(const Template &form, std::string_view station,
                              const TomlFields &fields, std::string_view key);
    void checkCircles();
    [[nodiscard]] const ReadFile &fileOf(std::string_view id) const;

    const std::vector<ReadFile> &m_files;
    const TemplateBook &m_book;
    Problems m_problems;
};

/// The tables of `key` in the order in which they were read.
std::vector<TomlFields> tablesOf(const ReadFile &file, std::string_view key, Problems &problems)
{
    const TomlFields::Source source{&file.document, &problems};
    std::vector<TomlFields> all;
    if (const TomlEntry *const entry = file.document.root().find(key)) {
        for (const TomlValue &table : entry->value.items) {
            std::vector<std::string_view> keys; // Known already: whatever stands there.
            for (const TomlEntry &known : table.entries)
                keys.push_back(known.key);
            all.emplace_back(source, table, std::string(key), keys);
        }
    }
    return all;
}

const ReadFile &BookChecks::fileOf(std::string_view id) const
{
    return *std::find_if(m_files.begin(), m_files.end(),
                         [id](const ReadFile &file) { return file.form->id == id; });
}

void BookChecks::checkModules(const ReadFile &file)
{
    const auto tables = tablesOf(file, "module", m_problems);
    for (std::size_t i = 0; i < file.form->modules.size(); ++i) {
        const Module &inner = file.form->modules[i];
        const auto found = m_book.find(inner.templateId);
        if (found == m_book.end()) {
            std::vector<std::string_view> ids;
            for (const auto &[id, form] : m_book)
                ids.push_back(id);
            tables[i].wrong("template", {"there is no template \"" + inner.templateId + '"',
                                         wordRemedy(inner.templateId, ids)});
            continue;
        }
        checkAnswers(inner, *found->second, tables[i]);
    }
}

void BookChecks::checkAnswers(const Module &inner, const Template &form, const TomlFields &fields)
{
    for (const auto &[id, varying] : inner.answers) {
        const TomlValue &answers = *fields.find("answers");
        const TomlEntry &entry = *answers.find(id);
        const Question *const asked = form.question(id);
        if (!asked) {
            std::vector<std::string_view> ids;
            for (const Question &question : form.questions)
                ids.push_back(question.id);
            m_problems.add(fields.source().document->at(
                entry, {"the template \"" + form.id + "\" has no question \"" + id + '"',
                        wordRemedy(id, ids)}));
            continue;
        }
        for (const Varying::Alternative &one : varying.alternatives) {
            if (one.is.find('{') != std::string::npos)
                continue;
            if (auto fault = answerFault(*asked, trimmed(one.is)))
                fields.source().wrong(entry.value, {"of \"" + form.id + "\", question \"" + id +
                                                        "\": " + fault->wrong,
                                                    fault->remedy});
        }
    }
}

const Station *BookChecks::checkPlace(const Template &form, std::string_view station,
                                      const TomlFields &fields, std::string_view key)
{
    const Template *inside = &form;
    std::string_view rest = station;
    for (std::size_t slash = rest.find('/'); slash != std::string_view::npos;
         slash = rest.find('/')) {
        const std::string_view name = rest.substr(0, slash);
        const auto inner = std::find_if(inside->modules.begin(), inside->modules.end(),
                                        [name](const Module &one) { return one.id == name; });
        if (inner == inside->modules.end()) {
            fields.wrong(key, {"the template \"" + inside->id + "\" has no module \"" +
                                   std::string(name) + '"',
                               "Correct the name."});
            return nullptr;
        }
        const auto found = m_book.find(inner->templateId);
        if (found == m_book.end())
            return nullptr; // Said at the module.
        inside = found->second.get();
        rest.remove_prefix(slash + 1);
    }
    std::vector<std::string_view> ids;
    for (const Station &one : inside->stations) {
        if (one.id == rest)
            return &one;
        ids.push_back(one.id);
    }
    fields.wrong(key,
                 {"the template \"" + inside->id + "\" has no station \"" + std::string(rest) + '"',
                  wordRemedy(rest, ids)});
    return nullptr;
}

/// The pumps by whose flow lines are sized.
void BookChecks::checkPumps(const ReadFile &file)
{
    const auto tables = tablesOf(file, "question", m_problems);
    for (std::size_t i = 0; i < file.form->questions.size(); ++i) {
        const auto &worked = file.form->questions[i].workedOut;
        for (std::size_t at = 0; worked && at < worked->pumps.size(); ++at) {
            const std::string &pump = worked->pumps[at];
            const Station *station = checkPlace(*file.form, pump, tables[i], "pumps");
            if (station && station->demand.kind != Kind::Pump)
                tables[i].wrong("pumps", {"the station \"" + pump + "\" has no pump",
                                          "Name a station of the kind pump."});
        }
    }
}

void BookChecks::checkRuns(const ReadFile &file)
{
    const auto tables = tablesOf(file, "run", m_problems);
    for (std::size_t i = 0; i < file.form->runs.size(); ++i) {
        (void)checkPlace(*file.form, file.form->runs[i].from.station, tables[i], "from");
        (void)checkPlace(*file.form, file.form->runs[i].to.station, tables[i], "to");
    }
}

/// Walks the modules down from each template; without recursion, because a chain may be long.
void BookChecks::checkCircles()
{
    enum class State : std::uint8_t { New, Open, Done };
    std::map<std::string_view, State> states;
    struct Step {
        const Template *form;
        std::size_t module;
    };
    for (const auto &[start, form] : m_book) {
        std::vector<Step> path;
        if (states[start] == State::New)
            path.push_back({form.get(), 0});
        while (!path.empty()) {
            Step &step = path.back();
            states[step.form->id] = State::Open;
            if (step.module == step.form->modules.size()) {
                states[step.form->id] = State::Done;
                path.pop_back();
                continue;
            }
            const std::string &next = step.form->modules[step.module++].templateId;
            const auto found = m_book.find(next);
            if (found == m_book.end() || states[found->first] == State::Done)
                continue;
            if (states[found->first] == State::New) {
                path.push_back({found->second.get(), 0});
                continue;
            }
            std::string circle;
            for (const Step &on : path) {
                if (!circle.empty() || on.form->id == next)
                    circle += on.form->id + " > ";
            }
            const auto tables = tablesOf(fileOf(step.form->id), "module", m_problems);
            tables[step.module - 1].wrong(
                "template",
                {"the modules go in a circle: " + circle + next, "Take one of these modules out."});
            return;
        }
    }
}

std::optional<Problem> BookChecks::first()
{
    for (const ReadFile &file : m_files)
        checkModules(file);
    checkCircles();
    if (m_problems.isEmpty()) {
        for (const ReadFile &file : m_files)
            checkRuns(file);
        for (const ReadFile &file : m_files)
            checkPumps(file);
    }
    return m_problems.isEmpty() ? std::nullopt : std::optional(m_problems.all().front());
}

} // namespace

Result<std::shared_ptr<const Template>> readTemplate(std::string_view text, std::string file)
{
    auto read = readFile(text, std::move(file));
    if (!read)
        return tl::unexpected(std::move(read.error()));
    return std::move(read->form);
}

Result<std::shared_ptr<const TemplateBook>> readTemplates(const TextFiles &files)
{
    std::vector<ReadFile> all;
    auto book = std::make_shared<TemplateBook>();
    for (const auto &[name, text] : files) {
        if (!isTemplateFile(name) || text.empty()) // An empty one was taken back.
            continue;
        auto read = readFile(text, name);
        if (!read)
            return tl::unexpected(std::move(read.error()));
        if (!book->emplace(read->form->id, read->form).second) {
            const TomlValue &root = read->document.root();
            return tl::unexpected(read->document.at(
                root.find("id")->value,
                {"the template \"" + read->form->id + "\" stands in another file too",
                 "Give one of them another id."}));
        }
        all.push_back(std::move(*read));
    }
    if (auto wrong = BookChecks(all, *book).first())
        return tl::unexpected(std::move(*wrong));
    return std::shared_ptr<const TemplateBook>(std::move(book));
}

} // namespace flarestock
