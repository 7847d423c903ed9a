// SPDX-License-Identifier: MIT

#include "app/desk/stock/photo/part_photo.h"

#include "app/desk/stock/photo/picture_file.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

/// As the shop has it; empty where there is none.
std::string documentIn(const DeedSubject &subject)
{
    if (subject.entry == nullptr || subject.book == nullptr)
        return {};
    const TextFiles &photos = subject.book->workshop->photos;
    const auto found = photos.find(photoName(subject.entry->number));
    return found == photos.end() ? std::string() : found->second;
}

Row photoRow(const char *key, const QString &label, const QString &detail)
{
    return {QString::fromLatin1(key),
            {label, true, detail, QString(label + QStringLiteral(". ") + detail)}};
}

} // namespace

void PartPhoto::show(const DeedSubject &subject)
{
    const std::string part = subject.entry == nullptr ? std::string() : subject.entry->number;
    std::string document = documentIn(subject);
    if (part == m_part && document == m_document)
        return;
    m_part = part;
    m_document = std::move(document);
    const std::string photo = photoOf({{photoName(part), m_document}}, part);
    m_source = photo.empty()
                   ? QUrl()
                   : QUrl(QString(QStringLiteral("data:image/jpeg;base64,") + said(photo)));
    Q_EMIT changed();
}

std::vector<Row> PartPhoto::deeds() const
{
    std::vector<Row> rows{
        photoRow("photo", tr("Photo"), tr("A picture file, kept in the shop beside the part."))};
    if (!m_source.isEmpty())
        rows.push_back(photoRow("noPhoto", tr("Photo away"),
                                tr("The part is shown without its photo again.")));
    return rows;
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
