/* SPDX-License-Identifier: MIT
 *
 * Wrong clock: preloaded (LD_PRELOAD) into a program under test. The time of day is wrong by CLOCK_WRONG
 * seconds; where CLOCK_JUMP is set, that many seconds more or less at every second reading, so that it
 * jumps to and fro in the middle of the work. Clocks that only count on (CLOCK_MONOTONIC) stay right.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <stdlib.h>
#include <sys/time.h>
#include <time.h>

static long wrongBy(void)
{
    static long readings;
    const char *wrong = getenv("CLOCK_WRONG");
    const char *jump = getenv("CLOCK_JUMP");
    long seconds = wrong ? strtol(wrong, NULL, 10) : 0;
    if (jump && __sync_fetch_and_add(&readings, 1) % 2 == 1)
        seconds += strtol(jump, NULL, 10);
    return seconds;
}

int clock_gettime(clockid_t clock, struct timespec *now)
{
    static int (*real)(clockid_t, struct timespec *);
    if (!real)
        real = (int (*)(clockid_t, struct timespec *))dlsym(RTLD_NEXT, "clock_gettime");
    const int done = real(clock, now);
    if (done == 0 && (clock == CLOCK_REALTIME || clock == CLOCK_REALTIME_COARSE))
        now->tv_sec += wrongBy();
    return done;
}

int gettimeofday(struct timeval *restrict now, void *restrict zone)
{
    (void)zone;
    struct timespec fine;
    const int done = clock_gettime(CLOCK_REALTIME, &fine);
    now->tv_sec = fine.tv_sec;
    now->tv_usec = fine.tv_nsec / 1000;
    return done;
}

time_t time(time_t *now)
{
    struct timespec fine;
    clock_gettime(CLOCK_REALTIME, &fine);
    if (now)
        *now = fine.tv_sec;
    return fine.tv_sec;
}
