// SPDX-License-Identifier: MIT
//
// Desk deeds: how the desk comes to a shop, whichever way it is kept. A test gives its own.

#pragma once

#include "app/desk/coming/at_server.h"

namespace flarestock {

struct DeskDeeds {
    OpenShop open;
    OpenShop makeDemo;
    AtServer::Deeds atServer = {}; ///< Empty: shops are files.
};

} // namespace flarestock
