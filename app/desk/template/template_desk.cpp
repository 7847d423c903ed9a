// SPDX-License-Identifier: MIT

#include "app/desk/template/template_desk.h"

#include "app/desk/template/fresh_text.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A few letters in a row are kept at once.
constexpr int KeepTypedAfterMs = 700;

bool isTemplate(const std::string &name)
{
    return name.starts_with("templates/") && name.ends_with(".toml");
}

} // namespace

TemplateDesk::TemplateDesk(Pen &pen, QObject *parent)
    : QObject(parent),
      m_choices({QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("section")}),
      m_editor(pen)
{
    m_keepSoon.setSingleShot(true);
    m_keepSoon.setInterval(KeepTypedAfterMs);
    connect(&m_keepSoon, &QTimer::timeout, this, &TemplateDesk::keepNow);
    connect(&m_editor, &TemplateEditor::typedOn, this, [this] { m_keepSoon.start(); });
    connect(&m_editor, &TemplateEditor::written, this, [this] {
        m_keepSoon.stop();
        m_sketches.forget(m_name);
        m_name.clear();
        saveSketches();
    });
    connect(&m_editor, &TemplateEditor::closed, this, [this] {
        keepNow();
        if (m_sketches.find(m_name) != nullptr)
            Q_EMIT told(
                tr("%1 is kept as it was typed, and not written down.").arg(m_editor.title()));
    });
}

TemplateDesk::~TemplateDesk()
{
    keepNow();
}

void TemplateDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    if (isOther) {
        keepNow();
        m_name.clear();
        if (m_editor.isOpen())
            m_editor.close();
        m_sketches = {};
        m_read = {};
        m_choices.become({});
    }
    m_documents = shop.documents;
    m_workshop = shop.workshop;
    m_shop = said(shop.file);
    m_isToRead = true;
    if (m_editor.isOpen() && !isLoading())
        readAgain({});
}

void TemplateDesk::setSketches(const QString &text)
{
    m_sketches = TemplateSketches::of(text);
    showChoices();
}

Result<TemplateDesk::ReadTexts> TemplateDesk::readTexts(const Result<TextFiles> &documents)
{
    if (!documents)
        return tl::unexpected(documents.error());
    ReadTexts read;
    for (const auto &[name, text] : *documents) {
        if (!isTemplate(name) || text.empty())
            continue;
        const TextRead one = readText(text, name);
        read.texts.emplace(name, text);
        read.all.push_back({name, one.top("id"), one.top("title")});
    }
    std::stable_sort(read.all.begin(), read.all.end(),
                     [](const Known &a, const Known &b) { return a.title < b.title; });
    return read;
}

void TemplateDesk::readAgain(const std::function<void()> &then)
{
    if (!m_documents || isLoading())
        return;
    m_isToRead = false;
    m_reading.run([this, documents = m_documents, then]() -> Errand::Back {
        const auto read = std::make_shared<Result<ReadTexts>>(readTexts(documents()));
        return [this, read, then] {
            m_problem = *read ? QString() : saidProblem(read->error());
            if (*read)
                m_read = std::move(**read);
            m_editor.setShop(m_workshop, m_read.texts);
            showChoices();
            if (m_isToRead)
                return readAgain(then);
            if (then)
                then();
        };
    });
    Q_EMIT changed();
}

void TemplateDesk::showChoices()
{
    std::vector<Row> rows;
    for (const auto &[name, typed] : m_sketches.all()) {
        const TextRead read = readText(typed.text, typed.file);
        const QString title = said(read.top("title"));
        rows.push_back({QStringLiteral("sketch|") + name,
                        {title.isEmpty() ? tr("without a title") : title,
                         typed.file.empty() ? tr("a new template") : said(typed.file),
                         tr("typed, and not written down yet")}});
    }
    for (const Known &known : m_read.all)
        rows.push_back({QString(QStringLiteral("file|") + said(known.file)),
                        {said(known.title), said(known.id), tr("templates of the shop")}});
    m_choices.become(std::move(rows));
    Q_EMIT changed();
}

void TemplateDesk::ask()
{
    keepNow();
    readAgain([this] { Q_EMIT asked(); });
}

bool TemplateDesk::isWaiting(const QString &choice) const
{
    return choice.startsWith(QStringLiteral("sketch|"));
}

void TemplateDesk::begin(const QString &choice)
{
    const QString name = choice.section(u'|', 1);
    if (const TypedTemplate *waits = m_sketches.find(name))
        return beginWith(name, *waits);
    const auto text = m_read.texts.find(name.toStdString());
    if (text != m_read.texts.end())
        beginWith(name, {text->first, text->second, text->second});
}

void TemplateDesk::beginCopy(const QString &choice)
{
    const QString name = choice.section(u'|', 1);
    const TypedTemplate *waits = isWaiting(choice) ? m_sketches.find(name) : nullptr;
    const auto text = m_read.texts.find(name.toStdString());
    if (waits != nullptr)
        beginWith(m_sketches.freshName(), {{}, {}, copiedText(waits->text, ids())});
    else if (text != m_read.texts.end())
        beginWith(m_sketches.freshName(), {{}, {}, copiedText(text->second, ids())});
}

void TemplateDesk::beginNew()
{
    beginWith(m_sketches.freshName(), {{}, {}, freshText(ids())});
}

std::set<std::string, std::less<>> TemplateDesk::ids() const
{
    std::set<std::string, std::less<>> all;
    for (const Known &known : m_read.all)
        all.insert(known.id);
    for (const auto &[name, typed] : m_sketches.all())
        all.insert(readText(typed.text, typed.file).top("id"));
    return all;
}

void TemplateDesk::beginWith(const QString &name, const TypedTemplate &typed)
{
    keepNow();
    m_name = name;
    m_editor.setShop(m_workshop, m_read.texts);
    m_editor.begin(typed);
}

void TemplateDesk::throwAway(const QString &choice)
{
    const QString name = choice.section(u'|', 1);
    m_sketches.forget(name);
    if (name == m_name)
        m_name.clear();
    saveSketches();
}

void TemplateDesk::keepNow()
{
    m_keepSoon.stop();
    if (m_name.isEmpty() || !m_editor.read().text)
        return;
    const TypedTemplate typed = m_editor.typed();
    if (typed.text == typed.begun)
        m_sketches.forget(m_name);
    else
        m_sketches.keep(m_name, typed);
    saveSketches();
}

void TemplateDesk::saveSketches()
{
    showChoices();
    Q_EMIT sketchesKept(m_shop, m_sketches.text());
}

} // namespace flarestock
