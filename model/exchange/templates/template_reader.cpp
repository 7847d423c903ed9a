// SPDX-License-Identifier: MIT

#include "model/exchange/templates/template_reader.h"

#include "model/exact/nearest_word.h"
#include "model/exchange/templates/template_words.h"

namespace flarestock {

namespace {

/// "{fluid}" names a question whose answers are fluids; anything else is a fluid.
void readFluid(const TomlFields &top, Template &form)
{
    const std::string typed = top.required("fluid");
    if (typed.empty())
        return;
    if (!typed.starts_with('{')) {
        const auto fluid = parseFluid(typed);
        if (fluid)
            form.fluid = *fluid;
        else
            top.wrong("fluid", {fluid.error().wrong, fluid.error().remedy});
        return;
    }
    form.fluidQuestion = typed.substr(1, typed.size() - (typed.ends_with('}') ? 2U : 1U));
    const Question *const asked = form.question(form.fluidQuestion);
    if (!asked || asked->form != Question::Form::Choice) {
        std::vector<std::string_view> ids;
        for (const Question &question : form.questions)
            ids.push_back(question.id);
        top.wrong("fluid", {"there is no choice \"" + form.fluidQuestion + "\" here",
                            wordRemedy(form.fluidQuestion, ids)});
        return;
    }
    for (const std::string &choice : asked->choices) {
        if (const auto fluid = parseFluid(choice); !fluid)
            top.wrong("fluid", {"its question \"" + asked->id + "\" has the choice \"" + choice +
                                    "\", which is no fluid",
                                fluid.error().remedy});
    }
}

} // namespace

Template readTemplateTable(const TomlDocument &document, Problems &problems)
{
    const TomlFields top({&document, &problems}, document.root(), "template",
                         keysOf(Paragraph::Top));
    Template form;
    form.id = top.id("id");
    form.title = top.required("title");
    (void)top.required("system");
    const TemplateWords systems = wordsOf(Paragraph::Top, "system");
    form.system = systems[top.word("system", systems, 0)];
    form.filters =
        static_cast<FilterRule>(top.word("filters", wordsOf(Paragraph::Top, "filters"), 0));
    form.questions = readQuestions(top);
    readFluid(top, form);
    readParts(top, form);
    if (form.stations.empty() && form.modules.empty())
        top.wrong("station", {"the template has no station", "Add a [[station]]."});
    return form;
}

} // namespace flarestock
