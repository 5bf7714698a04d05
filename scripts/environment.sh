# Sourced by demo, test and bench: makes .venv from a hashed lock, and skips what is done already.
# Needs Python 3.11 or newer and nothing else. Writes inside the checkout alone (pip keeps its own cache).

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
venv="$top/.venv"

say() { printf '%s\n' "$*" >&2; }

# Prints the first Python that is new enough; python3.11 is what the locks were made for.
find_python() {
  local name
  for name in python3.11 python3 python3.12 python3.13 python3.14; do
    if "$name" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1; then
      command -v "$name"
      return
    fi
  done
  say "Python 3.11 or newer is not here. On Debian: apt-get install python3"
  return 1
}

# Prints a line that changes when the lock, the project's own definition, the Python or the place of the checkout does.
stamp_of() { # python lock
  "$1" - "$venv" "$2" "$top/pyproject.toml" <<'PY'
import hashlib
import pathlib
import sys

place, *files = sys.argv[1:]
seen = hashlib.sha256(f"{sys.version} {sys.base_prefix} {place}".encode())
for name in files:
    seen.update(pathlib.Path(name).read_bytes())
print(seen.hexdigest())
PY
}

# Debian ships Python without what makes environments: fetch that where it may be done, else say how.
need_venv_module() { # python
  "$1" -c 'import ensurepip, venv' >/dev/null 2>&1 && return
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    local package
    package=$("$1" -c 'import sys; print("python%d.%d-venv" % sys.version_info[:2])')
    say "Installing $package, which Debian keeps apart from Python"
    export DEBIAN_FRONTEND=noninteractive
    { apt-get install -y -q "$package" || { apt-get update -q && apt-get install -y -q "$package"; }; } >&2 && return
  fi
  say "This Python cannot make environments: its venv module is missing. As root: apt-get install python3-venv"
  return 1
}

make_venv() { # python
  if "$venv/bin/python" -c 'import pip' >/dev/null 2>&1; then return; fi
  need_venv_module "$1"
  "$1" -m venv --clear "$venv"
}

# ready run|test: afterwards $venv holds what that lock says, and the project itself.
ready() {
  install_for "$1"
  # Compiled loops are kept in the checkout too. Set after pip has run, which keeps its own cache where it always does.
  export XDG_CACHE_HOME="$venv/cache"
}

# What tests need holds all that running needs, so either stamp will do for running.
install_for() { # run|test
  local which=$1 python lock stamp
  lock="$top/scripts/lock/$which.txt"
  python=$(find_python)
  stamp=$(stamp_of "$python" "$lock")
  if [ "$(cat "$venv/.made-for-$which" 2>/dev/null)" = "$stamp" ] && [ -x "$venv/bin/transom" ]; then return; fi
  if [ "$which" = run ] && [ -x "$venv/bin/transom" ] &&
    [ "$(cat "$venv/.made-for-test" 2>/dev/null)" = "$(stamp_of "$python" "$top/scripts/lock/test.txt")" ]; then return; fi
  say "Making the environment in .venv (once; a minute or so)"
  make_venv "$python"
  rm -f "$venv/.made-for-run" "$venv/.made-for-test"
  local pip=("$venv/bin/python" -m pip --disable-pip-version-check --no-input install --quiet)
  "${pip[@]}" --require-hashes -r "$lock" >&2
  "${pip[@]}" --no-deps --no-build-isolation --editable "$top" >&2
  printf '%s\n' "$stamp" >"$venv/.made-for-$which"
}
