# Lints one file: -DQMLLINT=… -DARGUMENTS=…;… -DFILE=…. qmllint 6.4 reads a register nobody has written yet (the first
# call of a function, before anything was computed), so it crashed or not by what the memory held before. Memory handed
# out as zeros reads as "nothing there", on every machine.
set(ENV{GLIBC_TUNABLES} glibc.malloc.tcache_count=0:glibc.malloc.perturb=255)
execute_process(COMMAND ${QMLLINT} ${ARGUMENTS} ${FILE} RESULT_VARIABLE result)
if(result MATCHES "^[0-9]+$" AND NOT result STREQUAL "0")
    message(FATAL_ERROR "qmllint found something in ${FILE}")
elseif(NOT result STREQUAL "0") # the signal's name
    message(FATAL_ERROR "qmllint crashed on ${FILE}: ${result}")
endif()
