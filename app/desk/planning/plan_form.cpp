// SPDX-License-Identifier: MIT

#include "app/desk/planning/plan_form.h"

#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/stockroom/asked.h"
#include "app/workshop/workshop.h"

#include <QDateTime>

#include <algorithm>

namespace flarestock {

namespace {

constexpr auto Document = "builds.toml";

/// The newest builds with one that is new or changed; of its answers and picks the newest stay.
Result<TextFiles> withPlan(const TextFiles &newest, const BuildPlan &plan, PlanForm::Deed deed)
{
    const auto document = newest.find(Document);
    auto builds = readBuilds(document == newest.end() ? std::string() : document->second, Document);
    if (!builds)
        return tl::unexpected(builds.error());
    const auto at = std::find_if(builds->begin(), builds->end(),
                                 [&plan](const BuildPlan &one) { return one.id == plan.id; });
    if (deed == PlanForm::Deed::Plan) {
        if (at != builds->end())
            return problem(plan.id, "is a build already", "Give it another title.");
        builds->push_back(plan);
    } else if (at == builds->end()) {
        return problem(plan.id, "is no longer a build of this shop", "Choose another one.");
    } else if (deed == PlanForm::Deed::GiveUp) {
        builds->erase(at);
    } else {
        at->title = plan.title;
        at->car = plan.car;
        at->by = plan.by;
    }
    return TextFiles{{Document, writeBuilds(*builds)}};
}

/// Whether anything was promised or issued to it, and did not come back.
bool hasPieces(const Workshop &workshop, const std::string &build)
{
    const auto claims = workshop.claimsOf(build);
    return std::any_of(claims.begin(), claims.end(), [](const auto *one) {
        return one->second.promised > 0 || one->second.issued > 0;
    });
}

PlanForm::Deed deedOf(const QString &deed)
{
    return deed == QStringLiteral("plan")      ? PlanForm::Deed::Plan
           : deed == QStringLiteral("give-up") ? PlanForm::Deed::GiveUp
                                               : PlanForm::Deed::Change;
}

} // namespace

std::string idOf(const std::string &title, const std::vector<BuildPlan> &builds)
{
    std::string id;
    for (const QChar letter : said(title).normalized(QString::NormalizationForm_D).toLower()) {
        const char plain = letter.toLatin1();
        if ((plain >= 'a' && plain <= 'z') || (plain >= '0' && plain <= '9'))
            id += plain;
        else if (!id.empty() && id.back() != '-' && !letter.isMark())
            id += '-';
    }
    while (!id.empty() && id.back() == '-')
        id.pop_back();
    if (id.empty())
        id = "build";
    const auto isTaken = [&builds](const std::string &wanted) {
        return std::any_of(builds.begin(), builds.end(),
                           [&wanted](const BuildPlan &one) { return one.id == wanted; });
    };
    std::string free = id;
    for (int number = 2; isTaken(free); ++number)
        free = id + "-" + std::to_string(number);
    return free;
}

PlanForm::PlanForm(Pen &pen, const BuildDesk &build, QObject *parent)
    : Form(pen, parent), m_hand(pen), m_build(build)
{
    connect(&build, &BuildDesk::changed, this, &PlanForm::shown);
    connect(&pen, &Pen::changed, this, [this] {
        if (!m_hand.problem().isEmpty())
            m_written.clear();
    });
}

std::vector<const Place *> PlanForm::cars() const
{
    std::vector<const Place *> all;
    for (const Place &place : m_workshop->ledger.places()) {
        if (place.kind == PlaceKind::Car)
            all.push_back(&place);
    }
    return all;
}

QString PlanForm::whyNot(const QString &deed) const
{
    if (!m_workshop || !m_build.isOpen())
        return tr("There is no build on the desk.");
    if (QString why = m_hand.barrier(); !why.isEmpty())
        return why;
    const bool wantsBuild = deedOf(deed) != Deed::Plan;
    if (wantsBuild && isTriedOut())
        return tr("This is a template that is tried out; plan it as a build first.");
    if (deedOf(deed) == Deed::GiveUp && hasPieces(*m_workshop, m_build.plan().id))
        return tr("%1 has pieces, promised or in the car. Let go of them and give them back first.")
            .arg(m_build.title());
    return {};
}

bool PlanForm::begin(const QString &deed)
{
    if (!whyNot(deed).isEmpty())
        return false;
    Q_EMIT begun();
    pen().hear();
    m_deed = deedOf(deed);
    std::vector<Row> fields;
    if (m_deed != Deed::GiveUp) {
        const BuildPlan &plan = m_build.plan();
        QStringList titles{tr("no car: stock and bill only")};
        int chosen = 0;
        for (const Place *car : cars()) {
            chosen = car->id == plan.car ? static_cast<int>(titles.size()) : chosen;
            titles.append(said(car->title));
        }
        fields.push_back(typedField("title", tr("what it is called"), m_build.title(), QString()));
        fields.push_back(choiceField("car", tr("for"), titles, chosen));
        fields.push_back(
            typedField("by", tr("done by, a day"), dayAsTyped(plan.by), dayAsTyped("2027-03-20")));
    }
    ask(std::move(fields));
    Q_EMIT changed();
    return true;
}

QString PlanForm::title() const
{
    switch (m_deed) {
    case Deed::Plan:
        return tr("Plan a build");
    case Deed::Change:
        return tr("Change %1").arg(m_build.title());
    case Deed::GiveUp:
        return tr("Give up %1").arg(m_build.title());
    }
    return {};
}

QString PlanForm::about() const
{
    switch (m_deed) {
    case Deed::Plan:
        return tr(
            "With the answers and picks that are on the desk now; they can still be changed.");
    case Deed::Change:
        return tr("An earlier day comes before other builds where pieces lack; Buying says so.");
    case Deed::GiveUp:
        return tr("Its answers and picks go. Nothing is promised to it and nothing is in the car.");
    }
    return {};
}

QString PlanForm::button() const
{
    switch (m_deed) {
    case Deed::Plan:
        return tr("Plan it");
    case Deed::Change:
        return tr("Change it");
    case Deed::GiveUp:
        return tr("Give it up");
    }
    return {};
}

Result<BuildPlan> PlanForm::filled(const QVariantMap &values) const
{
    BuildPlan plan = m_build.plan();
    plan.title = values.value(QStringLiteral("title")).toString().trimmed().toStdString();
    if (plan.title.empty())
        return problem("", "a build wants a title", "Write what people call it.");
    const auto all = cars();
    const int car = values.value(QStringLiteral("car")).toInt();
    const bool isCar = car > 0 && car <= static_cast<int>(all.size());
    plan.car = isCar ? all[static_cast<std::size_t>(car) - 1]->id : std::string();
    const std::string by = dayTyped(values, "by");
    const auto day =
        by.empty() ? Result<std::string>(by) : dayAsked(by, QDateTime::currentMSecsSinceEpoch());
    if (!day)
        return tl::unexpected(day.error());
    plan.by = *day;
    if (m_deed == Deed::Plan)
        plan.id = idOf(plan.title, m_workshop->builds);
    if (plan.car != m_build.plan().car && hasPieces(*m_workshop, plan.id))
        return problem(plan.title, "has pieces of its car already",
                       "Give them back before it goes into another car.");
    return plan;
}

void PlanForm::carryOut(const QVariantMap &values)
{
    const auto plan = m_deed == Deed::GiveUp ? Result<BuildPlan>(m_build.plan()) : filled(values);
    if (!plan)
        return pen().refuse(saidProblem(plan.error()));
    const QString called = said(plan->title.empty() ? plan->id : plan->title);
    const QString sentence = m_deed == Deed::Plan     ? tr("%1 is planned.").arg(called)
                             : m_deed == Deed::Change ? tr("%1 is changed.").arg(called)
                                                      : tr("%1 is given up.").arg(called);
    m_written = m_deed == Deed::GiveUp ? QString() : said(plan->id);
    pen().rewrite(sentence, [plan = *plan, deed = m_deed](const TextFiles &newest) {
        return withPlan(newest, plan, deed);
    });
}

} // namespace flarestock
