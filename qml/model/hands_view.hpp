// The round in hand where the stand leaves one hand for it, or none: what a key answers, what is told before
// the climb and asked for after it, and what is read aloud.
#pragma once

#include "model/habits.hpp"
#include "model/round_view.hpp"

namespace ambit::view {

class HandsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// How the card is answered now. "touch": as always. "key": one hand is free, one key answers. "read": no
    /// hand will be free, the portion is told; climb() when it is known. "up": it is being looked at, nothing
    /// can be touched; down() when down again.
    Q_PROPERTY(QString mode READ mode NOTIFY changed)
    /// read, up: {name, how, sound, setting}; in the order told.
    Q_PROPERTY(QVariantList portion READ portion NOTIFY changed)
    /// read: what follows up there after this portion.
    Q_PROPERTY(int pointsAfter READ pointsAfter NOTIFY changed)
    /// Of a portion that was looked at, how many are still to be asked for; the card is one of them.
    Q_PROPERTY(int asking READ asking NOTIFY changed)
    /// The card leads to a stand that leaves no hand: its points are told at the foot of it.
    Q_PROPERTY(bool toTheFoot READ toTheFoot NOTIFY changed)
    /// Findings of this round told by key, that are still to be put into words: {id, name}; putIntoWords().
    Q_PROPERTY(QVariantList unworded READ unworded NOTIFY changed)
    /// Why nothing is heard; "" if there is a voice, or none was needed yet.
    Q_PROPERTY(QString voiceText READ voiceText NOTIFY voiceChanged)
public:
    /// All must outlive it.
    HandsView(const Services& services, Habits& habits, QObject* parent);

    /// The round in hand; nullptr: none.
    void setRound(RoundView* round);

    // A key's answers, as the mode has it.
    /// key: sound, done, I am there. read: up I go. up: told again.
    Q_INVOKABLE bool answerOnce();
    /// key: a finding, in words later. up: down again.
    Q_INVOKABLE bool answerLong();
    /// What the card says, once more.
    Q_INVOKABLE void sayAgain();
    Q_INVOKABLE void hush(); ///< at once

    Q_INVOKABLE bool climb();
    Q_INVOKABLE bool down();
    /// Down again without having looked at all of it: it is told again.
    Q_INVOKABLE bool giveUp();
    /// At this stand the screen is touched after all; until one leaves it, or the program ends.
    Q_INVOKABLE void touchInstead();
    /// Where one still stands there the finding is settled anew with these words; elsewhere they are noted.
    Q_INVOKABLE bool putIntoWords(const QString& pointId, const QString& words);

    [[nodiscard]] QString mode() const;
    [[nodiscard]] QVariantList portion() const;
    [[nodiscard]] int pointsAfter() const;
    [[nodiscard]] int asking() const;
    [[nodiscard]] bool toTheFoot() const;
    [[nodiscard]] QVariantList unworded() const;
    [[nodiscard]] QString voiceText() const { return voiceWords; }
    /// What is read aloud for the card as it is; "" if nothing.
    [[nodiscard]] QString words() const;

signals:
    void changed();
    void voiceChanged();

private:
    enum class Mode { touch, key, read, up };
    [[nodiscard]] Mode now() const;
    [[nodiscard]] std::vector<std::string> told() const; ///< points of the portion
    [[nodiscard]] const round::State& state() const { return round->openRound().state(); }
    [[nodiscard]] const airframe::Airframe& airframe() const { return round->shown(); }
    [[nodiscard]] QString cardWords() const;
    void follow(); ///< the card may be another one
    void say(const QString& what);

    const Services* services;
    Habits* habits;
    RoundView* round = nullptr;
    std::int64_t touchSeq = -1; ///< of the arrival at the stand where the screen is touched after all
    QString lastWords;
    std::int64_t cautionSeq = -1; ///< of the arrival at the stand whose cautions were said
    QString voiceWords;
    bool hasSaid = false; ///< and it may still be heard
};

} // namespace ambit::view
