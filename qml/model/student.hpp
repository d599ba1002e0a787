// One who is followed: the connection, the round in hand there, what is said to them, and the record at the
// end.
#pragma once

#include "model/followed_round.hpp"
#include "model/links.hpp"
#include "watch/attention.hpp"

#include <map>

namespace ambit::view {

class Student : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("WatchView makes it")
    Q_PROPERTY(int number READ number CONSTANT)
    /// As on their certificate; "" until it is known.
    Q_PROPERTY(QString name READ name NOTIFY linkChanged)
    Q_PROPERTY(QString fingerprint READ fingerprint NOTIFY linkChanged)
    /// "connecting" "in" "lost" "over", and in words; "" in words while in.
    Q_PROPERTY(QString link READ link NOTIFY linkChanged)
    Q_PROPERTY(QString linkText READ linkText NOTIFY linkChanged)
    /// Who else watches: "Ines Example"; "" nobody.
    Q_PROPERTY(QString othersText READ othersText NOTIFY linkChanged)
    /// What is walked there; null until it is here.
    Q_PROPERTY(ambit::view::FollowedRound* round READ round NOTIFY roundChanged)
    /// "grounds" "toSign" "quick" "replied" "found" "stuck" "away" "paused" "nothing", and in words.
    Q_PROPERTY(QString need READ need NOTIFY needChanged)
    Q_PROPERTY(QString needText READ needText NOTIFY needChanged)
    /// Statements and signatures on their way, and what became of the last one; "" none.
    Q_PROPERTY(int underWay READ underWay NOTIFY saidChanged)
    Q_PROPERTY(QString saidText READ saidText NOTIFY saidChanged)
    /// The round's record, in the archive here; "" before.
    Q_PROPERTY(QString recordId READ recordId NOTIFY recordChanged)
    /// It has this person's signature: on this device, and on the other, too.
    Q_PROPERTY(bool signedHere READ signedHere NOTIFY recordChanged)
    Q_PROPERTY(bool signedThere READ signedThere NOTIFY recordChanged)
public:
    Student(std::uint64_t number, std::function<Instant()> now, QObject* parent);

    /// Everything of it is looked at, up to now.
    Q_INVOKABLE void look();

    [[nodiscard]] int number() const { return static_cast<int>(its); }
    [[nodiscard]] QString name() const { return QString::fromStdString(peer.name); }
    [[nodiscard]] QString fingerprint() const;
    [[nodiscard]] QString link() const;
    [[nodiscard]] QString linkText() const;
    [[nodiscard]] QString othersText() const { return others; }
    [[nodiscard]] FollowedRound* round() const { return walk.get(); }
    [[nodiscard]] QString need() const;
    [[nodiscard]] QString needText() const;
    [[nodiscard]] int underWay() const { return static_cast<int>(waiting.size()); }
    [[nodiscard]] QString saidText() const { return said; }
    [[nodiscard]] QString recordId() const { return QString::fromStdString(record); }
    [[nodiscard]] bool signedHere() const { return isSignedHere; }
    [[nodiscard]] bool signedThere() const { return isSignedThere; }

    // By WatchView.
    /// Is deleted once whatever shows it has let go of it.
    static void letGo(std::unique_ptr<Student> student);
    void setPeer(const watch::Peer& who);
    void setLink(watch::LinkState state, const Error& why);
    void setOthers(const QString& names);
    /// Takes it from the watched archive, as far as it is there; `awaited`: the round that it is.
    void setRound(const std::string& awaited, std::unique_ptr<FollowedRound> round);
    /// False: they don't follow on what is here, or there is no round here; read it anew.
    [[nodiscard]] bool add(const std::string& roundId, const std::vector<round::Event>& events);
    void sent(const std::string& id, const QString& what, bool isSignature);
    void heard(const std::string& id, const std::string& why);
    void setRecord(const std::string& sha256, bool hasMine);
    /// It has my signature here, and goes back.
    void setSignedHere();
    void judge(); ///< what needs attention

    [[nodiscard]] watch::Need needed() const { return attention.need; }
    [[nodiscard]] const watch::Peer& who() const { return peer; }
    [[nodiscard]] watch::LinkState linkState() const { return state; }
    [[nodiscard]] const std::string& awaitedRound() const { return awaits; }
    [[nodiscard]] const std::string& recordSha256() const { return record; }

signals:
    void linkChanged();
    void roundChanged();
    void needChanged();
    void saidChanged();
    void recordChanged();

private:
    struct Sent {
        QString what;
        bool isSignature = false;
    };

    std::uint64_t its;
    std::function<Instant()> now;
    watch::Peer peer;
    watch::LinkState state = watch::LinkState::connecting;
    Error stateWhy;
    QString others;
    std::string awaits;
    std::unique_ptr<FollowedRound> walk;
    std::int64_t lookedUpTo = 0;
    watch::Attention attention;
    std::map<std::string, Sent> waiting;
    QString said;
    std::string record;
    bool isSignedHere = false;
    bool isSignedThere = false;
};

} // namespace ambit::view
