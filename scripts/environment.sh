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

# Prints a line that changes when the lock, the project's own definition, the environment's Python or its place does.
stamp_of() { # lock
  "$venv/bin/python" - "$venv" "$1" "$top/pyproject.toml" <<'PY'
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
  local package
  package=$("$1" -c 'import sys; print("python%d.%d-venv" % sys.version_info[:2])')
  install_package "$package" && return
  say "This Python cannot make environments: its venv module is missing. As root: apt-get install python3-venv"
  return 1
}

# Installs a package where it may be done: as root, on Debian and its like.
install_package() { # package
  { [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; } || return 1
  say "Installing $1 by apt-get"
  export DEBIAN_FRONTEND=noninteractive
  { apt-get install -y -q "$1" || { apt-get update -q && apt-get install -y -q "$1"; }; } >&2
}

# Tests start a PostgreSQL server of their own: fetch one where that may be done, else say how one gets one.
need_postgres() {
  local find=("$venv/bin/python" -m tests.support.postgres)
  (cd "$top" && "${find[@]}") >/dev/null 2>&1 && return
  install_package postgresql || true
  (cd "$top" && "${find[@]}") >/dev/null
}

# Tests look at pages with Debian's chromium: fetch it where that may be done.
need_chromium() {
  command -v chromium >/dev/null || command -v chromium-browser >/dev/null || install_package chromium ||
    { say "chromium is not here. On Debian, as root: apt-get install chromium"; return 1; }
}

make_venv() {
  if "$venv/bin/python" -c 'import pip' >/dev/null 2>&1; then return; fi
  local python
  python=$(find_python)
  need_venv_module "$python"
  "$python" -m venv --clear "$venv"
}

# ready run|test: afterwards $venv holds what that lock says, and the project itself.
ready() {
  install_for "$1"
  # Compiled loops are kept in the checkout too. Set after pip has run, which keeps its own cache where it always does.
  export XDG_CACHE_HOME="$venv/cache"
}

# Compiles the program's modules to bytecode ahead: where Python is told to write none, as in many containers, each start
# would compile them all, which takes longer than most commands. What is compiled and not changed since is passed over.
compile_ahead() {
  "$venv/bin/python" -m compileall -q "$top/service" "$top/migrations" "$top/seed_fixtures" >&2 || true
}

# Says whether the environment was made for what that lock and the project say now.
is_made_for() { # run|test
  local stamp
  [ -x "$venv/bin/transom" ] && stamp=$(stamp_of "$top/scripts/lock/$1.txt" 2>/dev/null) &&
    [ "$(cat "$venv/.made-for-$1" 2>/dev/null)" = "$stamp" ]
}

install_for() { # run|test
  # What tests need holds all that running needs.
  if is_made_for test || { [ "$1" = run ] && is_made_for run; }; then return; fi
  say "Making the environment in .venv (once; a minute or so)"
  make_venv
  rm -f "$venv/.made-for-run" "$venv/.made-for-test"
  local lock="$top/scripts/lock/$1.txt" pip=("$venv/bin/python" -m pip --disable-pip-version-check --no-input install --quiet)
  "${pip[@]}" --require-hashes -r "$lock" >&2
  "${pip[@]}" --no-deps --no-build-isolation --editable "$top" >&2
  compile_ahead
  stamp_of "$lock" >"$venv/.made-for-$1"
}
