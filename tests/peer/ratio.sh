#!/usr/bin/env bash
# How much longer the EPANET engine takes than FlowCalc for one cold solve of the same tree, both timed in this run: ratio-<points> <times> x.
set -euo pipefail
cd "$(dirname "$0")"

sizes=(10 100 1000 10000)
benchmarks=../FlowCalc.Benchmarks
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

dotnet build "$benchmarks" -c Release --nologo -v quiet
benchmark() { dotnet run -c Release --no-build --project "$benchmarks" -- "$@"; }
benchmark trees "$work"
benchmark quick "${sizes[@]}" | tee "$work/figures"
node speed.mjs "$work" | tee -a "$work/figures"

awk -v sizes="${sizes[*]}" '
  { figure[$1] = $2 }
  END {
    count = split(sizes, size, " ")
    for (i = 1; i <= count; i++) {
      ours = figure["steady-cold-" size[i]]; theirs = figure["epanet-js-" size[i]]
      if (!(ours > 0 && theirs > 0)) { print "no figures for " size[i] " points" > "/dev/stderr"; exit 1 }
      printf "ratio-%s %.3g x\n", size[i], theirs / ours
    }
  }' "$work/figures"
