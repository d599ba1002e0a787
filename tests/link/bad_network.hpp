// Two hosts of their own on this machine (Linux network namespaces), and between them a network that delays,
// loses, reorders and cuts: the packets go through here. Needs no root where user namespaces are allowed.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <sys/types.h>

/// How bad. Times in milliseconds.
struct Weather {
    int delay = 0;    ///< each way
    int jitter = 0;   ///< at most so much more, packet by packet: what makes them change places
    double loss = 0;  ///< of packets
    int cutEvery = 0; ///< on average; 0: never
    int cutLasts = 0;
};

class BadNetwork {
public:
    static constexpr std::array<const char*, 2> addresses{"10.77.0.1", "10.77.0.2"};

    /// Nothing where this machine doesn't let such hosts be made; `why` says so.
    static std::unique_ptr<BadNetwork> make(const Weather& weather, std::uint64_t seed, QString& why);
    ~BadNetwork();

    /// Starts a program on host 0 or 1; its output goes into the files. Gives its process.
    pid_t start(int host, const QString& program, const QStringList& arguments, const QString& out,
                const QString& err);

    struct Counts {
        std::int64_t carried = 0, lost = 0, reordered = 0, cuts = 0;
    };
    [[nodiscard]] Counts counts() const;

    BadNetwork(const BadNetwork&) = delete;
    BadNetwork& operator=(const BadNetwork&) = delete;

private:
    BadNetwork();
    struct Inside;
    std::unique_ptr<Inside> inside;
};
