#!/usr/bin/env bash
# Copies everything the program knows into one file, while it runs.
#   deploy/backup.sh sqlite   /path/to/retrofitcalc.db          /backups
#   deploy/backup.sh postgres postgresql://user@host/database   /backups
# Prints the path of the new file. The password of a server comes from PGPASSWORD or ~/.pgpass.
set -euo pipefail
[ $# -eq 3 ] || { sed -n '2,5p' "$0" | cut -c3- >&2; exit 2; }
kind=$1 from=$2 folder=$3
mkdir -p "$folder"
stamp=$(date -u +%Y%m%dT%H%M%SZ)

case $kind in
  sqlite)
    [ -f "$from" ] || { echo "There is no file $from." >&2; exit 1; }
    command -v sqlite3 >/dev/null || { echo "Install sqlite3 first: a plain copy of a file in use can be damaged." >&2; exit 1; }
    target="$folder/retrofitcalc-$stamp.db"
    [ ! -e "$target" ] || { echo "$target is already there." >&2; exit 1; }
    sqlite3 "$from" ".timeout 15000" "VACUUM INTO '${target//\'/\'\'}.part'"
    [ "$(sqlite3 "$target.part" 'PRAGMA quick_check(1)')" = ok ] || { echo "The copy is damaged: $target.part" >&2; exit 1; }
    ;;
  postgres)
    target="$folder/retrofitcalc-$stamp.dump"
    [ ! -e "$target" ] || { echo "$target is already there." >&2; exit 1; }
    pg_dump --format=custom --no-owner --file="$target.part" "$from"
    pg_restore --list "$target.part" >/dev/null
    ;;
  *) echo "Say sqlite or postgres, not $kind." >&2; exit 2 ;;
esac
mv "$target.part" "$target"
echo "$target"
