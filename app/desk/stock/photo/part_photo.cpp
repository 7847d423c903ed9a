// SPDX-License-Identifier: MIT

#include "app/desk/stock/photo/part_photo.h"

#include "app/desk/stock/photo/picture_file.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

/// base64; nothing where there is no photo.
const std::string *photoIn(const DeedSubject &subject)
{
    if (subject.entry == nullptr || subject.book == nullptr)
        return nullptr;
    const Photos &photos = subject.book->workshop->photos;
    const auto found = photos.find(subject.entry->number);
    return found == photos.end() ? nullptr : &found->second;
}

Row photoRow(const char *key, const QString &label, const QString &detail)
{
    return {QString::fromLatin1(key),
            {label, true, detail, QString(label + QStringLiteral(". ") + detail)}};
}

} // namespace

std::vector<Row> photoRows(const DeedSubject &subject)
{
    std::vector<Row> rows{
        photoRow("photo", PartPhoto::tr("Photo"),
                 PartPhoto::tr("A picture file, kept in the shop beside the part."))};
    if (photoIn(subject) != nullptr)
        rows.push_back(photoRow("noPhoto", PartPhoto::tr("Photo away"),
                                PartPhoto::tr("The part is shown without its photo again.")));
    return rows;
}

void PartPhoto::show(const DeedSubject &subject)
{
    const std::string *photo = photoIn(subject);
    const QUrl source =
        photo == nullptr ? QUrl()
                         : QUrl(QString(QStringLiteral("data:image/jpeg;base64,") + said(*photo)));
    const std::string part = subject.entry == nullptr ? std::string() : subject.entry->number;
    if (source == m_source && part == m_part)
        return;
    m_source = source;
    m_part = part;
    Q_EMIT changed();
}

QString PartPhoto::says() const
{
    return m_source.isEmpty() ? QString() : tr("photo of %1").arg(said(m_part));
}

void PartPhoto::put(const QUrl &file)
{
    if (m_part.empty())
        return;
    m_pen.rewrite(
        tr("A photo is kept beside %1.").arg(said(m_part)),
        [part = m_part, path = file.toLocalFile()](const TextFiles &) -> Result<TextFiles> {
            const auto picture = pictureIn(path);
            if (!picture)
                return tl::unexpected(picture.error());
            return TextFiles{{photoName(part), writePhoto(part, *picture)}};
        });
}

void PartPhoto::putAway()
{
    if (m_part.empty() || m_source.isEmpty())
        return;
    m_pen.rewrite(tr("The photo of %1 is put away.").arg(said(m_part)),
                  [part = m_part](const TextFiles &) -> Result<TextFiles> {
                      return TextFiles{{photoName(part), writePhoto(part, {})}};
                  });
}

} // namespace flarestock
