// The file of one aircraft: its records, one of them opened, and their way out.
#pragma once

#include "model/record_view.hpp"
#include "model/records_model.hpp"
#include "model/services.hpp"

namespace ambit::view {

class FileView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// Whose file it is; setting it reads the file. "" at first; that of the aircraft whose round begins or
    /// goes on.
    Q_PROPERTY(QString registration READ registration WRITE setRegistration NOTIFY registrationChanged)
    /// The newest first; as many as were asked for (showMore).
    Q_PROPERTY(ambit::view::RecordsModel* records READ records CONSTANT)
    /// The last five rounds.
    Q_PROPERTY(ambit::view::RecordsModel* lastRounds READ lastRounds CONSTANT)
    /// All there are.
    Q_PROPERTY(int recordCount READ recordCount NOTIFY recordCountChanged)
    /// The opened record; null if none.
    Q_PROPERTY(ambit::view::RecordView* record READ record NOTIFY recordChanged)
public:
    FileView(const Services& services, Report report, QObject* parent);

    /// Reads and verifies a record; then `record` is it. A record that does not verify is still shown, and
    /// says so.
    Q_INVOKABLE bool open(const QString& recordId);
    Q_INVOKABLE void close();
    /// Another fifty records in the list.
    Q_INVOKABLE void showMore();
    /// Writes record.json, record.pdf and photos/ into the folder. The paths written; empty on failure
    /// (App.problem).
    Q_INVOKABLE QStringList exportRecord(const QString& recordId, const QUrl& folder);
    void refresh();

    [[nodiscard]] QString registration() const { return shown; }
    void setRegistration(const QString& registration);
    [[nodiscard]] RecordsModel* records() { return &rows; }
    [[nodiscard]] RecordsModel* lastRounds() { return &roundRows; }
    [[nodiscard]] int recordCount() const { return static_cast<int>(all.size()); }
    [[nodiscard]] RecordView* record() const { return opened; }

signals:
    void registrationChanged();
    void recordChanged();
    void recordCountChanged();

private:
    [[nodiscard]] Result<RecordView*> read(const std::string& recordId);

    const Services* services;
    Report report;
    QString shown;
    std::vector<archive::RecordInfo> all; ///< newest first
    std::size_t wanted = 0;               ///< shown at most
    RecordsModel rows, roundRows;
    RecordView* opened = nullptr;
};

} // namespace ambit::view
