#include "airframe/airframe.hpp"
