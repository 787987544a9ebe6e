@echo off
rem Opens the desk of templates-gen in your browser: double-click this file.
rem
rem It finds Python, makes an environment of its own the first time (this takes a minute, and needs the internet unless
rem the package lies beside this file), and opens the desk. The second start is quick. To undo it, delete the folder
rem that it names. Beside this file may lie: templates_gen-*.whl, the package itself; wheels, a folder with all packages
rem that it needs, for computers without the internet.
setlocal EnableExtensions DisableDelayedExpansion
chcp 65001 >nul
title Desk

set "HERE=%~dp0"
set "HERE=%HERE:~0,-1%"
set "DATA=%LOCALAPPDATA%\templates-gen"
if not defined LOCALAPPDATA set "DATA=%HERE%\desk-environment"
set "ENVIRONMENT=%DATA%\desk"
set "RUN=%ENVIRONMENT%\Scripts\python.exe"
set "KITS=%USERPROFILE%\Loom kits"
if not exist "%DATA%\" mkdir "%DATA%" 2>nul
if not exist "%KITS%\" mkdir "%KITS%" 2>nul
if not exist "%KITS%\" set "KITS=%HERE%"

rem What is installed: the newest package beside this file, the tree that this file is a part of, or the one of the internet.
set "PACKAGE=templates-gen"
for %%F in ("%HERE%\templates_gen-*.whl") do set "PACKAGE=%%~fF"
if not "%PACKAGE%"=="templates-gen" goto :known
if exist "%HERE%\..\..\pyproject.toml" if exist "%HERE%\..\..\templates_gen\" for %%F in ("%HERE%\..\..") do set "PACKAGE=%%~fF"
:known

set "PYTHONHOME="
set "PYTHONPATH="
set "MADE="
if exist "%ENVIRONMENT%\made" for /f "usebackq tokens=1* delims==" %%A in ("%ENVIRONMENT%\made") do set "MADE=%%B"
if not "%MADE%"=="%PACKAGE%" goto :make
if not exist "%RUN%" goto :make
"%RUN%" -c "import templates_gen" >nul 2>nul || goto :make
goto :open

:make
set "PYTHON="
set "WHICH="
for %%V in (3.14 3.13 3.12 3.11) do call :try py -%%V
for /d %%D in ("%LOCALAPPDATA%\Programs\Python\Python3*" "%ProgramFiles%\Python3*") do call :try "%%~D\python.exe"
call :try python
call :try python3
if not defined PYTHON goto :none
echo Making an environment for the desk. This takes a minute, and is done once.
if exist "%ENVIRONMENT%\" rmdir /s /q "%ENVIRONMENT%"
"%PYTHON%" %WHICH% -m venv "%ENVIRONMENT%" || goto :no_environment
if exist "%HERE%\wheels\" goto :from_wheels
"%RUN%" -m pip install --quiet --disable-pip-version-check "%PACKAGE%" || goto :not_installed
goto :installed
:from_wheels
"%RUN%" -m pip install --quiet --disable-pip-version-check --no-index --find-links "%HERE%\wheels" "%PACKAGE%" || goto :not_installed
:installed
set PACKAGE>"%ENVIRONMENT%\made"

:open
echo Your kits are kept in: "%KITS%"
echo The environment of the desk is: "%ENVIRONMENT%"
"%RUN%" -m templates_gen desk --folder "%KITS%" %*
if errorlevel 1 pause
exit /b

:none
echo.
echo The desk needs Python 3.11 or later.
echo Get it from https://www.python.org/downloads/ and open this file again.
pause
exit /b 1

:no_environment
echo.
echo The environment could not be made in "%ENVIRONMENT%". Is the disk full?
pause
exit /b 1

:not_installed
rmdir /s /q "%ENVIRONMENT%"
echo.
echo The desk could not be installed. Is this computer on the internet? What went wrong stands above.
echo Then open this file again.
pause
exit /b 1

rem Takes a Python, with which version to take of it, if it is late enough and none was taken before.
:try
if defined PYTHON exit /b 0
"%~1" %2 -c "import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))" >nul 2>nul || exit /b 0
set "PYTHON=%~1"
set "WHICH=%2"
exit /b 0
