#!/usr/bin/env bash
# Installs what the tests need where it is missing, builds once, runs every test project.
# The last line is "N passed, N failed, N skipped". Fails when a test fails, when a project runs no test,
# and, with CI=true, when a test is skipped.
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en

missing_packages() {
  compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null || command -v initdb >/dev/null || echo postgresql
  command -v chromium >/dev/null || echo chromium
  command -v soffice >/dev/null || echo libreoffice-calc
  command -v pdftotext >/dev/null || echo poppler-utils
  command -v sqlite3 >/dev/null || echo sqlite3
  command -v fc-list >/dev/null || echo fontconfig
  compgen -G '/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf' >/dev/null || echo fonts-dejavu-core
  compgen -G '/usr/share/fonts/truetype/liberation*/LiberationSans-Regular.ttf' >/dev/null || echo fonts-liberation
}

install_missing() {
  local packages
  mapfile -t packages < <(missing_packages)
  [ ${#packages[@]} -eq 0 ] && return
  if [ "$(id -u)" -ne 0 ] || ! command -v apt-get >/dev/null; then
    echo "The tests need these Debian packages, please install them: ${packages[*]}" >&2
    exit 2
  fi
  echo "Installing ${packages[*]}"
  export DEBIAN_FRONTEND=noninteractive
  apt-get update -qq
  apt-get install -y -qq --no-install-recommends "${packages[@]}" >/dev/null
}

# The runner ends each project with a summary; the numbers are read from there.
count() { awk -v key="$1" '$1 == key":" { n = $2 } END { print n + 0 }' "$2"; }

run_project() {
  local name log passed=0 failed=0 skipped=0 code=0
  name=$(basename "$1")
  log="$logs/$name.log"
  echo "== $name"
  dotnet test --project "$1" --no-build --no-progress --no-ansi >"$log" 2>&1 || code=$?
  passed=$(count succeeded "$log"); failed=$(count failed "$log"); skipped=$(count skipped "$log")
  if [ "$code" -ne 0 ] || [ "$failed" -gt 0 ]; then cat "$log"; ok=false; fi
  # A project that dies before its summary, or finds nothing to run, counts as one failure.
  if [ $((passed + failed)) -eq 0 ] || { [ "$code" -ne 0 ] && [ "$failed" -eq 0 ]; }; then
    echo "$name did not run its tests to the end (exit code $code)." >&2
    ok=false; failed=$((failed + 1))
  fi
  echo "   $passed passed, $failed failed, $skipped skipped"
  total_passed=$((total_passed + passed)); total_failed=$((total_failed + failed)); total_skipped=$((total_skipped + skipped))
}

install_missing
dotnet build RetrofitCalc.sln --verbosity quiet

ok=true total_passed=0 total_failed=0 total_skipped=0
logs=$(mktemp -d)
trap 'rm -rf "$logs"' EXIT
for project in tests/*.Tests; do run_project "$project"; done
if [ "${CI:-}" = true ] && [ "$total_skipped" -gt 0 ]; then
  echo "Skipped tests are not allowed here." >&2
  ok=false
fi
echo "$total_passed passed, $total_failed failed, $total_skipped skipped"
$ok
