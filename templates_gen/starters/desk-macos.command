#!/bin/sh
# Opens the desk of templates-gen in your browser: double-click this file.
#
# It finds Python, makes an environment of its own the first time (this takes a minute, and needs the internet unless
# the package lies beside this file), and opens the desk. The second start is quick. To undo it, delete the folder that
# it names. Beside this file may lie: templates_gen-*.whl, the package itself; wheels, a folder with all packages that
# it needs, for computers without the internet.
set -u
unset PYTHONHOME PYTHONPATH  # those of another Python

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd -P) || exit 1
HOME=${HOME:-$here}
case $(uname -s) in
    Darwin) data="$HOME/Library/Application Support/templates-gen" ;;
    *) data="${XDG_DATA_HOME:-$HOME/.local/share}/templates-gen" ;;
esac
if ! mkdir -p -- "$data" 2>/dev/null || [ ! -w "$data" ]; then data="$here/desk-environment"; fi
env="$data/desk"
kits="$HOME/Loom kits"
if ! mkdir -p -- "$kits" 2>/dev/null; then kits=$here; fi

say() { printf '%s\n' "$@"; }
wait_for_key() {
    if [ -t 0 ]; then
        printf 'Press Enter to close this window. '
        read -r _ || true
    fi
}
stop() {
    say "" "$@"
    wait_for_key
    exit 1
}

# A Python that can make environments; the one that macOS itself has is too old, and asks for developer tools.
usable() { "$1" -c 'import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1; }
old=""
find_python() {
    for name in python3.14 python3.13 python3.12 python3.11 python3 python; do
        for folder in "$(command -v "$name" 2>/dev/null)" "/opt/homebrew/bin/$name" "/usr/local/bin/$name" \
            "/Library/Frameworks/Python.framework/Versions/${name#python}/bin/$name"; do
            if [ -z "$folder" ] || [ ! -x "$folder" ]; then continue; fi
            if [ "$(uname -s)" = Darwin ] && [ "$folder" = "/usr/bin/$name" ]; then continue; fi
            if usable "$folder"; then
                python=$folder
                return 0
            fi
            old=$folder
        done
    done
    return 1
}

# What is installed: the newest package beside this file, the tree that this file is a part of, or the one of the internet.
package=templates-gen
for file in "$here"/templates_gen-*.whl; do [ -f "$file" ] && package=$file; done
root=${here%/templates_gen/starters}
if [ "$package" = templates-gen ] && [ "$root" != "$here" ] && [ -f "$root/pyproject.toml" ]; then package=$root; fi

made() { [ -f "$env/made" ] && [ "$(cat "$env/made")" = "$package" ] && "$env/bin/python" -c 'import templates_gen' 2>/dev/null; }

make_environment() {
    if ! find_python; then
        if [ -n "$old" ]; then
            say "" "The Python of this computer ($old) is too old or lacks a part."
        fi
        stop "The desk needs Python 3.11 or later, with its module venv." \
            "Get it from https://www.python.org/downloads/ (on Debian and Ubuntu: sudo apt install python3-venv)," \
            "then open this file again."
    fi
    say "Making an environment for the desk. This takes a minute, and is done once."
    rm -rf -- "$env"  # one that was left half made
    "$python" -m venv -- "$env" || stop "The environment could not be made in $env." "Is the disk full?"
    if [ -d "$here/wheels" ]; then
        set -- --no-index --find-links "$here/wheels"
    else
        set --
    fi
    "$env/bin/python" -m pip install --quiet --disable-pip-version-check "$@" -- "$package" || {
        rm -rf -- "$env"
        stop "The desk could not be installed. Is this computer on the internet? What went wrong stands above." \
            "Then open this file again."
    }
    printf '%s' "$package" >"$env/made"
}

# Two windows that are opened at once must not make the same environment.
lock="$data/desk-lock"
tries=0
until mkdir -- "$lock" 2>/dev/null; do
    owner=$(cat "$lock/owner" 2>/dev/null)
    if [ -n "$owner" ] && ! kill -0 "$owner" 2>/dev/null; then rm -rf -- "$lock"; continue; fi
    tries=$((tries + 1))
    if [ -z "$owner" ] && [ "$tries" -gt 5 ]; then rm -rf -- "$lock"; continue; fi
    if [ "$tries" -gt 600 ]; then stop "Another window is still making the environment. Close it, then open this file again."; fi
    [ "$tries" -eq 1 ] && say "Another window is making the environment; this one waits for it."
    sleep 1
done
printf '%s' "$$" >"$lock/owner"
trap 'rm -rf -- "$lock"' EXIT
trap 'exit 1' HUP INT TERM
made || make_environment
rm -rf -- "$lock"
trap - EXIT HUP INT TERM

say "Your kits are kept in: $kits" "The environment of the desk is: $env"
"$env/bin/python" -m templates_gen desk --folder "$kits" "$@"
code=$?
if [ "$code" -ne 0 ]; then wait_for_key; fi
exit "$code"
