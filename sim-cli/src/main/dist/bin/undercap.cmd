@echo off
rem Starts Undercap. Needs Java 17 or later, unless Java came along in the folder java.
setlocal
set "HOME_FOLDER=%~dp0.."
set "JAR=%HOME_FOLDER%\undercap.jar"

set "JAVA=java.exe"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%HOME_FOLDER%\java\bin\java.exe" set "JAVA=%HOME_FOLDER%\java\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo undercap: needs Java 17 or later, on the search path or in JAVA_HOME 1>&2
  exit /b 1
)

rem Java's own remarks would spoil results on standard output; only its errors are let through.
set OPTIONS=-Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC -Djava.awt.headless=true

rem Classes as Java has read them once, so that later starts are quicker. It does no harm if this
rem fails, or if another Java cannot use them.
set "CACHE=%LOCALAPPDATA%\undercap"
set "ARCHIVE=%CACHE%\${project.version}.jsa"
if not exist "%CACHE%" mkdir "%CACHE%" >nul 2>&1
if not exist "%ARCHIVE%" (
  "%JAVA%" %OPTIONS% "-XX:ArchiveClassesAtExit=%ARCHIVE%" -jar "%JAR%" compare "%HOME_FOLDER%\scenarios\saltmere-garth.yaml" --members=64 "--out=%CACHE%\first" >nul 2>&1 <nul
  rmdir /s /q "%CACHE%\first" >nul 2>&1
)

"%JAVA%" %OPTIONS% "-XX:SharedArchiveFile=%ARCHIVE%" %UNDERCAP_JAVA_OPTIONS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
