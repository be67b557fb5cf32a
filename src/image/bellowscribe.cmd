@echo off
rem Starts Bellowscribe on Windows, as the script without an ending does elsewhere. Not tried on Windows by its makers.
setlocal
set "lib=%~dp0..\lib"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "cache=%LOCALAPPDATA%\bellowscribe"
set "flags=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xmn48m -XX:-UsePerfData -Xshare:auto -Xlog:disable -Xlog:all=error:stderr"
if exist "%cache%\bellowscribe.jsa" goto run
if not exist "%cache%" mkdir "%cache%"
"%java%" %flags% -XX:ArchiveClassesAtExit="%cache%\bellowscribe.jsa" %BELLOWSCRIBE_JAVA_OPTIONS% -cp "%lib%\bellowscribe.jar" org.bellowscribe.cli.Main %*
exit /b %errorlevel%
:run
"%java%" %flags% -XX:SharedArchiveFile="%cache%\bellowscribe.jsa" %BELLOWSCRIBE_JAVA_OPTIONS% -cp "%lib%\bellowscribe.jar" org.bellowscribe.cli.Main %*
exit /b %errorlevel%
