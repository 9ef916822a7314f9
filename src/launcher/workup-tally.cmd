@echo off
rem Starts Workup Tally with settings for short runs and the archive of loaded classes, where there is one.
rem WORKUP_TALLY_JAVA_OPTS adds options, for example -Xmx4g for a very large book.
rem Delayed expansion, where it is on, would take exclamation marks out of paths. JAVA_HOME may stand in quotes.
setlocal EnableExtensions DisableDelayedExpansion
set "JAVA=java.exe"
if defined JAVA_HOME set "JAVA=%JAVA_HOME:"=%\bin\java.exe"
rem Nothing after this line: the exit code of the program is that of the script, also for && and ||.
"%JAVA%" -XX:+UseSerialGC -XX:NewRatio=4 -XX:TieredStopAtLevel=1 -Xshare:auto "-XX:SharedArchiveFile=%~dp0workup-tally.jsa" %WORKUP_TALLY_JAVA_OPTS% -jar "%~dp0workup-tally.jar" %*
