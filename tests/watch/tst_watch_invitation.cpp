// Invitations: what is written is read back; every slip of a hand or eye is refused.
#include "watch/invitation.hpp"

#include "watch/letters.hpp"

#include <QTest>
#include <random>
#include <set>

using namespace ambit;
using namespace ambit::watch;

namespace {

using Random = std::mt19937_64;

std::uint8_t byteOf(Random& random) {
    return static_cast<std::uint8_t>(random());
}

/// Of each kind of network, and any.
Address someV4(Random& random) {
    switch (random() % 6) {
    case 0:
        return Address::v4({192, 168, byteOf(random), byteOf(random)});
    case 1:
        return Address::v4({10, byteOf(random), byteOf(random), byteOf(random)});
    case 2:
        return Address::v4(
            {172, static_cast<std::uint8_t>(16 + random() % 16), byteOf(random), byteOf(random)});
    case 3:
        return Address::v4({169, 254, byteOf(random), byteOf(random)});
    case 4:
        return Address::v4({127, 0, 0, 1});
    default:
        return Address::v4(
            {static_cast<std::uint8_t>(1 + random() % 223), byteOf(random), byteOf(random), byteOf(random)});
    }
}

Address someV6(Random& random) {
    std::array<std::uint8_t, 16> bytes{0xFD};
    for (std::size_t i = 1; i < bytes.size(); ++i)
        bytes[i] = byteOf(random);
    return Address::v6(bytes);
}

Invitation some(Random& random) {
    Invitation invitation;
    for (std::size_t count = 1 + random() % mostAddresses; count > 0; --count)
        invitation.addresses.push_back(random() % 3 == 0 ? someV6(random) : someV4(random));
    if (random() % 3 == 0) invitation.port = static_cast<std::uint16_t>(1 + random() % 65535);
    for (int i = 0; i < 64; ++i)
        invitation.fingerprint += "0123456789abcdef"[random() % 16];
    for (int i = 0; i < 8; ++i)
        invitation.word += letterOf(static_cast<unsigned>(random()));
    return invitation;
}

Invitation example(const std::string& address = "192.168.43.1", std::uint16_t port = usualPort) {
    return {{Address::v4From(address).value()},
            port,
            "00112233445566778899aabbccddeeff0123456789abcdef0123456789abcdef",
            "0123WXYZ"};
}

std::string lettersOf(const std::string& code) {
    std::string letters;
    for (const char c : code)
        if (c != '-') letters += c;
    return letters;
}

const std::string qrLetters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

} // namespace

class TestWatchInvitation : public QObject {
    Q_OBJECT

private slots:
    void qrThereAndBack() {
        Random random(1);
        for (int i = 0; i < 5000; ++i) {
            const Invitation invitation = some(random);
            const std::string text = qrText(invitation).value();
            QCOMPARE(text.find_first_not_of(qrLetters), std::string::npos);
            const auto read = readInvitation(text);
            QVERIFY2(read, text.c_str());
            QVERIFY(*read == invitation);
            QVERIFY(isAnnounced(*read, invitation.fingerprint));
        }
    }

    void qrAsDocumented() {
        // The fingerprint's letters, by WATCH.md: 5 bits a letter from the first bit on, by another way than
        // the code's.
        const Invitation invitation = example();
        std::string bits;
        for (const char digit : invitation.fingerprint)
            for (int bit = 3; bit >= 0; --bit)
                bits += (std::stoi(std::string(1, digit), nullptr, 16) >> bit & 1) != 0 ? '1' : '0';
        bits += "0000";
        std::string letters;
        for (std::size_t at = 0; at < bits.size(); at += 5)
            letters += "0123456789ABCDEFGHJKMNPQRSTVWXYZ"[std::stoul(bits.substr(at, 5), nullptr, 2)];
        QCOMPARE(qrText(invitation).value(), "AMBIT1/52810/192.168.43.1/" + letters + "/0123WXYZ");
        Invitation six = invitation;
        six.addresses.push_back(Address::v6({0xFD, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 0xEF}));
        QVERIFY(
            qrText(six).value().starts_with("AMBIT1/52810/192.168.43.1+FD000102030405060708090A0B0C0DEF/"));
    }

