// SPDX-License-Identifier: MIT

#include "app/workshop/documents.h"

#include "model/exchange/template_toml.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>

namespace flarestock {

namespace {

constexpr qint64 LargestFile = 64 * 1024 * 1024;

Result<std::string> textOf(const QString &path)
{
    QFile file(path);
    if (file.size() > LargestFile)
        return problem(path.toStdString(), "is larger than 64 MB", "Split it.");
    if (!file.open(QIODevice::ReadOnly))
        return problem(path.toStdString(), "cannot be read: " + file.errorString().toStdString());
    return file.readAll().toStdString();
}

} // namespace

Result<TextFiles> documentsIn(const std::filesystem::path &folder)
{
    const QDir root(QDir(QString::fromStdString(folder.string())).absolutePath());
    if (folder.empty() || !root.exists())
        return problem(folder.string(), "is no folder", "Name the folder of the shop's files.");
    TextFiles documents;
    QDirIterator files(root.path(), {QStringLiteral("*.csv"), QStringLiteral("*.toml")},
                       QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const QString path = files.next();
        auto text = textOf(path);
        if (!text)
            return tl::unexpected(text.error());
        documents.emplace(root.relativeFilePath(path).toStdString(), std::move(*text));
    }
    if (documents.empty())
        return problem(folder.string(), "has no .csv and no .toml file",
                       "Name the folder of the shop's files.");
    return documents;
}

Result<void> writeDocuments(const TextFiles &documents, const std::filesystem::path &folder)
{
    const QDir root(QString::fromStdString(folder.string()));
    if (root.exists() && !root.isEmpty())
        return problem(folder.string(), "is not empty", "Name a new folder.");
    for (const auto &[name, text] : documents) {
        const QString inside = QDir::cleanPath(QString::fromStdString(name));
        if (QDir::isAbsolutePath(inside) || inside.startsWith(QStringLiteral("..")))
            return problem(name, "would lie outside the folder", "Look where the shop is from.");
        const QString path = root.filePath(inside);
        QFile file(path);
        if (!QDir().mkpath(QFileInfo(path).path()) || !file.open(QIODevice::WriteOnly) ||
            file.write(text.data(), static_cast<qint64>(text.size())) < 0 || !file.flush())
            return problem(path.toStdString(),
                           "cannot be written: " + file.errorString().toStdString());
    }
    return {};
}

Result<Catalogue> readCatalogueAndPlans(const TextFiles &documents)
{
    auto catalogue = readCatalogue(documents);
    if (!catalogue)
        return catalogue;
    if (const auto templates = readTemplates(documents); !templates)
        return tl::unexpected(templates.error());
    const auto builds = documents.find("builds.toml");
    if (builds == documents.end())
        return catalogue;
    if (const auto read = readBuilds(builds->second, "builds.toml"); !read)
        return tl::unexpected(read.error());
    return catalogue;
}

} // namespace flarestock
