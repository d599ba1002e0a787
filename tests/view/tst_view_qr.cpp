// QR codes (ISO/IEC 18004): what one library draws, another one reads, also where the picture has suffered.
#include "model/qr.hpp"

#include "watch/invitation.hpp"

#include <QPainter>
#include <QRandomGenerator>
#include <QtTest>

namespace ambit::test {

class TestViewQr : public QObject {
    Q_OBJECT

    QRandomGenerator random{20260620};

    std::string letters(const char* of, int count) {
        const std::string alphabet = of;
        std::string text;
        for (int i = 0; i < count; ++i)
            text += alphabet[random.bounded(static_cast<quint32>(alphabet.size()))];
        return text;
    }
    std::uint8_t byte() { return static_cast<std::uint8_t>(random.bounded(256)); }
    watch::Address address(bool four) {
        if (four) return watch::Address::v4({192, 168, byte(), byte()});
        std::array<std::uint8_t, 16> bytes{0xfd};
        for (std::size_t i = 1; i < bytes.size(); ++i)
            bytes[i] = byte();
        return watch::Address::v6(bytes);
    }
    /// `addresses`: 1 to 8; all but the first may be of either kind.
    QString invitation(int addresses, bool firstFour = true) {
        watch::Invitation one;
        for (int i = 0; i < addresses; ++i)
            one.addresses.push_back(address(i == 0 ? firstFour : random.bounded(2) == 0));
        one.port = static_cast<std::uint16_t>(1 + random.bounded(65535));
        one.fingerprint = letters("0123456789abcdef", 64);
        one.word = letters("0123456789ABCDEFGHJKMNPQRSTVWXYZ", 8);
        return QString::fromStdString(watch::qrText(one).value());
    }

    // --- what happens to pictures
    // ---------------------------------------------------------------------------
    static QImage onPaper(const QImage& picture, QColor paper = Qt::white) {
        QImage all(picture.size(), QImage::Format_RGB32);
        all.fill(paper);
        QPainter(&all).drawImage(0, 0, picture);
        return all;
    }
    static QImage larger(const QImage& picture, double times) {
        return onPaper(picture).scaled(picture.size() * times, Qt::IgnoreAspectRatio,
                                       Qt::SmoothTransformation);
    }
    static QImage turned(const QImage& picture, const QTransform& by) {
        return onPaper(
            picture.convertToFormat(QImage::Format_ARGB32).transformed(by, Qt::SmoothTransformation));
    }
    static QImage blurred(const QImage& picture, int radius) {
        const QImage small =
            picture.scaled(picture.size() / radius, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        return small.scaled(picture.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    }
    QImage noisy(QImage picture, int most) {
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x) {
                const int grey = qGray(picture.pixel(x, y)) + random.bounded(-most, most + 1);
                const int kept = std::clamp(grey, 0, 255);
                picture.setPixel(x, y, qRgb(kept, kept, kept));
            }
        return picture;
    }
    static QImage seenFromTheSide(const QImage& picture) {
        const double w = picture.width(), h = picture.height();
        QTransform away;
        if (!QTransform::quadToQuad(QPolygonF({{0, 0}, {w, 0}, {w, h}, {0, h}}),
                                    QPolygonF({{0.10 * w, 0.06 * h}, {0.92 * w, 0}, {w, h}, {0, 0.90 * h}}),
                                    away))
            qFatal("no such view");
        return turned(picture, away);
    }
    static QImage covered(QImage picture, QRectF part) {
        QPainter(&picture).fillRect(QRectF(part.x() * picture.width(), part.y() * picture.height(),
                                           part.width() * picture.width(), part.height() * picture.height()),
                                    Qt::white);
        return picture;
    }

private slots:
    void allInvitations_data() {
        QTest::addColumn<int>("addresses");
        QTest::addColumn<bool>("firstFour");
        for (int n = 1; n <= static_cast<int>(watch::mostAddresses); ++n)
            for (const bool four : {true, false})
                QTest::addRow("%d addresses, %s first", n, four ? "IPv4" : "IPv6") << n << four;
    }
    void allInvitations() {
        QFETCH(int, addresses);
        QFETCH(bool, firstFour);
        for (int i = 0; i < 5; ++i) {
            const QString text = invitation(addresses, firstFour);
            const QImage picture = view::qrPicture(text);
            QCOMPARE(view::readQr(larger(picture, 4)), text);
            for (const double times : {3.0, 3.7, 5.0, 7.3})
                QCOMPARE(view::readQr(larger(picture, times)), text);
            const QImage large = larger(picture, 6);
            for (const int degrees : {90, 180, 270, 7, -7})
                QCOMPARE(view::readQr(turned(large, QTransform().rotate(degrees))), text);
            QCOMPARE(view::readQr(seenFromTheSide(large)), text);
            QCOMPARE(view::readQr(noisy(blurred(large, 3), 16)), text);
        }
    }

    /// One pixel a module, four modules of quiet zone, black on nothing.
    void thePicture() {
        const QImage picture = view::qrPicture(QStringLiteral("AMBIT"));
        QCOMPARE(picture.size(), QSize(21 + 8, 21 + 8)); // version 1
        for (int i = 0; i < picture.width(); ++i)
            for (int edge = 0; edge < 4; ++edge) {
                QCOMPARE(picture.pixelColor(i, edge).alpha(), 0);
                QCOMPARE(picture.pixelColor(edge, i).alpha(), 0);
                QCOMPARE(picture.pixelColor(i, picture.height() - 1 - edge).alpha(), 0);
                QCOMPARE(picture.pixelColor(picture.width() - 1 - edge, i).alpha(), 0);
            }
        int dark = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x) {
                const QColor colour = picture.pixelColor(x, y);
                QVERIFY(colour.alpha() == 0 || colour == QColor(Qt::black));
                dark += colour.alpha() == 0 ? 0 : 1;
            }
        QVERIFY(dark > 21 * 21 / 3);
        QCOMPARE(picture.pixelColor(4, 4), QColor(Qt::black)); // the corner of a finder
    }

