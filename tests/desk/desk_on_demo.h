// SPDX-License-Identifier: MIT
//
// Desk on demo: what a test stands on that works with a desk and a real shop file: the demo shop in
// a file of its own, made anew for each function.
//
//   class ChangesAreKept : public QObject, protected DeskOnDemo
//   …
//   void ChangesAreKept::init() { renew("coupe-fuel"); }

#pragma once

#include "app/desk/launch/open_shop.h"
#include "app/desk/shop/desk.h"
#include "app/workshop/workshop.h"

#include <QTemporaryDir>
#include <QTest>

namespace flarestock {

class DeskOnDemo {
protected:
    /// A new desk on a new demo shop, with that build on it, or the first where none is named.
    void renew(const char *build = nullptr)
    {
        m_desk.reset(); // There is one in a program.
        m_file = m_folder.filePath(QStringLiteral("shop%1.flarestock").arg(++m_shops));
        m_desk = std::make_unique<Desk>(nullptr);
        m_desk->setDeeds({openShopFile, makeDemoFile});
        QVERIFY2(m_desk->makeDemoIn(m_file), qPrintable(m_desk->problem()));
        QVERIFY(build == nullptr || m_desk->openBuild(QString::fromLatin1(build)));
    }
    /// The shop as the file has it, read anew.
    [[nodiscard]] std::shared_ptr<const Workshop> inFile() const
    {
        return Workshop::open(m_file.toStdString()).value();
    }
    /// Another seat changes the builds, as the text of their document. Whether it could.
    [[nodiscard]] bool
    changedElsewhere(const std::function<void(std::vector<BuildPlan> &builds)> &change) const
    {
        auto shop = ShopFile::open(m_file.toStdString(), OpenMode::ReadWrite).value();
        auto builds = readBuilds(shop.documents()->at("builds.toml"), "builds.toml").value();
        change(builds);
        return shop.putDocument("builds.toml", writeBuilds(builds), "other", 1).has_value();
    }

    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<Desk> m_desk;

private:
    int m_shops = 0;
};

} // namespace flarestock
