// What libexif reads in a photo that Ambit keeps: the time, and nothing else. What libexif writes, Ambit
// reads.
#include "../photo/made.hpp"
#include "base/files.hpp"
#include "photo/jpeg.hpp"

#include <QTest>
#include <cstring>
#include <libexif/exif-data.h>
#include <libexif/exif-loader.h>
#include <map>
#include <memory>

using namespace ambit;

namespace {

struct Unref {
    void operator()(ExifData* data) const { exif_data_unref(data); }
};
using Data = std::unique_ptr<ExifData, Unref>;

Data dataOf(const std::string& jpeg) {
    const std::unique_ptr<ExifLoader, decltype(&exif_loader_unref)> loader(exif_loader_new(),
                                                                           exif_loader_unref);
    std::string bytes = jpeg; // libexif's signature isn't const
    exif_loader_write(loader.get(), reinterpret_cast<unsigned char*>(bytes.data()),
                      static_cast<unsigned>(bytes.size()));
    const unsigned char* block = nullptr;
    unsigned size = 0;
    exif_loader_get_buf(loader.get(), &block, &size);
    Data data(exif_data_new());
    // Else it adds what the specification asks for, and leaves out what it doesn't know.
    exif_data_unset_option(data.get(), EXIF_DATA_OPTION_FOLLOW_SPECIFICATION);
    exif_data_unset_option(data.get(), EXIF_DATA_OPTION_IGNORE_UNKNOWN_TAGS);
    exif_data_load_data(data.get(), block, size);
    return data;
}

/// Every entry of every directory, by its name.
std::map<std::string, std::string> entriesOf(ExifData* data) {
    std::map<std::string, std::string> all;
    exif_data_foreach_content(
        data,
        [](ExifContent* content, void* into) {
            exif_content_foreach_entry(
                content,
                [](ExifEntry* entry, void* map) {
                    char value[200] = {};
                    exif_entry_get_value(entry, value, sizeof value);
                    const char* name = exif_tag_get_name_in_ifd(entry->tag, exif_entry_get_ifd(entry));
                    (*static_cast<std::map<std::string, std::string>*>(map))[name] = value;
                },
                into);
        },
        &all);
    return all;
}

void add(ExifData* data, ExifIfd ifd, ExifTag tag, const std::string& text) {
    ExifEntry* entry = exif_entry_new();
    exif_content_add_entry(data->ifd[ifd], entry);
    exif_entry_initialize(entry, tag);
    if (!text.empty()) {
        entry->format = EXIF_FORMAT_ASCII;
        entry->components = text.size() + 1;
        entry->size = static_cast<unsigned>(text.size() + 1);
        std::free(entry->data);
        entry->data = static_cast<unsigned char*>(std::calloc(1, entry->size)); // libexif frees it so
        std::memcpy(entry->data, text.data(), text.size());
    }
    exif_entry_unref(entry);
}

} // namespace

class TestPhotoExif : public QObject {
    Q_OBJECT

private slots:
    void onlyTheTimeIsLeft() {
        const auto demo = *readFile(AMBIT_ROOT "/demo-aircraft/helicopter/photos/fairing-left-1.jpg");
        const std::string camera = test::asCamera(demo, {});
        const auto before = entriesOf(dataOf(camera).get());
        QVERIFY(before.count("Artist") != 0 &&
                before.count("Manufacturer") + before.count("Make") != 0); // it can see them
        const auto photo = photo::readJpeg(camera);
        QVERIFY(photo);
        const Data data = dataOf(photo->stripped(false));
        QVERIFY(data);
        QCOMPARE(entriesOf(data.get()),
                 (std::map<std::string, std::string>{{"DateTimeOriginal", "2026:06:20 07:30:00"},
                                                     {"ExifVersion", "Exif Version 2.31"},
                                                     {"OffsetTimeOriginal", "+02:00"}}));
        QVERIFY(data->data == nullptr); // a thumbnail
        QVERIFY(exif_data_get_mnote_data(data.get()) == nullptr);
    }

    void whatOthersWriteIsRead() {
        for (const auto order : {EXIF_BYTE_ORDER_MOTOROLA, EXIF_BYTE_ORDER_INTEL}) {
            const Data data(exif_data_new());
            exif_data_set_byte_order(data.get(), order);
            add(data.get(), EXIF_IFD_0, EXIF_TAG_MAKE, "Nobody");
            add(data.get(), EXIF_IFD_0, EXIF_TAG_ORIENTATION, {});
            exif_set_short(exif_content_get_entry(data->ifd[EXIF_IFD_0], EXIF_TAG_ORIENTATION)->data, order,
                           7);
            add(data.get(), EXIF_IFD_EXIF, EXIF_TAG_DATE_TIME_ORIGINAL, "2026:01:31 23:59:58");
            add(data.get(), EXIF_IFD_EXIF, EXIF_TAG_OFFSET_TIME_ORIGINAL, "-09:30");
            unsigned char* bytes = nullptr;
            unsigned size = 0;
            exif_data_save_data(data.get(), &bytes, &size);
            const std::string block(reinterpret_cast<const char*>(bytes), size);
            std::free(bytes);
            QVERIFY(block.size() > 6);
            QCOMPARE(photo::readExif(block.substr(6)), (photo::Exif{7, "2026:01:31 23:59:58", "-09:30"}));
        }
    }
};

QTEST_GUILESS_MAIN(TestPhotoExif)
#include "tst_photo_exif.moc"
