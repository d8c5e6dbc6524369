#!/usr/bin/env bash
# Runs the tightening and closed-loop benchmarks on one and on two threads and prints the ratios that are tracked.
# usage: benchmarks/ratios.sh [RESULT.txt]     (from the repository's root, after mvn -DskipTests package)
set -euo pipefail
jar=benchmarks/target/benchmarks.jar
result=${1:-benchmarks/results/$(date -u +%Y-%m-%d).txt}
one=$(mktemp) two=$(mktemp)
trap 'rm -f "$one" "$two"' EXIT

java -jar "$jar" 'TighteningBenchmark|ClosedLoopBenchmark' -f 1 -rf csv -rff "$one" >/dev/null
java -jar "$jar" 'ClosedLoopBenchmark.trivialOnJointA' -f 1 -t 2 -rf csv -rff "$two" >/dev/null

score() { grep -E "$2" "$1" | head -n 1 | awk -F, '{gsub(/"/, ""); print $5}'; }
ratio() { awk -v a="$1" -v b="$2" 'BEGIN {printf "%.2f", a / b}'; }

{
    echo "CPU: $(grep -m 1 'model name' /proc/cpuinfo | cut -d: -f2- | xargs), $(nproc) processors"
    echo "Java: $(java -version 2>&1 | sed -n 3p | xargs)"
    echo "Per second and core:"
    for joint in A B C D A_HEAVY; do
        echo "  plant alone, joint $joint braked at blow 40: $(score "$one" "tightening.*\",$joint$|tightening.*,$joint\$|tightening.*,\"?$joint\"?\$")"
    done
    for name in trivialOnJointA adaptiveOnDemoFamilies oneConstantDriveStrategy sixConstantDriveStrategies; do
        echo "  closed loop, $name: $(score "$one" "$name")"
    done
    echo "Six constant-drive strategies cost $(ratio "$(score "$one" oneConstant)" "$(score "$one" sixConstant)") times the dearest alone"
    echo "Two threads do $(ratio "$(score "$two" trivialOnJointA)" "$(score "$one" trivialOnJointA)") times what one does"
} | tee "$result"
