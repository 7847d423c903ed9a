// SPDX-License-Identifier: MIT

#include "app/desk/stock/places/place_form.h"

#include "app/desk/words/spoken.h"
#include "app/stockroom/byhand/new_place.h"

#include <array>

namespace flarestock {

namespace {

struct KindChoice {
    PlaceKind kind;
    const char *title;
};
/// Those that a shop has more than one of, the most likely first.
constexpr std::array<KindChoice, 7> KindChoices{
    {{PlaceKind::Bin, QT_TRANSLATE_NOOP("flarestock::PlaceForm", "a bin")},
     {PlaceKind::Shelf, QT_TRANSLATE_NOOP("flarestock::PlaceForm", "a shelf, a rack")},
     {PlaceKind::Drawer, QT_TRANSLATE_NOOP("flarestock::PlaceForm", "a drawer of the trailer")},
     {PlaceKind::Car, QT_TRANSLATE_NOOP("flarestock::PlaceForm", "a car")},
     {PlaceKind::Supplier, QT_TRANSLATE_NOOP("flarestock::PlaceForm", "a supplier")},
     {PlaceKind::Borrower, QT_TRANSLATE_NOOP("flarestock::PlaceForm", "somebody who borrows")},
     {PlaceKind::Repair, QT_TRANSLATE_NOOP("flarestock::PlaceForm", "somebody who repairs")}}};

} // namespace

Row placeRow()
{
    const QString label = PlaceForm::tr("New place");
    const QString detail =
        PlaceForm::tr("A bin, drawer, car, supplier or borrower that the shop has not had yet.");
    return {QStringLiteral("place"),
            {label, true, detail, QString(label + QStringLiteral(". ") + detail)}};
}

bool PlaceForm::begin()
{
    if (isBusy())
        return false;
    pen().hear();
    QStringList kinds;
    for (const KindChoice &one : KindChoices)
        kinds.append(tr(one.title));
    ask({typedField("id", tr("its short name, as it is scanned"), {}, QStringLiteral("C9")),
         choiceField("kind", tr("what it is"), kinds),
         typedField("title", tr("in words"), {}, tr("left open: as its short name"))});
    Q_EMIT changed();
    return true;
}

QString PlaceForm::about() const
{
    return tr("A place stays, and Take back does not reach it: one that was made by mistake is "
              "left empty.");
}

void PlaceForm::carryOut(const QVariantMap &values)
{
    if (!m_change)
        return pen().refuse(tr("Nothing can be written down here."));
    pen().hear();
    pen().whenNamed([this, values] { write(values); });
}

void PlaceForm::write(const QVariantMap &values)
{
    if (isBusy())
        return;
    const auto typed = [&values](const char *field) {
        return values.value(QString::fromLatin1(field)).toString().trimmed().toStdString();
    };
    const auto at = static_cast<std::size_t>(values.value(QStringLiteral("kind")).toInt());
    const KindChoice &kind = KindChoices.at(std::min(at, KindChoices.size() - 1));
    const PlaceWords words{typed("id"), std::string(text(kind.kind)), typed("title")};
    m_writing.run([this, words, open = m_change]() -> Errand::Back {
        const auto added = [&]() -> Result<void> {
            const auto place = placeOf(words);
            if (!place)
                return tl::unexpected(place.error());
            auto file = open();
            return file ? file->add(*place) : tl::unexpected(file.error());
        }();
        return [this, added, id = words.id] {
            Q_EMIT changed();
            if (!added)
                return pen().refuse(saidProblem(added.error()));
            Q_EMIT wrote(tr("%1 is a place of the shop now.").arg(said(id)));
        };
    });
    Q_EMIT changed();
}

} // namespace flarestock
