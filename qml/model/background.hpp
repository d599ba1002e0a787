// What takes longer than a frame, on a thread of its own with a connection to the archive of its own.
#pragma once

#include "archive/archive.hpp"

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <functional>
#include <memory>

namespace ambit::view {

/// One thread: what is asked for is done in turn. Whoever waits for an answer must outlive finish().
class Background {
public:
    explicit Background(std::filesystem::path archiveFile);
    ~Background() { finish(); }
    Background(const Background&) = delete;
    Background& operator=(const Background&) = delete;

    /// Does `work` there; then `done` gets what came of it, on the thread of `to`.
    template<class T>
    void run(QObject* to, std::function<Result<T>(const archive::Archive&)> work,
             std::function<void(Result<T>)> done) {
        pool.start([this, to, work = std::move(work), done = std::move(done)] {
            auto answer = std::make_shared<Result<T>>(Result<T>(tl::unexpected(Error{})));
            if (const auto archive = connected())
                *answer = work(**archive);
            else
                *answer = tl::unexpected(archive.error());
            QMetaObject::invokeMethod(
                to, [done, answer] { done(std::move(*answer)); }, Qt::QueuedConnection);
        });
    }

    /// What has not begun is dropped, what has is waited for. Nothing is taken after it.
    void finish();
    /// Asked by work that can be left: whoever waits for it is going.
    [[nodiscard]] bool isFinishing() const { return finishing; }

private:
    [[nodiscard]] Result<const archive::Archive*> connected(); ///< on the pool's thread only

    std::atomic<bool> finishing = false;
    std::filesystem::path file;
    std::unique_ptr<archive::Archive> connection;
    QThreadPool pool;
};

} // namespace ambit::view
