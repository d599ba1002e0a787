#include "model/photos_ahead.hpp"

namespace ambit::view {

PhotosAhead::PhotosAhead(const Services& handedIn) : services(&handedIn) {
    pool.setMaxThreadCount(1);
}

void PhotosAhead::expect(const QList<QUrl>& urls, PhotoData keep) {
    std::map<std::pair<QUrl, PhotoData>, Coming> expected;
    for (const QUrl& url : urls) {
        const std::pair key(url, keep);
        if (const auto known = coming.find(key); known != coming.end()) {
            expected.insert(*known);
            continue;
        }
        const auto task = std::make_shared<std::packaged_task<Result<archive::PhotoBytes>()>>(
            [read = services->readPhoto, url, keep] { return read(url, keep); });
        if (expected.emplace(key, task->get_future().share()).second) pool.start([task] { (*task)(); });
    }
    coming = std::move(expected);
}

Result<archive::PhotoBytes> PhotosAhead::read(const QUrl& url, PhotoData keep) const {
    const auto known = coming.find({url, keep});
    return known != coming.end() ? known->second.get() : services->readPhoto(url, keep);
}

} // namespace ambit::view
