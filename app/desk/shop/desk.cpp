// SPDX-License-Identifier: MIT

#include "app/desk/shop/desk.h"

#include "app/desk/words/spoken.h"
#include "model/storage/server/server_address.h"

#include <QJSEngine>

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

Desk *theDesk = nullptr;

/// A few changes in a row are one version of the build, not one each.
constexpr int KeepAfterMs = 900;

QString templateKey(const std::string &id)
{
    return QString(QStringLiteral("template|") + said(id));
}

QString buildDetail(const ShopOnDesk &shop, const BuildPlan &plan)
{
    QStringList parts;
    if (shop.placeTitle && !plan.car.empty())
        parts.append(said(shop.placeTitle(plan.car)));
    if (!plan.by.empty())
        parts.append(Desk::tr("by %1").arg(saidDate(plan.by)));
    return parts.join(QStringLiteral("  ·  "));
}

/// The builds by their days, those without one behind them; then the templates.
std::vector<Row> buildRows(const ShopOnDesk &shop)
{
    std::vector<const BuildPlan *> plans;
    for (const BuildPlan &plan : shop.builds)
        plans.push_back(&plan);
    std::stable_sort(plans.begin(), plans.end(), [](const BuildPlan *a, const BuildPlan *b) {
        return std::pair(a->by.empty(), a->by) < std::pair(b->by.empty(), b->by);
    });
    std::vector<Row> rows;
    rows.reserve(plans.size() + shop.templates.size());
    for (const BuildPlan *plan : plans)
        rows.push_back({said(plan->id),
                        {said(plan->title), buildDetail(shop, *plan), Desk::tr("planned builds")}});
    for (const ShopOnDesk::Form &form : shop.templates)
        rows.push_back({templateKey(form.id),
                        {said(form.title), Desk::tr("tried out with its own answers"),
                         Desk::tr("templates")}});
    return rows;
}

} // namespace

Desk::Desk(QObject *parent)
    : QObject(parent),
      m_builds({QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("section")})
{
    assert(theDesk == nullptr);
    theDesk = this;
    m_readSoon.setSingleShot(true);
    m_readSoon.setInterval(KeepAfterMs);
    connect(&m_readSoon, &QTimer::timeout, this, &Desk::readAgain);
    m_kept.soon.setSingleShot(true);
    m_kept.soon.setInterval(KeepAfterMs);
    connect(&m_kept.soon, &QTimer::timeout, this, &Desk::keepAside);
    listen();
    connect(&m_build, &BuildDesk::planChanged, this, [this] {
        const bool isPlanned = !m_build.plan().id.empty();
        if (!m_shop.keep || !isPlanned)
            return say(isPlanned ? tr("on this screen only") : tr("tried out, not kept"));
        keepLater();
    });
}

void Desk::listen()
{
    connect(&m_build, &BuildDesk::stepped, this, [this] {
        m_order.push_back(Step::Plan);
        m_pen.hear();
    });
    connect(&m_build, &BuildDesk::changed, this, [this] {
        const bool isOpen = m_build.isOpen();
        m_handing.show(isOpen ? m_build.worked() : WorkedOut{},
                       isOpen ? m_build.plan() : BuildPlan{}, m_build.units());
        Q_EMIT stepsChanged();
    });
    connect(&m_build, &BuildDesk::leaving, this, [this] {
        if (m_kept.isWaiting && m_kept.errand.isUnderWay())
            static_cast<void>(takeToKeep()); // It is owed; its turn comes after that one.
        else
            keepAside();
    });
    m_kept.owed.rememberBy(m_pen.unwritten());
    connect(&m_pen.unwritten(), &Unwritten::found, this, &Desk::takeUpOwed);
    connect(&m_backups, &BackingUp::told, &m_build, &BuildDesk::tell);
    const auto tellAndRead = [this](const QString &sentence) {
        m_pen.hear(); // What was refused before it is past.
        m_build.tell(sentence);
        if (m_kept.whyNot.isEmpty())
            sayKept();
        readAgain();
    };
    connect(m_trailer.copies(), &CopiesDesk::wrote, this,
            [this, tellAndRead](const QString &sentence) {
                std::erase(m_order, Step::Shop);
                m_order.push_back(Step::Shop); // The pen says why it stays.
                tellAndRead(sentence);
            });
    connect(m_stock.place(), &PlaceForm::wrote, this, tellAndRead);
    connect(m_service.paper(), &PaperForm::told, &m_build, &BuildDesk::tell);
    connect(&m_templates, &TemplateDesk::told, &m_build, &BuildDesk::tell);
    connect(&m_papers, &BuildPapers::told, &m_build, &BuildDesk::tell);
    for (LoadList *list : {m_trailer.load(), m_trailer.unload()})
        connect(list, &LoadList::told, &m_build, &BuildDesk::tell);
    connect(&m_planning, &PlanForm::begun, this, &Desk::keepNow);
    connect(&m_abreast, &AbreastDesk::begun, this, &Desk::keepNow);
    connect(&m_server, &AtServer::opened, this, &Desk::showOpened);
    connect(m_keeping.maker(), &ShopMaker::opened, this, &Desk::showOpened);
    connect(m_keeping.texts(), &ShopTexts::told, &m_build, &BuildDesk::tell);
    connect(&m_coming, &ShopOpening::changed, this, &Desk::openingChanged);
    connect(&m_pen, &Pen::changed, this, &Desk::stepsChanged);
    connect(&m_pen, &Pen::wrote, this,
            [this](const std::shared_ptr<const Wrote> &wrote, const QString &sentence,
                   bool isBack) { takeIn(*wrote, sentence, isBack); });
}

