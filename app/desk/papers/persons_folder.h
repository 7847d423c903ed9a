// SPDX-License-Identifier: MIT
//
// Persons folder: where a person's papers and copies are offered to go, and lists are looked for:
// the documents, or the home of whoever has no folder of documents.

#pragma once

#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

/// There is such a folder.
[[nodiscard]] QString personsFolder();

class PersonsFolder : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QUrl url READ url CONSTANT)
public:
    using QObject::QObject;

    [[nodiscard]] QUrl url() const { return QUrl::fromLocalFile(personsFolder()); }
};

} // namespace flarestock
