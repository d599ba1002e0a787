#include "model/background.hpp"

namespace ambit::view {

Background::Background(std::filesystem::path archiveFile) : file(std::move(archiveFile)) {
    pool.setMaxThreadCount(1);
    pool.setExpiryTimeout(-1); // a connection stays on the thread that opened it
}

void Background::finish() {
    finishing = true;
    pool.clear();
    pool.waitForDone();
}

Result<const archive::Archive*> Background::connected() {
    if (!connection) {
        auto opened = archive::Archive::open(file);
        if (!opened) return tl::unexpected(opened.error());
        connection = std::make_unique<archive::Archive>(std::move(*opened));
    }
    return connection.get();
}

} // namespace ambit::view
