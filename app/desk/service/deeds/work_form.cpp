// SPDX-License-Identifier: MIT

#include "app/desk/service/deeds/work_form.h"

#include "app/desk/language/sentences.h"
#include "app/desk/service/piece_card.h"
#include "app/desk/words/spoken.h"
#include "app/garage/cautions.h"
#include "app/workshop/clock.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

WorkForm::WorkForm(Pen &pen, QObject *parent) : Form(pen, parent), m_deeds(workCells()) {}

void WorkForm::show(const WorkSubject &subject)
{
    m_subject = subject;
    m_deeds.become(workRows(m_subject));
    Q_EMIT changed();
}

bool WorkForm::begin(const QString &deed)
{
    const auto named = carDeedNamed(deed);
    if (!named || !whyNotDone(*named, m_subject).isEmpty())
        return false;
    pen().hear();
    m_deed = named;
    m_begun = m_subject;
    ask(workFields(*m_deed, m_begun));
    Q_EMIT changed();
    return true;
}

QString WorkForm::whyNot(const QString &deed) const
{
    const auto named = carDeedNamed(deed);
    return named ? whyNotDone(*named, m_subject) : QString();
}

QString WorkForm::noWash() const
{
    const FittedPiece *piece = m_subject.piece();
    if (!piece)
        return {};
    const auto kind = m_subject.book->garage.kindOf(*piece).kind;
    const bool isThoughtOf = kind == Kind::Element || kind == Kind::Filter || kind == Kind::Pump;
    return isThoughtOf ? whyNotDone(CarDeed::Wash, m_subject) : QString();
}

QString WorkForm::title() const
{
    return m_deed ? saidWorkTitle(*m_deed, m_begun) : QString();
}

QString WorkForm::about() const
{
    if (!m_deed || *m_deed == CarDeed::Ran)
        return {};
    if (*m_deed == CarDeed::Fit)
        return tr("A fluid goes by its name, and its lot is the bottle: DOT 4.");
    return saidPieceAbout({*m_begun.book, m_begun.at, m_begun.units});
}

QString WorkForm::button() const
{
    return m_deed ? saidWorkButton(*m_deed) : QString();
}

QString WorkForm::caution() const
{
    const bool isOpened = m_deed == CarDeed::Wash || m_deed == CarDeed::Replace ||
                          m_deed == CarDeed::TakeOut || m_deed == CarDeed::Fit;
    if (!isOpened)
        return {};
    QString caution = inWords(OpeningCaution);
    caution[0] = caution.at(0).toUpper();
    return caution;
}

QString WorkForm::fieldOf(const QString &code) const
{
    if (!m_deed || m_begun.book == nullptr)
        return {};
    const std::string wanted = code.trimmed().toStdString();
    const auto shown = [this](std::initializer_list<const char *> fields) {
        for (const char *field : fields) {
            QString key = QString::fromLatin1(field);
            const int row = shownFields().rowOf(key);
            if (row >= 0 && shownFields().cell(row, QStringLiteral("form")).toString() ==
                                QStringLiteral("typed"))
                return key;
        }
        return QString();
    };
    const auto &places = m_begun.book->workshop->ledger.places();
    if (std::any_of(places.begin(), places.end(),
                    [&](const Place &one) { return sameFolded(one.id, wanted); }))
        return shown({"oldTo"});
    if (m_begun.book->workshop->part(wanted))
        return shown({"part", "with"});
    return shown({"lot", "tag"});
}

void WorkForm::carryOut(const QVariantMap &values)
{
    if (!m_deed || m_begun.book == nullptr)
        return;
    const FilledWork filled{*m_deed, m_begun, values};
    if (const QString why = whyNotFilled(filled); !why.isEmpty())
        return pen().refuse(why);
    // Once here for its sentence; what is written is made out of the newest state of the shop.
    const By by{{}, {}, nowMilliseconds(), freshId()};
    if (*m_deed == CarDeed::Ran) {
        const auto outing = outingOf(filled, *m_begun.book->workshop, by);
        if (!outing)
            return pen().refuse(saidProblem(outing.error()));
        return pen().act(saidOuting(*outing, *m_begun.book), madeOf(filled));
    }
    const auto done = workDone(filled, m_begun.book->garage, by);
    if (!done)
        return pen().refuse(saidProblem(done.error()));
    pen().act(saidWork(*done, *m_begun.book), madeOf(filled));
}

} // namespace flarestock
