@echo off
java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Dfile.encoding=UTF-8 -cp "%~dp0..\lib\*" neutralpoint.cli.Main %*
