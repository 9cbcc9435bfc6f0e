@echo off
rem Starts Understorey. The first start stores the loaded classes in an archive beside the jar, later starts read it.
rem Java ignores an archive that does not fit the jar or the Java in use.
setlocal
set "lib=%~dp0..\lib"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
rem Only a preview runs so long that the second compiler pays.
set "tiers=1"
if "%~1"=="preview" set "tiers=4"
set "archive=-XX:ArchiveClassesAtExit=%lib%\classes.jsa"
if exist "%lib%\classes.jsa" set "archive=-XX:SharedArchiveFile=%lib%\classes.jsa"
"%java%" "%archive%" -Xshare:auto -XX:TieredStopAtLevel=%tiers% -XX:+UseSerialGC -Xlog:disable -Xlog:all=error:stderr -jar "%lib%\understorey.jar" %*
exit /b %ERRORLEVEL%
