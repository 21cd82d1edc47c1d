@echo off
java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xlog:disable --enable-native-access=ALL-UNNAMED -Dfile.encoding=UTF-8 -cp "%~dp0..\lib\*" neutralpoint.cli.Main %*