Desk::~Desk()
{
    keepNow();
    theDesk = nullptr;
}

Desk *Desk::create(QQmlEngine *, QJSEngine *)
{
    assert(theDesk != nullptr);
    QJSEngine::setObjectOwnership(theDesk, QJSEngine::CppOwnership);
    return theDesk;
}

void Desk::show(ShopOnDesk shop)
{
    keepNow();
    if (shop.file != m_shop.file)
        m_kept.owed.goElsewhere();
    m_shop = std::move(shop);
    m_kept.owed.showIn(m_shop.builds, {});
    tellAreas(true);
    m_pen.forgetDone();
    m_backups.setShop(m_shop.backups);
    watch();
    m_order.clear();
    m_hasShop = true;
    m_problem.clear();
    m_builds.become(buildRows(m_shop));
    m_build.close();
    Q_EMIT shopChanged();
    Q_EMIT problemChanged();
    if (!isOwing())
        say(tr("nothing unsaved"));
    if (m_builds.count() > 0)
        openBuild(m_builds.cell(0, QStringLiteral("key")).toString());
    keepOwed();
}

QString Desk::shopTitle() const
{
    return m_shop.copy.empty()
               ? said(m_shop.title)
               : tr("%1  ·  the copy %2").arg(said(m_shop.title), said(m_shop.copy));
}

QString Desk::shopPath() const
{
    return said(m_shop.file);
}

QString Desk::shopFile() const
{
    if (!isServer(m_shop.file))
        return shopPath().section(u'/', -1);
    const auto at = ServerAddress::parse(m_shop.file);
    if (!at)
        return shopPath();
    return at->isSocket() ? tr("%1 on this computer").arg(said(at->database))
                          : tr("%1 on %2").arg(said(at->database), said(at->host));
}

void Desk::say(const QString &kept)
{
    m_kept.said = kept;
    Q_EMIT keptChanged();
}

void Desk::refuse(const Problem &problem)
{
    m_problem = saidProblem(problem);
    Q_EMIT problemChanged();
}

bool Desk::openBuild(const QString &key, const QString &sentence)
{
    keepAside();
    BuildPlan plan;
    const auto planned =
        std::find_if(m_shop.builds.begin(), m_shop.builds.end(),
                     [&key](const BuildPlan &other) { return said(other.id) == key; });
    if (planned != m_shop.builds.end()) {
        plan = *planned;
    } else if (key.startsWith(QStringLiteral("template|"))) {
        plan.templateId = key.section(u'|', 1).toStdString();
    } else {
        refuse({key.toStdString(), "is no build of this shop", "Choose one of its builds."});
        return false;
    }
    const QString car =
        m_shop.placeTitle && !plan.car.empty() ? said(m_shop.placeTitle(plan.car)) : QString();
    const auto isRefused = std::make_shared<bool>(false);
    m_build.open(plan, car, m_shop.workOut,
                 [this, plan, sentence, isRefused](const Result<void> &opened) {
                     *isRefused = !opened;
                     if (!opened)
                         return refuse(opened.error());
                     const ChangedPlan *owed = m_kept.owed.find(plan.id);
                     m_kept.before = owed != nullptr ? owed->before : plan;
                     if (m_kept.owed.isEmpty())
                         m_kept.whyNot.clear();
                     std::erase(m_order, Step::Plan); // They were those of the build before.
                     m_problem.clear();
                     Q_EMIT problemChanged();
                     if (!sentence.isEmpty())
                         m_build.tell(sentence);
                 });
    return !*isRefused;
}

void Desk::become(ShopOnDesk shop)
{
    m_shop = std::move(shop);
    for (const BuildPlan &kept : std::exchange(m_kept.since, {})) {
        for (BuildPlan &plan : m_shop.builds)
            plan = plan.id == kept.id ? kept : plan;
    }
    m_kept.owed.showIn(m_shop.builds, m_build.plan().id);
    tellAreas(false);
    m_builds.become(buildRows(m_shop));
}

void Desk::setWho(const QString &who)
{
    m_who = who.trimmed();
    m_pen.setWho(m_who);
    Q_EMIT whoChanged();
}

void Desk::setTakesScans(bool takes)
{
    if (takes == m_takesScans)
        return;
    m_takesScans = takes;
    Q_EMIT takesScansChanged();
}

bool Desk::canTakeBack() const
{
    return !m_pen.isBusy() && (m_build.canTakeBack() || m_pen.canTakeBack());
}

void Desk::takeBack()
{
    if (!canTakeBack())
        return;
    const bool lastIsOfShop = !m_order.empty() && m_order.back() == Step::Shop;
    if (m_pen.canTakeBack() && (lastIsOfShop || !m_build.canTakeBack()))
        return m_pen.takeBack();
    if (!m_order.empty())
        m_order.pop_back();
    m_build.takeBack();
}

void Desk::sayAgain()
{
    if (!m_hasShop)
        return;
    tellAreas(true);
    m_builds.become(buildRows(m_shop));
    m_build.sayAgain();
    m_handing.sayAgain();
    m_backups.setShop(m_shop.backups);
    if (!isOwing())
        say(tr("nothing unsaved"));
}

} // namespace flarestock
