#include "archive/unflushed.hpp"

#include "archive/connection.hpp"

namespace ambit::archive {

Result<void> commitUnflushed(Archive& archive) {
    return archive.inside().run("PRAGMA synchronous = NORMAL", "be opened");
}

} // namespace ambit::archive
