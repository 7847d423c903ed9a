// SPDX-License-Identifier: MIT
//
// flarestock-paper: reads a paper, or labels, as a JSON document from the standard input and writes
// it as a PDF to the standard output. It needs no screen.

#include "app/paper/labels.h"
#include "app/paper/painting.h"

#include <QFile>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QHashFunctions>
#include <QJsonDocument>

#include <cstdio>
#include <ctime>

using namespace flarestock;

namespace {

int refuse(const Problem &problem)
{
    std::fprintf(stderr, "flarestock-paper: %s\n", problem.sentence().c_str());
    return 2;
}

Result<QByteArray> paintedOf(const QByteArray &json)
{
    const QJsonObject document = QJsonDocument::fromJson(json).object();
    if (document.contains(QLatin1String("labels"))) {
        const auto labels = LabelSheet::read(document);
        return labels ? pdfOf(*labels) : tl::unexpected(labels.error());
    }
    const auto paper = Paper::read(json);
    return paper ? Result<QByteArray>(pdfOf(*paper)) : tl::unexpected(paper.error());
}

} // namespace

int main(int argc, char **argv)
{
    QHashSeed::setDeterministicGlobalSeed(); // The same paper is the same file.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "UTC");
    tzset();
    const QGuiApplication application(argc, argv);
    if (QFontDatabase::families().isEmpty())
        return refuse({"this computer", "has no fonts", "Install fonts-dejavu-core."});
    QFile in;
    if (!in.open(stdin, QIODevice::ReadOnly))
        return refuse({"the standard input", "cannot be read", ""});
    const auto pdf = paintedOf(in.readAll());
    if (!pdf)
        return refuse(pdf.error());
    const auto size = static_cast<std::size_t>(pdf->size());
    if (std::fwrite(pdf->constData(), 1, size, stdout) != size || std::fflush(stdout) != 0)
        return refuse({"the standard output", "cannot be written", ""});
    return 0;
}
