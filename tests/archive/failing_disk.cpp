// A thin layer over the real file system: every call goes through, writes and syncs count. What the real file
// keeps stands right behind ours.
#include "failing_disk.hpp"

#include <cstring>
#include <sqlite3.h>

namespace ambit::test {

namespace {

struct File {
    sqlite3_file base;
    sqlite3_file* real;
};

int fuse = -1;
int room = -1; ///< writes until the disk is full
int syncs = 0;

bool burnt() {
    if (fuse < 0) return false;
    if (fuse == 0) return true;
    --fuse;
    return false;
}

bool isFull() {
    if (room > 0) --room;
    return room == 0;
}

sqlite3_file* real(sqlite3_file* file) {
    return reinterpret_cast<File*>(file)->real;
}

int write(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at) {
    if (isFull()) return SQLITE_FULL;
    return burnt() ? SQLITE_IOERR_WRITE : real(file)->pMethods->xWrite(real(file), bytes, count, at);
}
int truncate(sqlite3_file* file, sqlite3_int64 size) {
    return burnt() ? SQLITE_IOERR_TRUNCATE : real(file)->pMethods->xTruncate(real(file), size);
}
int sync(sqlite3_file* file, int flags) {
    if (burnt()) return SQLITE_IOERR_FSYNC;
    ++syncs;
    return real(file)->pMethods->xSync(real(file), flags);
}
int close(sqlite3_file* file) {
    return real(file)->pMethods->xClose(real(file));
}
int read(sqlite3_file* file, void* bytes, int count, sqlite3_int64 at) {
    return real(file)->pMethods->xRead(real(file), bytes, count, at);
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) {
    return real(file)->pMethods->xFileSize(real(file), size);
}
int lock(sqlite3_file* file, int kind) {
    return real(file)->pMethods->xLock(real(file), kind);
}
int unlock(sqlite3_file* file, int kind) {
    return real(file)->pMethods->xUnlock(real(file), kind);
}
int checkReservedLock(sqlite3_file* file, int* held) {
    return real(file)->pMethods->xCheckReservedLock(real(file), held);
}
int fileControl(sqlite3_file* file, int what, void* argument) {
    return real(file)->pMethods->xFileControl(real(file), what, argument);
}
int sectorSize(sqlite3_file* file) {
    return real(file)->pMethods->xSectorSize(real(file));
}
int characteristics(sqlite3_file* file) {
    return real(file)->pMethods->xDeviceCharacteristics(real(file));
}
int shmMap(sqlite3_file* file, int page, int size, int extend, void volatile** memory) {
    return real(file)->pMethods->xShmMap(real(file), page, size, extend, memory);
}
int shmLock(sqlite3_file* file, int offset, int count, int flags) {
    return real(file)->pMethods->xShmLock(real(file), offset, count, flags);
}
void shmBarrier(sqlite3_file* file) {
    real(file)->pMethods->xShmBarrier(real(file));
}
int shmUnmap(sqlite3_file* file, int remove) {
    return real(file)->pMethods->xShmUnmap(real(file), remove);
}

const sqlite3_io_methods methods{2,
                                 close,
                                 read,
                                 write,
                                 truncate,
                                 sync,
                                 fileSize,
                                 lock,
                                 unlock,
                                 checkReservedLock,
                                 fileControl,
                                 sectorSize,
                                 characteristics,
                                 shmMap,
                                 shmLock,
                                 shmBarrier,
                                 shmUnmap,
                                 nullptr,
                                 nullptr};

sqlite3_vfs* below = nullptr;
sqlite3_vfs disk;

int open(sqlite3_vfs* /*vfs*/, const char* name, sqlite3_file* file, int flags, int* given) {
    auto* ours = reinterpret_cast<File*>(file);
    ours->real = reinterpret_cast<sqlite3_file*>(ours + 1);
    const int code = below->xOpen(below, name, ours->real, flags, given);
    ours->base.pMethods = ours->real->pMethods == nullptr ? nullptr : &methods;
    return code;
}

} // namespace

void useFailingDisk() {
    if (below != nullptr) return;
    below = sqlite3_vfs_find(nullptr);
    disk = *below;
    disk.zName = "failing";
    disk.szOsFile = static_cast<int>(sizeof(File)) + below->szOsFile;
    disk.xOpen = open;
    sqlite3_vfs_register(&disk, 1);
}

void setFuse(int operations) {
    fuse = operations;
    room = -1;
}

void setRoom(int writes) {
    room = writes;
    fuse = -1;
}

int syncsDone() {
    const int done = syncs;
    syncs = 0;
    return done;
}

} // namespace ambit::test
