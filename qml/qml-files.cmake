# The QML files of the module, from this folder.
set(AMBIT_QML_SINGLETONS)
set(AMBIT_QML_FILES Main.qml)
