@echo off
rem Starts Workup Tally with settings for short runs and the archive of loaded classes, where there is one.
rem WORKUP_TALLY_JAVA_OPTS adds options, for example -Xmx4g for a very large book.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto "-XX:SharedArchiveFile=%~dp0workup-tally.jsa" %WORKUP_TALLY_JAVA_OPTS% -jar "%~dp0workup-tally.jar" %*
exit /b %ERRORLEVEL%
