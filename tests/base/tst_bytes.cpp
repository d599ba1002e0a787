#include "base/encoding.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"

#include <QtTest>
#include <filesystem>
#include <random>
#include <sys/stat.h>

using namespace ambit;
using namespace std::string_literals;

namespace {

QByteArray bytes(const std::string& text) {
    return QByteArray::fromStdString(text);
}

std::string whereOf(const auto& result) {
    return result ? "read" : result.error().where;
}

} // namespace

class BytesTest : public QObject {
    Q_OBJECT

private slots:
    void hashes();
    void base64_data();
    void base64();
    void base64OfAnyLength();
    void base64Refused_data();
    void base64Refused();
    void base64UrlHasOneTextForAValue();
    void filesRoundTrip();
    void filesRefused();
    void failedWriteKeepsTheOldFile();
};

// Hash, encoding.

/// FIPS 180-4 examples.
void BytesTest::hashes() {
    QCOMPARE(sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"s);
    QCOMPARE(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"s);
    QCOMPARE(sha256Hex(std::string(1'000'000, 'a')),
             "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"s);
}

/// RFC 4648, section 10, and the letters that differ.
void BytesTest::base64_data() {
    QTest::addColumn<QByteArray>("value");
    QTest::addColumn<QByteArray>("plain");
    QTest::addColumn<QByteArray>("url");
    const auto row = [](const char* value, const char* plain, const char* url) {
        QTest::newRow(plain) << QByteArray(value) << QByteArray(plain) << QByteArray(url);
    };
    row("", "", "");
    row("f", "Zg==", "Zg");
    row("fo", "Zm8=", "Zm8");
    row("foo", "Zm9v", "Zm9v");
    row("foob", "Zm9vYg==", "Zm9vYg");
    row("fooba", "Zm9vYmE=", "Zm9vYmE");
    row("foobar", "Zm9vYmFy", "Zm9vYmFy");
    row("\xFB\xFF\xFE", "+//+", "-__-");
}

void BytesTest::base64() {
    QFETCH(QByteArray, value);
    QFETCH(QByteArray, plain);
    QFETCH(QByteArray, url);
    QCOMPARE(bytes(toBase64(value.toStdString())), plain);
    QCOMPARE(bytes(toBase64Url(value.toStdString())), url);
    QCOMPARE(fromBase64(plain.toStdString()).value_or("refused"), value.toStdString());
    QCOMPARE(fromBase64Url(url.toStdString()).value_or("refused"), value.toStdString());
}

/// Against Qt's own; long ones are written by a path of their own.
void BytesTest::base64OfAnyLength() {
    QRandomGenerator random(7);
    for (int size = 0; size < 200; ++size) {
        QByteArray value(size, Qt::Uninitialized);
        for (char& byte : value)
            byte = static_cast<char>(random.generate());
        QCOMPARE(bytes(toBase64(value.toStdString())), value.toBase64());
        QCOMPARE(bytes(toBase64Url(value.toStdString())),
                 value.toBase64(QByteArray::Base64UrlEncoding | QByteArray::OmitTrailingEquals));
    }
}

void BytesTest::base64Refused_data() {
    QTest::addColumn<bool>("url");
    QTest::addColumn<QByteArray>("text");
    for (const char* bad : {"Zg", "Zg=", "Zg===", "Zh==", "Zm9=", "Zm8", "Zm8==", "=", "====", "Z===",
                            "Zg==Zg==", "Zm9v\n", " Zm9v", "Zm 9v", "-__-", "Zm9vZ", "Z=g=", "Zm9\xC3"}) {
        QTest::newRow(bad) << false << QByteArray(bad);
    }
    for (const char* bad :
         {"Z", "Zh", "Zm9", "Zg==", "Zm8=", "+//+", "Zm9vZ", "Zm 9v", "Zm9v\n", "Zm9v.", "Zm9\xC3"})
        QTest::newRow(bad) << true << QByteArray(bad);
}

void BytesTest::base64Refused() {
    QFETCH(bool, url);
    QFETCH(QByteArray, text);
    QVERIFY(!(url ? fromBase64Url(text.toStdString()) : fromBase64(text.toStdString())));
}

void BytesTest::base64UrlHasOneTextForAValue() {
    static constexpr std::string_view letters =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    int taken = 0;
    for (const char a : letters) {
        for (const char b : letters) {
            const std::string text{a, b};
            const auto value = fromBase64Url(text);
            if (!value) continue;
            ++taken;
            QCOMPARE(toBase64Url(*value), text);
        }
    }
    QCOMPARE(taken, 256);
    QVERIFY(!fromBase64Url(std::string("Zm\0v", 4)));
}

// Files.

void BytesTest::filesRoundTrip() {
    const QTemporaryDir folder;
    const std::filesystem::path path = folder.filePath("round é.json").toStdString();
    std::string all;
    for (int byte = 0; byte < 256; ++byte)
        all += static_cast<char>(byte);
    for (const std::string& content : {all, std::string(), std::string(3'000'000, 'x')}) {
        QVERIFY(writeFile(path, content));
        QCOMPARE(readFile(path).value_or("unreadable"), content);
    }
    struct stat status {};
    QVERIFY(writeFile(path, "key", true) && ::stat(path.c_str(), &status) == 0);
    QCOMPARE(status.st_mode & 0777U, 0600U);
    QCOMPARE(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1); // nothing left beside
    QVERIFY(writeFile(path, "123") && readFile(path, 3) && !readFile(path, 2));
}

void BytesTest::filesRefused() {
    const QTemporaryDir folder;
    const auto path = [&](const char* name) {
        return std::filesystem::path(folder.filePath(name).toStdString());
    };
    const auto missing = readFile(path("none"));
    QVERIFY(!missing && missing.error().code == ErrorCode::storage && !missing.error().remedy.empty() &&
            missing.error().where == path("none").string());
    const auto isFolder = readFile(folder.path().toStdString());
    QVERIFY(!isFolder && isFolder.error().code == ErrorCode::storage);
    QVERIFY(::mkfifo(path("pipe").c_str(), 0600) == 0);
    QVERIFY(!readFile(path("pipe"))); // and doesn't wait for a writer
    QVERIFY(!readFile("/dev/zero"));
    const auto nowhere = writeFile(path("no/such/file"), "x");
    QVERIFY(!nowhere && nowhere.error().where == path("no/such/file").string());
}

void BytesTest::failedWriteKeepsTheOldFile() {
    const QTemporaryDir folder;
    const std::filesystem::path path = folder.filePath("taken").toStdString();
    std::filesystem::create_directories(path / "inside"); // can't be replaced by a file
    QVERIFY(!writeFile(path, "x"));
    QVERIFY(std::filesystem::is_directory(path / "inside"));
    QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot).size(), 1);
}

QTEST_APPLESS_MAIN(BytesTest)

#include "tst_bytes.moc"
