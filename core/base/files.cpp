// POSIX calls, since the standard library can't sync.
#include "base/files.hpp"

#include <atomic>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace ambit {

namespace {

/// A file descriptor that closes itself.
class Descriptor {
public:
    explicit Descriptor(int opened) : number(opened) {}
    Descriptor(Descriptor&& other) noexcept : number(std::exchange(other.number, -1)) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    Descriptor& operator=(Descriptor&&) = delete;
    ~Descriptor() { close(); }

    [[nodiscard]] bool valid() const { return number >= 0; }
    [[nodiscard]] int get() const { return number; }
    /// False if the system says that something written was lost.
    bool close() { return number < 0 || ::close(std::exchange(number, -1)) == 0; }

private:
    int number;
};

tl::unexpected<Error> systemError(const Sentence& what, const std::filesystem::path& path,
                                  int number = errno) {
    Sentence remedy;
    if (number == ENOENT || number == ENOTDIR) remedy = say("Look at its name.");
    if (number == ENOSPC) remedy = say("The disk is full. Make room and try again; nothing was lost.");
    return fail(ErrorCode::storage, say("%1: %2.", what, std::system_category().message(number)),
                path.string(), std::move(remedy));
}

bool writeAll(int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t count = ::write(file, bytes.data(), bytes.size());
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

bool syncFile(int file) {
#ifdef F_FULLFSYNC // Apple's fsync leaves data in the drive's cache
    if (::fcntl(file, F_FULLFSYNC) == 0) return true;
#endif
    return ::fsync(file) == 0;
}

/// Makes a new file in `folder` that nobody else has; `path` gets its name.
Descriptor makeBeside(const std::filesystem::path& folder, bool secret, std::filesystem::path& path) {
    static std::atomic<unsigned> count{0};
    for (int tries = 0; tries < 100; ++tries) {
        path = folder / (".ambit-" + std::to_string(::getpid()) + "-" + std::to_string(count++) + ".part");
        Descriptor file(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, secret ? 0600 : 0644));
        if (file.valid() || errno != EEXIST) return file;
    }
    return Descriptor(-1);
}

Result<void> syncFolder(const std::filesystem::path& folder) {
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    // EINVAL: a file system whose folders can't be synced; nothing more can be done there.
    if (!opened.valid() || (!syncFile(opened.get()) && errno != EINVAL)) {
        return systemError(say("The folder could not be synced to disk"), folder);
    }
    return {};
}

} // namespace

Result<std::string> readFile(const std::filesystem::path& path, std::size_t most) {
    // Without O_NONBLOCK, opening a pipe would wait for a writer.
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    struct stat status {};
    if (!file.valid() || ::fstat(file.get(), &status) != 0)
        return systemError(say("The file could not be opened"), path);
    if (!S_ISREG(status.st_mode))
        return fail(ErrorCode::storage, say("This is not a regular file."), path.string());
    const auto tooLarge = [&] {
        return fail(ErrorCode::storage, say("The file is larger than %1 bytes.", std::to_string(most)),
                    path.string());
    };
    if (static_cast<std::uintmax_t>(status.st_size) > most) return tooLarge();

    std::string bytes(static_cast<std::size_t>(status.st_size) + 1,
                      '\0'); // one more, to see that it hasn't grown
    std::size_t have = 0;
    while (true) {
        if (have == bytes.size()) bytes.resize(bytes.size() * 2);
        const ssize_t count = ::read(file.get(), bytes.data() + have, bytes.size() - have);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return systemError(say("The file could not be read"), path);
        if (count == 0) break;
        have += static_cast<std::size_t>(count);
        if (have > most) return tooLarge();
    }
    bytes.resize(have);
    return bytes;
}

Result<void> writeFile(const std::filesystem::path& path, std::string_view bytes, bool secret) {
    const std::filesystem::path folder = path.has_parent_path() ? path.parent_path() : ".";
    std::filesystem::path part;
    Descriptor file = makeBeside(folder, secret, part);
    if (!file.valid()) return systemError(say("The file could not be made"), path);
    const bool written = writeAll(file.get(), bytes) && syncFile(file.get()) && file.close() &&
                         ::rename(part.c_str(), path.c_str()) == 0;
    if (!written) {
        const int number = errno;
        ::unlink(part.c_str());
        return systemError(say("The file could not be written"), path, number);
    }
    return syncFolder(folder);
}

Result<void> finishFile(const std::filesystem::path& part, const std::filesystem::path& path) {
    const Descriptor file(::open(part.c_str(), O_RDONLY | O_CLOEXEC));
    // A link is refused where a rename would overwrite what has come there meanwhile.
    const bool done = file.valid() && syncFile(file.get()) && ::link(part.c_str(), path.c_str()) == 0;
    const int number = errno;
    ::unlink(part.c_str());
    if (!done) return systemError(say("The file could not be written"), path, number);
    return syncFolder(path.has_parent_path() ? path.parent_path() : ".");
}

} // namespace ambit
