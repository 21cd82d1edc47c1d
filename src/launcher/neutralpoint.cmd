@echo off
setlocal
if "%~1"=="rules" set more=;%~dp0..\lib\authoring\*
java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xlog:disable --enable-native-access=ALL-UNNAMED -Dfile.encoding=UTF-8 -cp "%~dp0..\lib\*%more%" neutralpoint.cli.Main %*
