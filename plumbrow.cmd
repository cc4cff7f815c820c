@echo off
rem Plumbrow: builds itself on first use, then runs.  Try: plumbrow demo
rem After its sources have changed:  set PLUMBROW_REBUILD=1
setlocal
set "HERE=%~dp0"
set "DESK=%HERE%app\target\desk"
set "JAR=%DESK%\plumbrow-all.jar"

if defined JAVA_HOME (set "JAVA=%JAVA_HOME%\bin\java.exe") else (set "JAVA=java.exe")
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo Plumbrow needs a Java development kit, version 17 or newer. 1>&2
  echo   Install one and set JAVA_HOME to its folder. 1>&2
  exit /b 2
)
if exist "%JAR%" if not defined PLUMBROW_REBUILD goto run

where mvn >nul 2>&1
if errorlevel 1 (
  echo Plumbrow is built by Maven, version 3.8 or newer: put its bin folder on the PATH. 1>&2
  exit /b 2
)
echo Building Plumbrow; the first time takes some minutes... 1>&2
pushd "%HERE%"
call mvn -q -B -Dmaven.test.skip=true -Dspotless.check.skip=true -pl app -am package 1>&2
if errorlevel 1 (popd & exit /b 2)
popd
if exist "%DESK%" rmdir /s /q "%DESK%"
"%JAVA%" -Djarmode=tools -jar "%HERE%app\target\plumbrow-all.jar" extract --destination "%DESK%" >nul
if errorlevel 1 exit /b 2
rem Classes kept ready for the next start. Without the archive everything runs, only slower.
if exist "%TEMP%\plumbrow-warm.book" del "%TEMP%\plumbrow-warm.book"
"%JAVA%" -XX:ArchiveClassesAtExit="%DESK%\plumbrow.jsa" -Dplumbrow.warm=true -jar "%JAR%" serve --book "%TEMP%\plumbrow-warm.book" --port 0 >nul 2>&1
if exist "%TEMP%\plumbrow-warm.book" del "%TEMP%\plumbrow-warm.book"

:run
set "SHARE="
if exist "%DESK%\plumbrow.jsa" set SHARE=-XX:SharedArchiveFile="%DESK%\plumbrow.jsa" -Xshare:auto
"%JAVA%" %SHARE% -Xlog:disable -Xlog:all=error:stderr -Xmx2g %PLUMBROW_JAVA_OPTIONS% -jar "%JAR%" %*
exit /b %errorlevel%
