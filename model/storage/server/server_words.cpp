// SPDX-License-Identifier: MIT

#include "model/storage/server/server_words.h"

#include <QSqlError>
#include <QStringList>

namespace flarestock {

namespace {

struct Said {
    const char *wrong;
    const char *remedy;
};

Said wordsFor(const QString &state)
{
    if (state.startsWith(u"23"))
        return {"refused the change", "What is written in the journal stays; make a new movement."};
    if (state == u"42501")
        return {"does not let this role do that", "Ask who set the shop up on the server."};
    if (state == u"25006")
        return {"cannot be written", "It is only read: ask who runs the server."};
    if (state.startsWith(u"53"))
        return {"could not be written: it is full", "Ask who runs the server to make room."};
    if (state.startsWith(u"XX") || state.startsWith(u"58"))
        return {"is damaged, or its disk is", "Ask who runs the server to look at it at once."};
    return {"could not be read or written", "Run flarestock verify on it."};
}

/// Serialization failure, deadlock, a lock waited for too long; and a key that another took at the
/// same moment ("it may also be advisable to retry", PostgreSQL 15, 13.5).
bool isInTheWay(const QString &state)
{
    return state == u"40001" || state == u"40P01" || state == u"55P03" || state == u"23505";
}

/// No answer at all, or one of those with which a server ends a connection.
bool isLost(const QString &state)
{
    return state.isEmpty() || state.startsWith(u"08") || state.startsWith(u"57P");
}

/// The first line of what the driver says, without its last full stop.
std::string firstLine(const QSqlError &error)
{
    QString line = error.databaseText().trimmed().section(u'\n', 0, 0).trimmed();
    if (line.startsWith(QStringLiteral("ERROR:")))
        line = line.mid(6).trimmed();
    return line.toStdString();
}

} // namespace

StorageFailure failureOf(const QSqlError &error, const std::string &name)
{
    const QString state = error.nativeErrorCode();
    if (isLost(state))
        return {{name, "no longer answers",
                 "Look whether the server and the network are there, then open the shop again."},
                0,
                StorageFailure::Answer::Lost};
    const auto [wrong, remedy] = wordsFor(state);
    StorageFailure failure{{name, std::string(wrong) + " (" + firstLine(error) + ")", remedy}};
    if (isInTheWay(state))
        failure.answer = StorageFailure::Answer::InTheWay;
    return failure;
}

StorageFailure notReached(const QSqlError &error, const std::string &name)
{
    return {{name, "does not let anybody in now (" + firstLine(error) + ")",
             "Look whether the server and the network are there, then try again; where the "
             "password was changed, open the shop again."}};
}

StorageFailure notConnected(const QSqlError &error, const std::string &name)
{
    return {{name,
             "cannot be reached, does not prove who it is, or does not take the password (" +
                 firstLine(error) + ")",
             "Check host, port, role and password; ?sslrootcert= names the certificate that the "
             "server's is signed by."}};
}

} // namespace flarestock
