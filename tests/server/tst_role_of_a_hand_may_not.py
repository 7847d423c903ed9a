# SPDX-License-Identifier: MIT
"""Whoever works in a shop on a server cannot change its history: what the role of a hand may not do is
refused by the server itself, and the shop stays whole. What the owner does against the guards is
refused as well, and seen by `verify` where he takes them away. The rights are PostgreSQL 15's, 5.7."""

from seats import Server, ServerShop, main

FORBIDDEN = (
    "UPDATE flarestock.movement SET quantity = 1",
    "DELETE FROM flarestock.movement",
    "TRUNCATE flarestock.movement CASCADE",
    "UPDATE flarestock.document SET content = ''",
    "DELETE FROM flarestock.document",
    "UPDATE flarestock.place SET title = ''",
    "DELETE FROM flarestock.box_check",
    "UPDATE flarestock.shop SET title = 'x'",
    "DELETE FROM flarestock.replica",
    "UPDATE flarestock.replica SET id = id",
    "ALTER TABLE flarestock.movement DISABLE TRIGGER ALL",
    "DROP TABLE flarestock.record",
    "UPDATE flarestock.record SET fields = '{}'",
    "SET session_replication_role = 'replica'",
    "SELECT setval('flarestock.lamport', 1)",
    "CREATE TABLE flarestock.mine (x int)",
    "CREATE OR REPLACE FUNCTION flarestock.refuse() RETURNS trigger LANGUAGE plpgsql AS "
    "'BEGIN RETURN NULL; END'",
    "UPDATE flarestock.replica SET entries = 0",
)
GUARDED = (
    "UPDATE flarestock.movement SET quantity = 1",
    "DELETE FROM flarestock.record",
    "TRUNCATE flarestock.movement CASCADE",
    "SET session_replication_role = 'replica'; DELETE FROM flarestock.movement",
)
TAKEN_AWAY = (
    "ALTER TABLE flarestock.movement DISABLE TRIGGER movement_stays",
    "DROP TRIGGER record_stays ON flarestock.record",
    "GRANT DELETE ON flarestock.movement TO hand",
    "CREATE OR REPLACE FUNCTION flarestock.refuse() RETURNS trigger LANGUAGE plpgsql AS "
    "'BEGIN RETURN NULL; END'",
    "UPDATE flarestock.balance SET quantity = quantity + 1 WHERE in_stock = 1",
)


def test(bench):
    with Server() as server:
        shop = ServerShop(server, bench.folder)
        before = shop.read().rows
        for statement in FORBIDDEN:
            said = server.psql(shop.database, statement, role="hand", good=False)
            bench.count("forbidden to a hand")
            bench.expect("permission denied" in said or "must be owner" in said or "never" in said,
                         f"{statement}: {said or 'done'}")
        for statement in GUARDED:
            said = server.psql(shop.database, statement, good=False)
            bench.count("refused to the owner")
            bench.expect("never" in said, f"{statement}: {said or 'done'}")
        bench.expect(shop.read().rows == before, "a row has changed")
        bench.expect(shop.verified().returncode == 0, f"not whole: {shop.verified().stdout}")
        for statement in TAKEN_AWAY:
            other = ServerShop(server, bench.folder)
            server.psql(other.database, statement)
            said = other.verified()
            bench.count("guards taken away")
            bench.expect(said.returncode == 2, f"{statement}: not noticed: {said.stdout}{said.stderr}")


if __name__ == "__main__":
    main("The role of a hand may not change what is written", test)
