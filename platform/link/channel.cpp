#include "link/channel.hpp"

#include "watch/frames.hpp"

namespace ambit::link {

namespace {

constexpr int closingMs = 3000; ///< for a last word to go out

} // namespace

Channel::Channel(std::unique_ptr<QWebSocket> its, QObject* parent) : QObject(parent), socket(std::move(its)) {
    socket->setMaxAllowedIncomingFrameSize(watch::largestFrame);
    socket->setMaxAllowedIncomingMessageSize(watch::largestFrame);
    connect(socket.get(), &QWebSocket::textMessageReceived, this, [this](const QString& text) {
        heard.start();
        if (!isClosing && !isGone) emit message(text.toStdString());
    });
    connect(socket.get(), &QWebSocket::binaryMessageReceived, this,
            [this] { end(QStringLiteral("It sent bytes, not text.")); });
    connect(socket.get(), &QWebSocket::pong, this, [this] { heard.start(); });
    connect(socket.get(), &QWebSocket::bytesWritten, this, [this] { pump(); });
    connect(socket.get(), &QWebSocket::disconnected, this, [this] { end(socket->closeReason()); });
    connect(socket.get(), QOverload<QAbstractSocket::SocketError>::of(&QWebSocket::error), this,
            [this] { end(socket->errorString()); });
    connect(&ping, &QTimer::timeout, this, [this] {
        if (heard.hasExpired(silentMs))
            end(QStringLiteral("Nothing was heard for %1 s.").arg(silentMs / 1000));
        else
            socket->ping();
    });
}

Channel::~Channel() {
    disconnect(socket.get(), nullptr, this, nullptr);
}

void Channel::feed(std::function<std::optional<std::string>()> from, std::function<bool()> over) {
    next = std::move(from);
    isOver = std::move(over);
}

void Channel::begin() {
    heard.start();
    ping.start(pingMs);
}

void Channel::pump() {
    if (isPumping || isGone || !next) return; // sending may tell of bytes written at once
    isPumping = true;
    bool hasSent = false;
    while (!isClosing && socket->bytesToWrite() < mostWaiting) {
        const auto text = next();
        if (!text) break;
        socket->sendTextMessage(QString::fromStdString(*text));
        hasSent = true;
    }
    if (hasSent)
        socket->flush(); // else it waits for the event loop twice: to be encrypted, and to be written
    isPumping = false;
    if (isClosing || !isOver()) return;
    isClosing = true;
    socket->close();
    QTimer::singleShot(closingMs, this, [this] { end({}); });
}

void Channel::abort() {
    end({});
}

void Channel::end(const QString& why) {
    if (isGone) return;
    isGone = true;
    ping.stop();
    // Not from within its own signal.
    QMetaObject::invokeMethod(
        this,
        [this, why] {
            socket->abort();
            emit gone(why);
        },
        Qt::QueuedConnection);
}

} // namespace ambit::link
