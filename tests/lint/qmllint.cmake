# Lints one file: -DQMLLINT=… -DARGUMENTS=…;… -DFILE=…. qmllint 6.4 crashes now and then, the more so the more files it
# is given; a crash says nothing about the file, so it is asked again.
foreach(try RANGE 5)
    execute_process(COMMAND ${QMLLINT} ${ARGUMENTS} ${FILE} RESULT_VARIABLE result)
    if(result STREQUAL "0")
        return()
    elseif(result MATCHES "^[0-9]+$") # else the signal's name
        message(FATAL_ERROR "qmllint found something in ${FILE}")
    endif()
endforeach()
message(FATAL_ERROR "qmllint crashed again and again on ${FILE}: ${result}")
