#!/usr/bin/env bash
# Adds one migration to both databases: src/RetrofitCalc.Data/add-migration.sh NAME
set -euo pipefail
[ $# -eq 1 ] || { echo "usage: $0 NAME" >&2; exit 2; }
cd "$(dirname "$0")"
dotnet tool restore
for provider in Sqlite Postgres; do
  dotnet ef migrations add "$1" --context "${provider}RetrofitContext" --output-dir "$provider/Migrations"
  sed -i '1s/^\xEF\xBB\xBF//' "$provider"/Migrations/*.cs
done