    /// By night it stands black on the ink's brown.
    void onADarkGround() {
        const QString text = invitation(2);
        const QImage night = onPaper(view::qrPicture(text), QColor(0xa8, 0x91, 0x6f));
        QCOMPARE(view::readQr(night.scaled(night.size() * 5)), text);
    }

    void alphanumericIsSmall() {
        // ISO/IEC 18004, table 7: version 6 at level M holds 154 alphanumeric letters, and 106 bytes.
        const QString text = QStringLiteral("A").repeated(154);
        QCOMPARE(view::qrPicture(text).width(), 41 + 8);
        QVERIFY(view::qrPicture(text.toLower()).width() > 41 + 8);
    }

    void someDamageIsRepaired() {
        const QString text = invitation(1);
        const QImage picture = larger(view::qrPicture(text), 6);
        QCOMPARE(view::readQr(covered(picture, {0.45, 0.45, 0.14, 0.14})), text);
    }
    void muchDamageIsNot() {
        const QImage picture = larger(view::qrPicture(invitation(1)), 6);
        QCOMPARE(view::readQr(covered(picture, {0.3, 0.3, 0.45, 0.45})), QString());
        QCOMPARE(view::readQr(covered(picture, {0, 0, 0.35, 0.35})), QString()); // a finder is gone
    }
    void nothingIsThere() {
        QCOMPARE(view::readQr(QImage()), QString());
        QImage blank(200, 200, QImage::Format_RGB32);
        blank.fill(Qt::white);
        QCOMPARE(view::readQr(blank), QString());
        QCOMPARE(view::readQr(noisy(blank, 255)), QString());
    }
    void tooMuchText() { QVERIFY(view::qrPicture(QStringLiteral("a").repeated(3000)).isNull()); }
};

} // namespace ambit::test

QTEST_GUILESS_MAIN(ambit::test::TestViewQr)
#include "tst_view_qr.moc"
