#!/bin/sh
# Starts the window. Arguments: a rule book to open; -data DIRECTORY for the window's own notes.
here=$(cd "$(dirname "$0")" && pwd)
exec "${JAVA_HOME:+$JAVA_HOME/bin/}java" -XstartOnFirstThread -Xmx1g -jar "$here"/plugins/org.eclipse.equinox.launcher_*.jar "$@"
