#include "model/links.hpp" // its meta-objects are compiled with this
