// SPDX-License-Identifier: MIT
//
// How a template that was typed becomes a document of the shop.

#include "app/desk/template/template_editor.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/plans_stand.h"

namespace flarestock {

namespace {

/// The changed document. Problem: the shop's own is another by now, or a planned build would no
/// longer work out.
Result<TextFiles> changedBy(const TypedTemplate &typed, const std::string &file,
                            const TextFiles &newest)
{
    const auto stands = newest.find(file);
    const std::string now = stands == newest.end() ? std::string() : stands->second;
    if (typed.file.empty() && !now.empty())
        return problem("another template", "has this id already",
                       "Write another id at the top of this one.");
    if (!typed.file.empty() && now != typed.begun)
        return problem("the template", "was changed at another seat meanwhile",
                       "Close this and look at it as it is now; what you typed is kept.");
    const TextFiles changed = {{file, typed.text}};
    TextFiles all = changed;
    all.insert(newest.begin(), newest.end());
    if (const auto stand = plansStand(newest, all); !stand)
        return tl::unexpected(stand.error());
    return changed;
}

} // namespace

/// A new template is called by its id, as the files of templates are.
std::string TemplateEditor::fileName() const
{
    return m_file.empty() ? "templates/" + m_read.top("id") + ".toml" : m_file;
}

void TemplateEditor::finish()
{
    if (!m_isOpen || m_pen.isBusy())
        return;
    if (!isChanged())
        return close();
    if (!m_read.isWhole() || m_notDrawn) {
        m_pen.refuse(m_faultRows.count() == 0
                         ? tr("It cannot be written down yet.")
                         : tr("It cannot be written down yet. %1")
                               .arg(m_faultRows.cell(0, QStringLiteral("says")).toString()));
        return goToFault(0);
    }
    write();
}

void TemplateEditor::write()
{
    const QString title = said(m_read.top("title"));
    m_pen.rewrite(m_file.empty() ? tr("Template %1 written.").arg(title)
                                 : tr("Template %1 changed.").arg(title),
                  [typed = typed(), file = fileName()](const TextFiles &newest) {
                      return changedBy(typed, file, newest);
                  });
}

} // namespace flarestock
