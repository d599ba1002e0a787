// The watcher's place: who is followed, the one that needs attention first; and a record walked again.
#pragma once

#include "model/services.hpp"
#include "model/signing_view.hpp"
#include "model/student.hpp"

#include <memory>
#include <vector>

namespace ambit::view {

/// The one that needs attention first.
class StudentsModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("WatchView makes it")
public:
    /// student (Student)
    enum Role { StudentRole = Qt::UserRole };
    using RowsModel::RowsModel;
    void update(const std::vector<Student*>& next);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        Student* student = nullptr;
        [[nodiscard]] Student* key() const { return student; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

class WatchView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// There is a network to watch over.
    Q_PROPERTY(bool possible READ possible CONSTANT)
    Q_PROPERTY(bool open READ open NOTIFY openChanged)
    /// Who watches, as signed: "Kim Example, instructor".
    Q_PROPERTY(QString me READ me NOTIFY openChanged)
    Q_PROPERTY(ambit::view::StudentsModel* students READ students CONSTANT)
    /// {id, name, fingerprint, followed (bool)}: who can be followed without a code.
    Q_PROPERTY(QVariantList known READ known NOTIFY knownChanged)
    /// A record's round, to be walked again; null if none is chosen.
    Q_PROPERTY(ambit::view::FollowedRound* replay READ replay NOTIFY replayChanged)
public:
    /// Holds what it is given as long as it lives.
    WatchView(const Services& services, SigningView& signing, Report report, QObject* parent);
    ~WatchView() override;

    /// Opens the network with this person's key; those who are known are followed at once. What is said later
    /// is signed with it. `signature`: {role, certificate, passphrase, key}.
    Q_INVOKABLE bool start(const QVariantMap& signature);
    /// Follows nobody any more, and forgets the key.
    Q_INVOKABLE void stop();
    /// By the code that a walker's device shows, as typed or as scanned.
    Q_INVOKABLE bool join(const QString& code);
    /// The text of the code in a picture: an image, or a file's URL; "" if there is none.
    Q_INVOKABLE [[nodiscard]] QString codeIn(const QVariant& picture) const;
    Q_INVOKABLE bool joinKnown(const QString& id);
    Q_INVOKABLE void leave(int number);
    /// Is left, and no longer joined without a code.
    Q_INVOKABLE void forget(const QString& id);
    /// null: they were left.
    Q_INVOKABLE [[nodiscard]] ambit::view::Student* student(int number) const;
    /// `kind`: "lookAgain" (of a point), "question", "remark". True: it is on its way, signed.
    Q_INVOKABLE bool say(int number, const QString& kind, const QString& point, const QString& words);
    /// Fills `replay`; false and a problem told if that record holds no round.
    Q_INVOKABLE bool showReplay(const QString& recordId);
    Q_INVOKABLE void endReplay();

    /// A record was signed under here: whoever walked it gets the signature.
    void countersigned(const QString& recordId);

    [[nodiscard]] bool possible() const { return static_cast<bool>(services->linkToWalkers); }
    [[nodiscard]] bool open() const { return link != nullptr; }
    [[nodiscard]] QString me() const;
    [[nodiscard]] StudentsModel* students() { return &rows; }
    [[nodiscard]] QVariantList known() const;
    [[nodiscard]] FollowedRound* replay() const { return again.get(); }

    void sayAnew(); ///< another language is spoken

signals:
    void openChanged();
    void knownChanged();
    void replayChanged();
    /// A record has come, or one more signature under it.
    void recordCame(const QString& recordId);

private:
    [[nodiscard]] Result<void> tryStart(const QVariantMap& signature);
    [[nodiscard]] Result<void> trySay(int number, const QString& kind, const QString& point,
                                      const QString& words);
    void listen();
    void follow(std::uint64_t number);
    [[nodiscard]] Student* find(std::uint64_t number) const;
    void readRound(Student& student, const std::string& roundId);
    [[nodiscard]] Result<std::unique_ptr<FollowedRound>> followedBy(std::vector<round::Event> events) const;
    void begin(Student& student, const std::string& roundId, Result<std::vector<round::Event>> events);
    void take(Student& student, const std::string& roundId, const std::vector<round::Event>& events);
    [[nodiscard]] Result<void> keep(Student& student, const watch::RecordHere& record);
    [[nodiscard]] Result<void> offerTo(Student& student);
    void sort();

    const Services* services;
    SigningView* signing;
    Report report;
    std::optional<record::Signer> signer;
    round::Person person;
    std::optional<archive::Archive> watched;
    std::unique_ptr<LinkToWalkers> link;
    std::vector<watch::Walker> walkers;
    std::vector<std::unique_ptr<Student>> followed; ///< in the order they came
    StudentsModel rows;
    std::unique_ptr<FollowedRound> again;
    QTimer ticker;
};

} // namespace ambit::view
