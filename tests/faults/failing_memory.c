/* SPDX-License-Identifier: MIT
 *
 * Failing memory: preloaded (LD_PRELOAD) into a program under test. Allocations of the C library fail, and with
 * them those of C++, SQLite and Qt, which all come down to it. A program that runs one operation many times
 * (starved.cpp) asks for that by memory_fails(); any other by its environment:
 *
 *   MEMORY_FROM  counted from the moment when this file is opened
 *   MEMORY_AT    the allocation that fails, from 1
 *   MEMORY_EVER  1: every later one fails too
 *   MEMORY_SEEN  a file that is made when one fails, so that the test knows that it got there
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

extern void *__libc_malloc(size_t);
extern void *__libc_calloc(size_t, size_t);
extern void *__libc_realloc(void *, size_t);
extern void *__libc_memalign(size_t, size_t);

static long failingAt;
static long counted;
static int failsForEver;
static int hasFailed;
static int isCounting;
static const char *from;
static const char *seen;

/* From now on; at = 0: none. */
void memory_fails(long at, int forEver)
{
    failingAt = at;
    failsForEver = forEver;
    counted = 0;
    hasFailed = 0;
    isCounting = at > 0;
}

int memory_has_failed(void)
{
    return hasFailed;
}

__attribute__((constructor)) static void start(void)
{
    const char *at = getenv("MEMORY_AT");
    const char *ever = getenv("MEMORY_EVER");
    from = getenv("MEMORY_FROM");
    seen = getenv("MEMORY_SEEN");
    failingAt = at ? strtol(at, NULL, 10) : 0;
    failsForEver = ever && *ever == '1';
}

static int fails(void)
{
    if (!isCounting)
        return 0;
    ++counted;
    if (counted != failingAt && !(failsForEver && counted > failingAt))
        return 0;
    if (!hasFailed && seen)
        close(openat(AT_FDCWD, seen, O_CREAT | O_WRONLY | O_CLOEXEC, 0600));
    hasFailed = 1;
    errno = ENOMEM;
    return 1;
}

void *malloc(size_t size)
{
    return fails() ? NULL : __libc_malloc(size);
}

void *calloc(size_t count, size_t size)
{
    return fails() ? NULL : __libc_calloc(count, size);
}

void *realloc(void *old, size_t size)
{
    return fails() ? NULL : __libc_realloc(old, size);
}

void *aligned_alloc(size_t alignment, size_t size)
{
    return fails() ? NULL : __libc_memalign(alignment, size);
}

int posix_memalign(void **made, size_t alignment, size_t size)
{
    if (fails())
        return ENOMEM;
    *made = __libc_memalign(alignment, size);
    return *made ? 0 : ENOMEM;
}

static int opened(const char *name, const char *path, int flags, unsigned mode)
{
    if (from && failingAt > 0 && strcmp(path, from) == 0)
        isCounting = 1;
    int (*real)(const char *, int, ...) = (int (*)(const char *, int, ...))dlsym(RTLD_NEXT, name);
    return real(path, flags, mode);
}

#define OPENING(name)                                                                              \
    int name(const char *path, int flags, ...)                                                     \
    {                                                                                              \
        va_list more;                                                                              \
        va_start(more, flags);                                                                     \
        const unsigned mode = flags & (O_CREAT | O_TMPFILE) ? va_arg(more, unsigned) : 0;          \
        va_end(more);                                                                              \
        return opened(#name, path, flags, mode);                                                   \
    }

OPENING(open)
OPENING(open64)
