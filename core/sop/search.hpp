// Dynamic programming over what is done and where one is, layer by layer of tasks done, with what can't lead
// to a better walk left out by the relaxation's bound. Too wide a layer is cut to the most promising states
// (beam search with dominance: Libralesso, Bouhassoun, Cambazard and Jost, arXiv 1911.12427); where none was
// cut, the walk found is proven best.
#pragma once

#include "sop/part.hpp"
#include "sop/relax.hpp"

#include <optional>

namespace ambit::sop {

struct Limits {
    std::size_t width = 0; ///< states kept in a layer
    Cost better = never;   ///< only walks that cost no more than this are looked for
    /// Of those that cost exactly `better`, only with fewer inversions than this; 0: none.
    std::int64_t fewer = 0;
    /// Costs of an inversion, in parts: for the walk nearest the customary order that isn't too dear.
    Cost perInversion = 0;
    std::size_t mostStates = 20'000'000;
};

struct Found {
    std::optional<Walk> walk;
    Cost cost = never;
    std::int64_t inversions = 0;
    bool cut = false; ///< a layer was too wide, or it was stopped: nothing is proven
    /// No walk costs less than this or `better`, whatever was cut. Units.
    Cost bound = 0;
    std::uint64_t states = 0;
};

constexpr std::size_t mostRelaxations = 4;
constexpr std::size_t mostParts = 2;

/// What bounds the search from below; each may be missing.
struct Bounds {
    std::vector<const Relaxation*> relaxations; ///< at most mostRelaxations
    std::vector<const Part*> parts;             ///< at most mostParts
};

/// Nothing may be doable at the start itself.
[[nodiscard]] Found search(const Problem& problem, const Bounds& bounds, const Limits& limits, Work& work);

} // namespace ambit::sop
