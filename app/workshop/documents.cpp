// SPDX-License-Identifier: MIT

#include "app/workshop/documents.h"

#include "model/exact/case_fold.h"
#include "model/exchange/photos/photo_toml.h"
#include "model/exchange/season/season_csv.h"
#include "model/exchange/servicing/intervals_csv.h"
#include "model/exchange/spares/spares_csv.h"
#include "model/exchange/template_toml.h"

#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace flarestock {

namespace {

constexpr qint64 LargestFile = 64 * 1024 * 1024;

constexpr auto SealsName = "as-exported.json";

std::string sealOf(const std::string &text)
{
    return QCryptographicHash::hash(
               QByteArrayView(text.data(), static_cast<qsizetype>(text.size())),
               QCryptographicHash::Sha256)
        .toHex()
        .toStdString();
}

QString sealsIn(const std::filesystem::path &folder)
{
    return QDir(QString::fromStdString(folder.string())).filePath(QString::fromLatin1(SealsName));
}

Result<void> writeText(const QString &path, const std::string &text)
{
    QFile file(path);
    if (!QDir().mkpath(QFileInfo(path).path()) || !file.open(QIODevice::WriteOnly) ||
        file.write(text.data(), static_cast<qint64>(text.size())) < 0 || !file.flush())
        return problem(path.toStdString(),
                       "cannot be written: " + file.errorString().toStdString());
    return {};
}

Result<void> writeSeals(const std::filesystem::path &folder,
                        const std::map<std::string, std::string> &seals)
{
    QJsonObject names;
    for (const auto &[name, seal] : seals)
        names.insert(QString::fromStdString(name), QString::fromStdString(seal));
    return writeText(sealsIn(folder), QJsonDocument(names).toJson().toStdString());
}

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

Result<std::string> textOfFile(const std::filesystem::path &file)
{
    return textOf(QString::fromStdString(file.string()));
}

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
    std::map<std::string, std::string> seals;
    for (const auto &[name, text] : documents) {
        const QString inside = QDir::cleanPath(QString::fromStdString(name));
        if (QDir::isAbsolutePath(inside) || inside.startsWith(QStringLiteral("..")))
            return problem(name, "would lie outside the folder", "Look where the shop is from.");
        if (auto written = writeText(root.filePath(inside), text); !written)
            return written;
        seals.emplace(name, sealOf(text));
    }
    return writeSeals(folder, seals);
}

Result<AsExported> AsExported::in(const std::filesystem::path &folder)
{
    const QString path = sealsIn(folder);
    AsExported exported;
    exported.m_folder = folder;
    if (!QFile::exists(path))
        return exported;
    const auto text = textOf(path);
    if (!text)
        return tl::unexpected(text.error());
    const auto seals = QJsonDocument::fromJson(QByteArray::fromStdString(*text));
    if (!seals.isObject())
        return problem(path.toStdString(), "does not say how the files were when they came out",
                       "Export anew and edit there, or take this one file away: then what others "
                       "changed meanwhile is overwritten.");
    const auto names = seals.object();
    for (auto at = names.begin(); at != names.end(); ++at)
        exported.m_seals.emplace(at.key().toStdString(), at.value().toString().toStdString());
    return exported;
}

bool AsExported::isAsThen(const std::string &name, const std::string &text) const
{
    const auto seal = m_seals.find(name);
    return seal != m_seals.end() && seal->second == sealOf(text);
}

Result<void> AsExported::taken(const TextFiles &documents)
{
    if (m_seals.empty())
        return {};
    for (const auto &[name, text] : documents)
        m_seals[name] = sealOf(text);
    return writeSeals(m_folder, m_seals);
}

Result<Season> readSeasonOf(const TextFiles &documents)
{
    const auto season = documents.find("season.csv");
    return season == documents.end() ? Season() : readSeason(season->second, season->first);
}

Result<void> seasonFits(const TextFiles &documents, std::span<const Place> places)
{
    const auto season = readSeasonOf(documents);
    if (!season)
        return tl::unexpected(season.error());
    for (const Event &event : season->events()) {
        for (const std::string &car : event.cars) {
            const bool isCar = std::any_of(places.begin(), places.end(), [&car](const Place &one) {
                return one.kind == PlaceKind::Car && sameFolded(one.id, car);
            });
            if (!isCar)
                return problem("season.csv",
                               "takes \"" + car + "\" to " + event.id +
                                   ", which is no car of the shop",
                               "Correct it, or enter the car first: flarestock place.");
        }
    }
    return {};
}

namespace {

/// Whether what the shop says of its spares reads.
Result<void> readSparesOf(const TextFiles &documents)
{
    if (const auto spares = documents.find("spares.csv"); spares != documents.end())
        if (const auto read = readSpendings(spares->second, spares->first); !read)
            return tl::unexpected(read.error());
    if (const auto used = documents.find("used.csv"); used != documents.end())
        if (const auto read = readPastUses(used->second, used->first); !read)
            return tl::unexpected(read.error());
    return {};
}

} // namespace

Result<Catalogue> readCatalogueAndPlans(const TextFiles &documents)
{
    auto catalogue = readCatalogue(documents);
    if (!catalogue)
        return catalogue;
    if (const auto templates = readTemplates(documents); !templates)
        return tl::unexpected(templates.error());
    if (const auto season = readSeasonOf(documents); !season)
        return tl::unexpected(season.error());
    if (const auto photos = readPhotos(documents); !photos)
        return tl::unexpected(photos.error());
    if (const auto spares = readSparesOf(documents); !spares)
        return tl::unexpected(spares.error());
    if (const auto own = documents.find("intervals.csv"); own != documents.end()) {
        if (const auto intervals = readIntervals(own->second, own->first); !intervals)
            return tl::unexpected(intervals.error());
    }
    const auto builds = documents.find("builds.toml");
    if (builds == documents.end())
        return catalogue;
    if (const auto read = readBuilds(builds->second, "builds.toml"); !read)
        return tl::unexpected(read.error());
    return catalogue;
}

} // namespace flarestock
