/* SPDX-License-Identifier: MIT
 *
 * Failing disk: preloaded (LD_PRELOAD) into a program under test. It watches what the program does to the
 * files of one folder, below the C library and above the kernel. The program itself has no switch for this.
 *
 *   DISK_FOLDER  the folder, as an absolute path; nothing else is touched or seen
 *   DISK_TRACE   a file to which every lasting call is added in its order (crash_images.py reads it)
 *   DISK_CALL    which calls are counted: w write and truncate, s sync, o open, u unlink, r rename, i read,
 *                * all but read
 *   DISK_AT      the one of them that fails, from 1
 *   DISK_ERRNO   with this error; 0 kills the program with SIGKILL just before the call instead
 *   DISK_EVER    1: every later one fails too
 *   DISK_NO_SYNC 1: syncs say that they are done and do nothing, of any file
 *   DISK_SEEN    a file that is made when a call fails, so that the test knows that it got there
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

enum { DescriptorsMost = 1024 };

static const char *folder;
static const char *seen;
static int trace = -1;
static char failingCall;
static long failingAt;
static int failingErrno;
static int failsForEver;
static int noSync;
static long counted;
static char *pathOf[DescriptorsMost]; /* of each watched descriptor, else NULL */

#define REAL(name)                                                                                 \
    ({                                                                                             \
        static __typeof__(&name) real;                                                             \
        if (!real)                                                                                 \
            real = (__typeof__(&name))dlsym(RTLD_NEXT, #name);                                     \
        real;                                                                                      \
    })

static long number(const char *name)
{
    const char *text = getenv(name);
    return text ? strtol(text, NULL, 10) : 0;
}

__attribute__((constructor)) static void start(void)
{
    folder = getenv("DISK_FOLDER");
    seen = getenv("DISK_SEEN");
    const char *call = getenv("DISK_CALL");
    failingCall = call ? *call : 0;
    failingAt = number("DISK_AT");
    failingErrno = (int)number("DISK_ERRNO");
    failsForEver = (int)number("DISK_EVER");
    noSync = (int)number("DISK_NO_SYNC");
    const char *path = getenv("DISK_TRACE");
    if (path && *path)
        trace = REAL(open)(path, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0644);
}

/* SQLite's -shm is memory shared between processes: nothing of it has to last. */
static int watched(const char *path)
{
    if (!folder || !path || strncmp(path, folder, strlen(folder)) != 0)
        return 0;
    const size_t length = strlen(path);
    return length < 4 || strcmp(path + length - 4, "-shm") != 0;
}

static const char *watchedPath(int descriptor)
{
    return descriptor >= 0 && descriptor < DescriptorsMost ? pathOf[descriptor] : NULL;
}

/* call, 0, length of path (16 bits), of content (32 bits), offset (64 bits), path, content: one write,
 * so that a kill cannot tear it. */
static void record(char call, const char *path, const void *content, size_t size, int64_t offset)
{
    if (trace < 0)
        return;
    struct {
        uint8_t call, none;
        uint16_t pathLength;
        uint32_t size;
        int64_t offset;
    } head = {(uint8_t)call, 0, (uint16_t)strlen(path), (uint32_t)size, offset};
    const struct iovec parts[3] = {
        {&head, sizeof head}, {(void *)path, head.pathLength}, {(void *)content, size}};
    if (REAL(writev)(trace, parts, 3) < 0)
        abort();
}

static void leaveMark(void)
{
    if (!seen)
        return;
    const int mark = REAL(open)(seen, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0644);
    if (mark < 0 || REAL(write)(mark, "failed\n", 7) != 7)
        abort();
    REAL(close)(mark);
}

/* Whether this call fails; errno is set then. */
static int fails(char call)
{
    if (!failingAt || (failingCall == '*' ? call == 'i' : failingCall != call))
        return 0;
    const long now = __sync_add_and_fetch(&counted, 1);
    if (now != failingAt && !(failsForEver && now > failingAt))
        return 0;
    leaveMark();
    if (failingErrno == 0)
        raise(SIGKILL);
    errno = failingErrno;
    return 1;
}

static int remember(int descriptor, const char *path, int flags, int wasThere)
{
    if (descriptor < 0 || descriptor >= DescriptorsMost)
        return descriptor;
    free(pathOf[descriptor]);
    pathOf[descriptor] = watched(path) ? strdup(path) : NULL;
    if (pathOf[descriptor] && (flags & O_CREAT) && !wasThere)
        record('C', path, "", 0, 0);
    if (pathOf[descriptor] && (flags & O_TRUNC) && wasThere)
        record('T', path, "", 0, 0);
    return descriptor;
}

#define OPEN(name)                                                                                 \
    int name(const char *path, int flags, ...)                                                     \
    {                                                                                              \
        va_list more;                                                                              \
        va_start(more, flags);                                                                     \
        const mode_t mode = (flags & O_CREAT) ? va_arg(more, mode_t) : 0;                          \
        va_end(more);                                                                              \
        if (watched(path) && fails('o'))                                                           \
            return -1;                                                                             \
        const int wasThere = watched(path) && access(path, F_OK) == 0;                             \
        return remember(REAL(name)(path, flags, mode), path, flags, wasThere);                     \
    }
OPEN(open)
OPEN(open64)

/* How C++ streams open: only for reading here. */
#define STREAM(name)                                                                               \
    FILE *name(const char *path, const char *mode)                                                 \
    {                                                                                              \
        return watched(path) && fails('o') ? NULL : REAL(name)(path, mode);                        \
    }
STREAM(fopen)
STREAM(fopen64)

int close(int descriptor)
{
    if (watchedPath(descriptor)) {
        free(pathOf[descriptor]);
        pathOf[descriptor] = NULL;
    }
    return REAL(close)(descriptor);
}

#define WRITE_AT(name)                                                                             \
    ssize_t name(int descriptor, const void *content, size_t size, off_t offset)                   \
    {                                                                                              \
        const char *path = watchedPath(descriptor);                                                \
        if (path && fails('w'))                                                                    \
            return -1;                                                                             \
        if (path)                                                                                  \
            record('W', path, content, size, offset);                                              \
        return REAL(name)(descriptor, content, size, offset);                                      \
    }
WRITE_AT(pwrite)
WRITE_AT(pwrite64)

#define READ_AT(name)                                                                              \
    ssize_t name(int descriptor, void *content, size_t size, off_t offset)                         \
    {                                                                                              \
        if (watchedPath(descriptor) && fails('i'))                                                 \
            return -1;                                                                             \
        return REAL(name)(descriptor, content, size, offset);                                      \
    }
READ_AT(pread)
READ_AT(pread64)

/* What the program says on its standard output is an acknowledgement. */
ssize_t write(int descriptor, const void *content, size_t size)
{
    const char *path = watchedPath(descriptor);
    if (path && fails('w'))
        return -1;
    if (path)
        record('W', path, content, size, lseek(descriptor, 0, SEEK_CUR));
    else if (descriptor == 1)
        record('A', "said", content, size, 0);
    return REAL(write)(descriptor, content, size);
}

#define TRUNCATE(name)                                                                             \
    int name(int descriptor, off_t size)                                                           \
    {                                                                                              \
        const char *path = watchedPath(descriptor);                                                \
        if (path && fails('w'))                                                                    \
            return -1;                                                                             \
        if (path)                                                                                  \
            record('T', path, "", 0, size);                                                        \
        return REAL(name)(descriptor, size);                                                       \
    }
TRUNCATE(ftruncate)
TRUNCATE(ftruncate64)

/* On the disk only once it has come back, so it is recorded behind the real call. */
#define SYNC(name)                                                                                 \
    int name(int descriptor)                                                                       \
    {                                                                                              \
        const char *path = watchedPath(descriptor);                                                \
        if (path && fails('s'))                                                                    \
            return -1;                                                                             \
        const int done = noSync ? 0 : REAL(name)(descriptor);                                      \
        if (path && done == 0)                                                                     \
            record('S', path, "", 0, 0);                                                           \
        return done;                                                                               \
    }
SYNC(fsync)
SYNC(fdatasync)

#define UNLINK(name)                                                                               \
    int name(const char *path)                                                                     \
    {                                                                                              \
        if (watched(path) && fails('u'))                                                           \
            return -1;                                                                             \
        const int done = REAL(name)(path);                                                         \
        if (watched(path) && done == 0)                                                            \
            record('U', path, "", 0, 0);                                                           \
        return done;                                                                               \
    }
UNLINK(unlink)
UNLINK(remove)

int rename(const char *from, const char *to)
{
    if (watched(from) && fails('r'))
        return -1;
    const int done = REAL(rename)(from, to);
    if (watched(from) && done == 0)
        record('R', from, to, strlen(to), 0);
    return done;
}

int renameat2(int folderFrom, const char *from, int folderTo, const char *to, unsigned flags)
{
    if (watched(from) && fails('r'))
        return -1;
    const int done = REAL(renameat2)(folderFrom, from, folderTo, to, flags);
    if (watched(from) && done == 0)
        record('R', from, to, strlen(to), 0);
    return done;
}
