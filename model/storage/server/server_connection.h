// SPDX-License-Identifier: MIT
//
// Server connection: one connection to a shop on a PostgreSQL server. Over a network it is TLS with
// the certificate and the name of the server proved, and a password is answered only by SCRAM that
// is bound to that very connection; over a Unix socket the computer itself stands for both.
//
// An action is one SERIALIZABLE transaction. Where others were in the way it is taken back and done
// again from the beginning, and then alone: at first everybody holds a lock of the database
// together, who tries again holds it for himself. What is promised rests on the transaction; the
// lock only keeps two from being in each other's way for ever.

#pragma once

#include "model/storage/server/server_address.h"
#include "model/storage/shop_connection.h"

namespace flarestock {

class ServerConnection : public ShopConnection {
public:
    /// Own: to make the tables, or to fill them.
    enum class Use : std::uint8_t { Own, Write, Read };

    /// Throws StorageFailure: it cannot be reached or does not prove who it is, does not take the
    /// role, does not keep what it acknowledges, or (for Write) the role may change the journal.
    ServerConnection(const ServerAddress &address, Use use);
    ~ServerConnection() override;

    /// Throws also where others were in the way too often, or the answer to the end was lost.
    void wholly(const std::function<void()> &action) override;
    void atOneMoment(const std::function<void()> &look) const override;
    [[nodiscard]] ChainEnd chainEnd() override; ///< Of this seat, begun where there is none.
    [[nodiscard]] std::int64_t nextLamport(std::int64_t last) override;
    [[nodiscard]] bool hasNews() override;
    void examine(const std::function<void(const std::string &)> &wrong) const override;
    void copyTo(const std::filesystem::path &file) const override;

    [[nodiscard]] const ServerAddress &address() const noexcept { return m_address; }
    /// How often an action was done again since the connection was opened.
    [[nodiscard]] int triedAgain() const noexcept { return m_triedAgain; }

protected:
    [[noreturn]] void fail(const QSqlError &error) const override;

private:
    void connect();
    void applySettings() const;
    void throwUnlessGuarded() const;
    void throwIfMayChange() const;
    void once(const std::function<void()> &action);
    void rollBack() const noexcept;

    ServerAddress m_address;
    Use m_use;
    mutable bool m_inTransaction = false;
    std::int64_t m_nextLamport = 0; ///< Of the block that this transaction has drawn; 0: none.
    int m_triedAgain = 0;
    bool m_listens = false;
    bool m_wasTold = false;
    int m_looks = 0;
};

} // namespace flarestock