    void typedAsDocumented() {
        const std::string bits =
            "00"
            "000"
            "0"
            "0010101100000001" // 43.1
            "00000"
            "00001"
            "00010"
            "00011"
            "11100"
            "11101"
            "11110"
            "11111"                                                                 // the word
            "00000000000100010010001000110011010001000101010101100110011101111000"; // 68 of the fingerprint
        std::string letters;
        for (std::size_t at = 0; at < bits.size(); at += 5)
            letters += "0123456789ABCDEFGHJKMNPQRSTVWXYZ"[std::stoul(bits.substr(at, 5), nullptr, 2)];
        const std::string code = lettersOf(typedCode(example()).value());
        QCOMPARE(code.substr(0, 26), letters);
        // The checks: both sums are zero in the field. Times is by adding logarithms' powers, one by one.
        const auto times = [](unsigned a, unsigned b) {
            unsigned product = 0;
            for (unsigned bit = 0; bit < 5; ++bit)
                if ((b >> bit & 1U) != 0) product ^= a << bit;
            for (unsigned bit = 9; bit >= 5; --bit)
                if ((product >> bit & 1U) != 0) product ^= 0b100101U << (bit - 5);
            return product;
        };
        for (const unsigned root : {2U, times(2, 2)}) {
            unsigned sum = 0;
            for (const char letter : code)
                sum = times(sum, root) ^ valueOf(letter).value();
            QCOMPARE(sum, 0U);
        }
    }

    void typedThereAndBack() {
        Random random(2);
        std::set<std::size_t> lengths;
        std::set<std::size_t> hashes;
        for (int i = 0; i < 5000; ++i) {
            Invitation invitation = some(random);
            invitation.addresses = {someV4(random)};
            const std::string code = typedCode(invitation).value();
            const auto read = readInvitation(code);
            QVERIFY2(read, code.c_str());
            QVERIFY(read->addresses == invitation.addresses);
            QCOMPARE(read->port, invitation.port);
            QCOMPARE(read->word, invitation.word);
            QVERIFY(read->fingerprint.size() * 4 >= 60);
            QVERIFY(invitation.fingerprint.starts_with(read->fingerprint));
            QVERIFY(isAnnounced(*read, invitation.fingerprint));
            lengths.insert(lettersOf(code).size());
            hashes.insert(read->fingerprint.size() * 4);
            for (std::size_t at = 0; at < code.size(); ++at)
                QCOMPARE(code[at] == '-', at % 5 == 4);
        }
        QVERIFY((lengths == std::set<std::size_t>{28, 32, 36}));
        QVERIFY((hashes == std::set<std::size_t>{60, 64, 68, 72, 76}));
        QCOMPARE(lettersOf(typedCode(example("192.168.0.0")).value()).size(), std::size_t(28));
        QCOMPARE(lettersOf(typedCode(example("10.1.2.3")).value()).size(), std::size_t(28));
        QCOMPARE(lettersOf(typedCode(example("172.31.2.3")).value()).size(), std::size_t(28));
        QCOMPARE(lettersOf(typedCode(example("172.32.2.3")).value()).size(), std::size_t(32));
    }

