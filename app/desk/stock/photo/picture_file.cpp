// SPDX-License-Identifier: MIT

#include "app/desk/stock/photo/picture_file.h"

#include "model/exchange/photos/photo_toml.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

namespace flarestock {

namespace {

QSize within(const QSize &size, int most)
{
    return std::max(size.width(), size.height()) > most
               ? size.scaled(most, most, Qt::KeepAspectRatio)
               : size;
}

/// What is transparent is white: a JPEG cannot say it.
QImage onWhite(const QImage &image)
{
    QImage paper(image.size(), QImage::Format_RGB32);
    paper.fill(Qt::white);
    QPainter painter(&paper);
    painter.drawImage(0, 0, image);
    return paper;
}

QByteArray jpegOf(const QImage &image, int quality)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "JPEG", quality))
        return {};
    return bytes.toBase64();
}

} // namespace

Result<std::string> pictureIn(const QString &file)
{
    QImageReader reader(file);
    reader.setAutoTransform(true);
    reader.setDecideFormatFromContent(true);
    if (reader.size().isValid()) // A camera's twenty million points are not needed at once.
        reader.setScaledSize(within(reader.size(), PhotoSideMost));
    const QImage read = reader.read();
    if (read.isNull())
        return problem(file.toStdString(),
                       "is no picture that can be read: " + reader.errorString().toStdString(),
                       "Take a JPEG or PNG.");
    QImage image = onWhite(read);
    for (int side = PhotoSideMost; side >= 1; side /= 2) {
        const QSize size = within(image.size(), side);
        if (size != image.size())
            image = image.scaled(size, Qt::KeepAspectRatio, Qt::SmoothTransformation);
        for (const int quality : {85, 70, 55, 40}) {
            const QByteArray text = jpegOf(image, quality);
            if (!text.isEmpty() && text.size() <= static_cast<qsizetype>(PhotoTextMost))
                return text.toStdString();
        }
    }
    return problem(file.toStdString(), "cannot be written as a JPEG", "Take another picture.");
}

} // namespace flarestock
