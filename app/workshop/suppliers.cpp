// SPDX-License-Identifier: MIT

#include "app/workshop/suppliers.h"

#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr const char *PlacePrefix = "supplier-";

} // namespace

const Supplier *supplierById(std::string_view id, const Catalogue &catalogue)
{
    const auto all = catalogue.suppliers();
    const auto found =
        std::find_if(all.begin(), all.end(), [id](const Supplier &one) { return one.id == id; });
    return found == all.end() ? nullptr : &*found;
}

std::string supplierName(std::string_view id, const Catalogue &catalogue)
{
    const Supplier *supplier = supplierById(id, catalogue);
    return supplier == nullptr || supplier->name.empty() ? std::string(id) : supplier->name;
}

Place newPlaceOf(const Supplier &supplier)
{
    return {PlacePrefix + supplier.id, supplier.name, PlaceKind::Supplier};
}

bool isPlaceOf(std::string_view supplier, const Place &place)
{
    return place.kind == PlaceKind::Supplier &&
           (sameFolded(place.id, PlacePrefix + std::string(supplier)) ||
            sameFolded(place.id, supplier));
}

} // namespace flarestock
