#!/usr/bin/env bash
# Measures the tracked figures and ratios in one process and keeps them with the host's facts.
# usage: benchmarks/ratios.sh [RESULT.txt]     (from the repository's root, after mvn -DskipTests package)
set -euo pipefail
jar=benchmarks/target/benchmarks.jar
result=${1:-benchmarks/results/$(date -u +%Y-%m-%d).txt}
mkdir -p "$(dirname "$result")"

{
    echo "CPU: $(grep -m 1 'model name' /proc/cpuinfo | cut -d: -f2- | xargs), family $(grep -m 1 'cpu family' /proc/cpuinfo | cut -d: -f2- | xargs) model $(grep -m 1 -E '^model\s+:' /proc/cpuinfo | cut -d: -f2- | xargs), $(nproc) processors"
    echo "Memory: $(awk '/MemTotal/ {printf "%.1f GB", $2 / 1048576}' /proc/meminfo)"
    echo "System: $(uname -sr)"
    echo "Java: $(java -version 2>&1 | sed -n 3p | xargs)"
    echo "Commit: $(git rev-parse --short HEAD)"
    echo "Load before the run: $(cut -d' ' -f1-3 /proc/loadavg)"
    java -cp "$jar" org.shutoffbench.benchmarks.BudgetRatios
    echo "Load after the run: $(cut -d' ' -f1-3 /proc/loadavg)"
} | tee "$result"