    void handsAndEyesAreForgiven() {
        Random random(3);
        for (int i = 0; i < 2000; ++i) {
            Invitation invitation = some(random);
            invitation.addresses = {someV4(random)};
            const std::string code = typedCode(invitation).value();
            std::string typed;
            for (const char letter : code) {
                char c = letter;
                if (c == '1') c = "1IL"[random() % 3];
                if (c == '0') c = "0O"[random() % 2];
                if (c == 'V') c = "VU"[random() % 2];
                if (random() % 2 == 0 && c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
                if (c == '-') c = "- "[random() % 2];
                if (random() % 8 == 0) typed += ' ';
                if (c != ' ' || random() % 2 == 0) typed += c;
            }
            const auto read = readInvitation(typed + "\n");
            QVERIFY2(read, typed.c_str());
            QVERIFY(*read == readInvitation(code).value());
        }
    }

    void everyWrongLetterAndEverySwapIsRefused() {
        Random random(4);
        int tried = 0;
        for (int i = 0; i < 60; ++i) {
            Invitation invitation = some(random);
            invitation.addresses = {someV4(random)};
            const std::string code = lettersOf(typedCode(invitation).value());
            for (std::size_t at = 0; at < code.size(); ++at) {
                for (unsigned value = 0; value < 32; ++value) {
                    std::string wrong = code;
                    wrong[at] = letterOf(value);
                    if (wrong == code) continue;
                    const auto read = readInvitation(wrong);
                    QVERIFY2(!read, wrong.c_str());
                    QVERIFY(!read.error().remedy.empty());
                    ++tried;
                }
                if (at == 0 || code[at] == code[at - 1]) continue;
                std::string swapped = code;
                std::swap(swapped[at], swapped[at - 1]);
                QVERIFY2(!readInvitation(swapped), swapped.c_str());
                ++tried;
            }
        }
        QVERIFY(tried > 50000);
    }

    // What the check letters alone see, without the help of lengths and heads.
    void twoWrongLettersAreNoticed() {
        Random random(5);
        for (int i = 0; i < 200000; ++i) {
            std::string text;
            for (std::size_t n = 2 + random() % 28; n > 0; --n)
                text += letterOf(static_cast<unsigned>(random()));
            std::string word = text + checkLetters(text);
            const std::string right = word;
            word[random() % word.size()] = letterOf(static_cast<unsigned>(random()));
            word[random() % word.size()] = letterOf(static_cast<unsigned>(random()));
            const bool holds = checkLetters(word.substr(0, text.size())) == word.substr(text.size());
            QCOMPARE(holds, word == right);
        }
    }

    void oneLetterTooFewOrTooMany() {
        const std::string code = lettersOf(typedCode(example()).value());
        for (std::size_t at = 0; at < code.size(); ++at) {
            std::string fewer = code;
            fewer.erase(at, 1);
            QVERIFY(!readInvitation(fewer));
            std::string more = code;
            more.insert(at, 1, code[at]);
            QVERIFY(!readInvitation(more));
        }
        for (std::size_t length = 0; length < code.size(); ++length)
            QVERIFY(!readInvitation(code.substr(0, length)));
        QVERIFY(!readInvitation(code + code));
        QVERIFY(!readInvitation(std::string(1000000, '0')));
    }

    void otherTextIsRefused_data() {
        QTest::addColumn<QByteArray>("text");
        const std::string good = qrText(example()).value();
        const auto row = [&](const char* name, const char* from, const char* to) {
            std::string text = good;
            const std::size_t at = text.find(from);
            if (at == std::string::npos) qFatal("%s", from);
            QTest::addRow("%s", name) << QByteArray::fromStdString(text.replace(at, std::strlen(from), to));
        };
        row("small", "AMBIT1", "ambit1");
        row("another's", "AMBIT1/", "OTHER1/");
        row("no version", "AMBIT1/", "AMBIT/");
        row("odd version", "AMBIT1/", "AMBIT1A/");
        row("port 0", "52810", "0");
        row("large port", "52810", "65536");
        row("port's zero", "52810", "052810");
        row("port's sign", "52810", "+5281");
        row("no port", "52810", "");
        row("no address", "192.168.43.1", "");
        row("half address", "192.168.43.1", "192.168.43");
        row("five numbers", "192.168.43.1", "192.168.43.1.1");
        row("zero", "192.168.43.1", "192.168.043.1");
        row("256", "192.168.43.1", "192.168.256.1");
        row("name", "192.168.43.1", "EXAMPLE");
        row("nowhere", "192.168.43.1", "0.0.0.0");
        row("multicast", "192.168.43.1", "224.0.0.1");
        row("link-local", "192.168.43.1", "FE800000000000000000000000000001");
        row("nothing", "192.168.43.1", "00000000000000000000000000000000");
        row("small hex", "192.168.43.1", "fd000000000000000000000000000001");
        row("address twice joined", "192.168.43.1", "192.168.43.1++192.168.43.2");
        row("nine", "192.168.43.1",
            "1.1.1.1+1.1.1.1+1.1.1.1+1.1.1.1+1.1.1.1+1.1.1.1+1.1.1.1+1.1.1.1+1.1.1.1");
        row("word", "0123WXYZ", "0123WXY");
        row("word's letter", "0123WXYZ", "0123WXYO");
        row("more", "0123WXYZ", "0123WXYZ/");
        row("line", "0123WXYZ", "0123WXYZ\n");
        std::string last = good;
        last[good.size() - 10] = '1'; // a bit beyond the fingerprint's last
        QTest::addRow("unused bits") << QByteArray::fromStdString(last);
        for (std::size_t length = 0; length < good.size(); length += 3)
            QTest::addRow("first %d", int(length)) << QByteArray::fromStdString(good.substr(0, length));
        QTest::addRow("endless") << QByteArray::fromStdString(good + std::string(1000000, '/'));
        QTest::addRow("binary") << QByteArray("\0\xff\x01", 3);
    }
    void otherTextIsRefused() {
        QFETCH(QByteArray, text);
        const auto read = readInvitation(text.toStdString());
        QVERIFY(!read);
        QVERIFY(!read.error().what.empty());
    }

    void laterVersionsAreNamed() {
        std::string text = qrText(example()).value();
        text[5] = '2';
        QCOMPARE(readInvitation(text).error().code, ErrorCode::unsupported);
        // A typed code of version 1, with its checks right.
        std::string code = lettersOf(typedCode(example()).value()).substr(0, 26);
        code[0] = letterOf(valueOf(code[0]).value() | 8U);
        QCOMPARE(readInvitation(code + checkLetters(code)).error().code, ErrorCode::unsupported);
        code[0] = 'Z';
        code[1] = 'Z';
        QCOMPARE(readInvitation(code + checkLetters(code)).error().code, ErrorCode::unsupported);
    }

    void oneCodeForOneValue() {
        // 192.168.43.1 written as any address, and the usual port written out: right checks, refused.
        LetterWriter any;
        any.add(4, 5);
        any.add(0, 1);
        any.add(Address::v4({192, 168, 43, 1}).number(), 32);
        any.add(0x0123456789, 40);
        any.add(0, 60);
        any.add(0, 12);
        const std::string body = any.end();
        QCOMPARE(body.size(), std::size_t(30));
        QCOMPARE(readInvitation(body + checkLetters(body)).error().code, ErrorCode::invalid);
        LetterWriter port;
        port.add(0, 5);
        port.add(1, 1);
        port.add(43 * 256 + 1, 16);
        port.add(usualPort, 16);
        port.add(0x0123456789, 40);
        port.add(0, 60);
        port.add(0, 12);
        const std::string second = port.end();
        QCOMPARE(second.size(), std::size_t(30));
        QCOMPARE(readInvitation(second + checkLetters(second)).error().code, ErrorCode::invalid);
        // The same with another port is a good one.
        LetterWriter good;
        good.add(0, 5);
        good.add(1, 1);
        good.add(43 * 256 + 1, 16);
        good.add(usualPort + 1, 16);
        good.add(0x0123456789, 40);
        good.add(0, 60);
        good.add(0, 12);
        const std::string third = good.end();
        const auto read = readInvitation(third + checkLetters(third));
        QVERIFY(read);
        QCOMPARE(read->port, std::uint16_t(usualPort + 1));
    }

    void onlyTheAnnouncedCertificate() {
        const Invitation whole = example();
        const auto typed = readInvitation(typedCode(whole).value()).value();
        QCOMPARE(typed.fingerprint.size(), std::size_t(17));
        QVERIFY(isAnnounced(typed, whole.fingerprint));
        for (std::size_t i = 0; i < 64; ++i) {
            std::string other = whole.fingerprint;
            other[i] = other[i] == '0' ? '1' : '0';
            QVERIFY(!isAnnounced(whole, other));
            QCOMPARE(isAnnounced(typed, other), i >= 17);
        }
        QVERIFY(!isAnnounced(whole, ""));
        QVERIFY(!isAnnounced(whole, whole.fingerprint + "0"));
        QVERIFY(!isAnnounced(whole, whole.fingerprint.substr(0, 63)));
        Invitation weak = whole;
        weak.fingerprint.resize(14); // 56 bits are no announcement
        QVERIFY(!isAnnounced(weak, whole.fingerprint));
        weak.fingerprint.clear();
        QVERIFY(!isAnnounced(weak, whole.fingerprint));
    }

    void onlyWhatCanBeShown() {
        const auto refused = [](auto change) {
            Invitation invitation = example();
            change(invitation);
            return !qrText(invitation) && !typedCode(invitation);
        };
        QVERIFY(!refused([](Invitation&) {}));
        QVERIFY(refused([](Invitation& its) { its.addresses.clear(); }));
        QVERIFY(refused([](Invitation& its) { its.addresses.resize(9, its.addresses[0]); }));
        QVERIFY(refused([](Invitation& its) { its.addresses = {Address::v4({0, 0, 0, 0})}; }));
        QVERIFY(refused([](Invitation& its) { its.port = 0; }));
        QVERIFY(refused([](Invitation& its) { its.fingerprint.pop_back(); }));
        QVERIFY(refused([](Invitation& its) { its.fingerprint[0] = 'A'; }));
        QVERIFY(refused([](Invitation& its) { its.word = "0123wxyz"; }));
        QVERIFY(refused([](Invitation& its) { its.word.clear(); }));
        Invitation six = example();
        Random random(6);
        six.addresses = {someV6(random)};
        QVERIFY(qrText(six));
        QVERIFY(!typedCode(six));
        six.addresses.push_back(Address::v4({10, 0, 0, 1}));
        QVERIFY(typedCode(six)); // the one that can be typed
    }

    void addressesAsText() {
        for (const char* good : {"192.168.43.1", "0.0.0.0", "255.255.255.255", "10.0.0.10"})
            QCOMPARE(toText(Address::v4From(good).value()), std::string(good));
        for (const char* bad :
             {"", "1", "1.2.3", "1.2.3.4.", ".1.2.3", "1..2.3", "1.2.3.256", "1.2.3.-4", "1.2.3.4 ",
              " 1.2.3.4", "1.2.3.0x4", "1.2.3.04", "1,2,3,4", "1.2.3.+4", "1111.2.3.4"})
            QVERIFY2(!Address::v4From(bad), bad);
        QCOMPARE(toText(Address::v6({0xFD, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0xAB, 0xCD})),
                 std::string("fd00:0001:0000:0000:0000:0000:0000:abcd"));
    }
};

QTEST_APPLESS_MAIN(TestWatchInvitation)
#include "tst_watch_invitation.moc"
