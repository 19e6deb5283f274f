#!/usr/bin/env bash
# Puts a backup back. Stop the program first.
#   deploy/restore.sh sqlite   /backups/retrofitcalc-….db    /path/to/retrofitcalc.db
#   deploy/restore.sh postgres /backups/retrofitcalc-….dump  postgresql://user@host/database
# A present SQLite file is moved aside, never overwritten. A server's database is replaced in one transaction:
# when anything fails it stays as it was.
set -euo pipefail
[ $# -eq 3 ] || { sed -n '2,6p' "$0" | cut -c3- >&2; exit 2; }
kind=$1 backup=$2 to=$3
[ -f "$backup" ] || { echo "There is no file $backup." >&2; exit 1; }

case $kind in
  sqlite)
    command -v sqlite3 >/dev/null || { echo "Install sqlite3 first." >&2; exit 1; }
    [ "$(sqlite3 "file:$backup?mode=ro&immutable=1" 'PRAGMA quick_check(1)' 2>/dev/null)" = ok ] ||
      { echo "$backup is damaged or is no database; nothing was changed." >&2; exit 1; }
    mkdir -p "$(dirname "$to")"
    cp "$backup" "$to.part"
    aside=".before-$(date -u +%Y%m%dT%H%M%SZ)"
    # The write-ahead file belongs to the old database and would spoil the new one.
    for old in "$to" "$to-wal" "$to-shm"; do
      if [ -e "$old" ]; then mv "$old" "$to$aside${old#"$to"}"; fi
    done
    mv "$to.part" "$to"
    ;;
  postgres)
    pg_restore --list "$backup" >/dev/null
    pg_restore --clean --if-exists --no-owner --single-transaction --dbname="$to" "$backup"
    ;;
  *) echo "Say sqlite or postgres, not $kind." >&2; exit 2 ;;
esac
echo "Restored $to from $backup."
