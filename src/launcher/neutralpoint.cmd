@echo off
rem Starts Neutral Point with the jars beside it, and with the quick-start archive if the build made one here.
setlocal
set quick=
if exist "%~dp0..\lib\quick-start.jsa" set quick=-XX:SharedArchiveFile="%~dp0..\lib\quick-start.jsa"
set more=
for %%a in (rules catalogue) do if "%~1"=="%%a" set more=;%~dp0..\lib\authoring\*
rem A long list is worth compiling well; a single call-out is over before that pays.
set quickly=-XX:TieredStopAtLevel=1
for %%a in (%*) do if "%%~a"=="-" set quickly=
for %%a in (%*) do if "%%~a"=="--stock" set quickly=
set java=java
if defined JAVA_HOME set java="%JAVA_HOME%\bin\java"
%java% %quickly% -XX:+UseSerialGC -Xshare:auto -Xlog:disable --enable-native-access=ALL-UNNAMED -Dfile.encoding=UTF-8 %quick% -cp "%~dp0..\lib\*%more%" neutralpoint.cli.Main %*
