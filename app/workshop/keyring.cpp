// SPDX-License-Identifier: MIT

#include "app/workshop/keyring.h"

#include <QEventLoop>
#include <qt6keychain/keychain.h>

namespace flarestock {

namespace {

constexpr auto Service = "flarestock";

/// Whether it went well.
bool finished(QKeychain::Job &job, const std::string &whose)
{
    job.setAutoDelete(false);
    job.setInsecureFallback(false); // Rather nowhere than in a file of settings.
    job.setKey(QString::fromStdString(whose));
    QEventLoop loop;
    QObject::connect(&job, &QKeychain::Job::finished, &loop, &QEventLoop::quit);
    job.start();
    loop.exec();
    return job.error() == QKeychain::NoError;
}

} // namespace

std::optional<std::string> passwordInKeyring(const std::string &whose)
{
    QKeychain::ReadPasswordJob job(QString::fromLatin1(Service));
    if (!finished(job, whose))
        return std::nullopt;
    return job.textData().toStdString();
}

bool keepInKeyring(const std::string &whose, const std::string &password)
{
    QKeychain::WritePasswordJob job(QString::fromLatin1(Service));
    job.setTextData(QString::fromStdString(password));
    return finished(job, whose);
}

} // namespace flarestock
