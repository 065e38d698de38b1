@echo off
rem Starts the window. Arguments: a rule book to open; -data DIRECTORY for the window's own notes.
for %%j in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do start "Setwright" javaw -Xmx1g -jar "%%j" %*
