// SPDX-License-Identifier: MIT

#include "app/desk/papers/file_to_be.h"

#include "app/desk/papers/persons_folder.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace flarestock {

FileToBe::FileToBe(QObject *parent) : QObject(parent), m_folder(personsFolder()) {}

void FileToBe::setFolder(const QUrl &folder)
{
    m_folder = folder.toLocalFile();
    Q_EMIT changed();
}

void FileToBe::setName(const QString &name)
{
    if (name == m_name)
        return;
    m_name = name;
    Q_EMIT changed();
}

void FileToBe::setFilters(const QStringList &filters)
{
    if (filters == m_filters)
        return;
    m_filters = filters;
    Q_EMIT changed();
}

QStringList FileToBe::kinds() const
{
    QStringList kinds;
    for (const QString &filter : m_filters)
        kinds.append(filter.section(u'(', 0, 0).trimmed());
    return kinds;
}

/// "pdf" of "PDF (*.pdf)".
QString FileToBe::ending(int kind) const
{
    return m_filters.value(kind).section(QStringLiteral("*."), 1).section(u')', 0, 0);
}

int FileToBe::kind() const
{
    const QString typed = QFileInfo(m_name.trimmed()).suffix();
    for (int at = 0; at < m_filters.size(); ++at) {
        if (typed.compare(ending(at), Qt::CaseInsensitive) == 0)
            return at;
    }
    return 0;
}

void FileToBe::setKind(int kind)
{
    if (kind == this->kind() || kind < 0 || kind >= m_filters.size())
        return;
    QString bare = m_name.trimmed();
    const QString was = QString(u'.' + ending(this->kind()));
    if (bare.endsWith(was, Qt::CaseInsensitive))
        bare.chop(was.size());
    setName(QString(bare + u'.' + ending(kind)));
}

QString FileToBe::path() const
{
    const QString name = m_name.trimmed();
    const QString end = QString(u'.' + ending(kind()));
    const bool isWhole = end.size() == 1 || name.endsWith(end, Qt::CaseInsensitive);
    return QDir(m_folder).filePath(isWhole ? name : QString(name + end));
}

QUrl FileToBe::url() const
{
    return QUrl::fromLocalFile(path());
}

QString FileToBe::where() const
{
    return QDir::toNativeSeparators(m_folder);
}

bool FileToBe::isThere() const
{
    return !m_name.trimmed().isEmpty() && QFileInfo::exists(path());
}

QString FileToBe::problem() const
{
    const QString name = m_name.trimmed();
    if (name.isEmpty())
        return tr("The file has no name yet. Type one.");
    if (name.contains(u'/') || name.contains(u'\\'))
        return tr("A name has no stroke in it. Choose the folder by “Other folder …”.");
    if (!QFileInfo(m_folder).isDir())
        return tr("The folder %1 is not there any more. Choose another one.").arg(where());
    if (!QFileInfo(m_folder).isWritable())
        return tr("Nothing may be written in %1. Choose another folder.").arg(where());
    if (QFileInfo(path()).isDir())
        return tr("%1 is a folder. Type another name.").arg(name);
    return {};
}

} // namespace flarestock
