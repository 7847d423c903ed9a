// SPDX-License-Identifier: MIT

#include "yardstick.h"

#include <algorithm>
#include <ctime>
#include <numeric>
#include <random>

namespace flarestock {

namespace {

double processorMs()
{
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

} // namespace

/// Each leads to another, in one ring, in no order that a processor could guess.
Yardstick::Yardstick() : m_things(Things)
{
    std::vector<std::uint32_t> order(Things);
    std::iota(order.begin(), order.end(), 0U);
    std::shuffle(order.begin(), order.end(), std::mt19937(1)); // NOLINT: the same each time.
    for (std::uint32_t at = 0; at < Things; ++at)
        m_things[order[at]].next = order[(at + 1) % Things];
}

double Yardstick::walk()
{
    const double begun = processorMs();
    for (std::uint32_t step = 0; step < Things; ++step)
        m_at = m_things[m_at].next;
    return processorMs() - begun;
}

} // namespace flarestock
