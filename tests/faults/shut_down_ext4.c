/* SPDX-License-Identifier: MIT
 *
 * shut_down_ext4 FOLDER: the ext4 that is mounted there stops at once and throws away what is not on its
 * device, its own journal too, as when the power goes (EXT4_IOC_SHUTDOWN of Linux, fs/ext4/ext4.h, with
 * EXT4_GOING_FLAGS_NOLOGFLUSH; both numbers are those of XFS_IOC_GOINGDOWN).
 */
#include <fcntl.h>
#include <stdint.h>
#include <stdio.h>
#include <sys/ioctl.h>

#define SHUT_DOWN _IOR('X', 125, uint32_t)

int main(int count, char **words)
{
    uint32_t withoutItsJournal = 2;
    const int folder = count == 2 ? open(words[1], O_RDONLY) : -1;
    if (folder < 0 || ioctl(folder, SHUT_DOWN, &withoutItsJournal) != 0) {
        perror("shut_down_ext4");
        return 1;
    }
    return 0;
}
