// The photos of a finding that is being written down: read while it is, so that keeping it doesn't wait.
#pragma once

#include "model/services.hpp"

#include <QThreadPool>
#include <future>
#include <map>

namespace ambit::view {

/// One photo at a time, on a thread of its own: a large one takes up to half a second and 200 MB.
class PhotosAhead {
public:
    explicit PhotosAhead(const Services& services);
    ~PhotosAhead() { pool.clear(); } // what has begun is waited for

    PhotosAhead(const PhotosAhead&) = delete;
    PhotosAhead& operator=(const PhotosAhead&) = delete;

    /// These and no others will be asked for; reading begins with what is new.
    void expect(const QList<QUrl>& urls, PhotoData keep);
    /// Waits for it, or reads it now if nobody expected it.
    [[nodiscard]] Result<archive::PhotoBytes> read(const QUrl& url, PhotoData keep) const;

private:
    using Coming = std::shared_future<Result<archive::PhotoBytes>>;

    const Services* services;
    std::map<std::pair<QUrl, PhotoData>, Coming> coming;
    QThreadPool pool;
};

} // namespace ambit::view
