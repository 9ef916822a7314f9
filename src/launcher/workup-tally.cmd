@echo off
rem Starts Workup Tally with settings for short runs and the archive of loaded classes, where there is one. A private runtime in the folder
rem "runtime" comes before JAVA_HOME, and that before the path.
rem WORKUP_TALLY_JAVA_OPTS adds options, for example -Xmx4g for a very large book.
rem Delayed expansion, where it is on, would take exclamation marks out of paths. JAVA_HOME may stand in quotes.
setlocal EnableExtensions DisableDelayedExpansion
set "JAVA=java.exe"
if defined JAVA_HOME set "JAVA=%JAVA_HOME:"=%\bin\java.exe"
if exist "%~dp0runtime\bin\java.exe" set "JAVA=%~dp0runtime\bin\java.exe"
rem An ahead-of-time cache is known to Java 25 and newer; an older one passes over it, and no Java says a word about one that is not its own.
set CACHE=-Xshare:auto "-XX:SharedArchiveFile=%~dp0workup-tally.jsa"
rem A cache is loaded whole at the start, so that check, which needs half of it, has its own.
set AOT=workup-tally.aot
if "%~1"=="check" if exist "%~dp0workup-tally-check.aot" set AOT=workup-tally-check.aot
if exist "%~dp0%AOT%" set CACHE=-XX:+IgnoreUnrecognizedVMOptions "-XX:AOTCache=%~dp0%AOT%" -Xlog:disable
rem Nothing after this line: the exit code of the program is that of the script, also for && and ||.
"%JAVA%" -XX:+UseSerialGC -XX:NewRatio=7 -XX:MetaspaceSize=64m -XX:TieredStopAtLevel=1 %CACHE% %WORKUP_TALLY_JAVA_OPTS% -jar "%~dp0workup-tally.jar" %*
