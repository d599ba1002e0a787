// One WebSocket: messages in order, with a bound on what waits to go out and on how long the other may be
// silent.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <QWebSocket>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace ambit::link {

class Channel : public QObject {
    Q_OBJECT
public:
    static constexpr qint64 mostWaiting = qint64{256} * 1024; ///< bytes handed over and not gone out yet
    static constexpr int pingMs = 5000;
    static constexpr int silentMs = 15000; ///< nothing heard, no pong either: the connection is dead

    /// `socket` is connected, or will be.
    explicit Channel(std::unique_ptr<QWebSocket> socket, QObject* parent = nullptr);
    ~Channel() override;

    /// Sends what `next` gives until it gives nothing or there is no room; goes on by itself when there is
    /// room again. `isOver`: nothing more will come: closes once all has gone out.
    void feed(std::function<std::optional<std::string>()> next, std::function<bool()> isOver);
    /// There may be something again.
    void pump();
    void abort();
    /// Starts listening for silence.
    void begin();

    [[nodiscard]] QWebSocket& webSocket() { return *socket; }

signals:
    void message(const std::string& text);
    /// Once: whatever ended it.
    void gone(const QString& why);

private:
    void end(const QString& why);

    std::unique_ptr<QWebSocket> socket;
    std::function<std::optional<std::string>()> next;
    std::function<bool()> isOver;
    QTimer ping;
    QElapsedTimer heard;
    bool isPumping = false;
    bool isClosing = false;
    bool isGone = false;
};

} // namespace ambit::link
