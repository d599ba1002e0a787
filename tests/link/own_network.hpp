// A network of this process's own (Linux network namespaces), with one card and nobody else on it.
#pragma once

enum class Card {
    plain,   ///< IP packets
    ethernet ///< frames; it can broadcast
};

/// A network namespace for this process; where that needs root and we aren't, a user namespace around it.
/// False: not allowed. Before there is a second thread.
[[nodiscard]] bool moveOut();

/// The only network card, /24: what goes out of it is read from the file given back; closed, the card is
/// gone. -1: not allowed.
[[nodiscard]] int newCard(const char* address, Card kind);

/// Of an Ethernet card's network: what is sent there goes out, whether anybody is there or not.
[[nodiscard]] bool knowNeighbour(const char* address);
