@echo off
setlocal
if "%~1"=="rules" set more=;%~dp0..\lib\authoring\*
set quickly=-XX:TieredStopAtLevel=1
for %%a in (%*) do if "%%~a"=="-" set quickly=
for %%a in (%*) do if "%%~a"=="--stock" set quickly=
java %quickly% -XX:+UseSerialGC -Xlog:disable --enable-native-access=ALL-UNNAMED -Dfile.encoding=UTF-8 -cp "%~dp0..\lib\*%more%" neutralpoint.cli.Main %*
