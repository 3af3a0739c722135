#!/usr/bin/env bash
# Learns every table of weights anew, each from what the one before it reads: numbers that count, goods, readings, names, where facts stand, then which item each is told of, whether it is one, and which goods are still to buy.
set -euo pipefail
cd "$(dirname "$0")/../.."
npx tsx tests/learn/counts.ts
npx tsx tests/learn/goods.ts
npx tsx tests/learn/readings.ts
npx tsx tests/learn/naming.ts
npx tsx tests/learn/repaired.ts
npx tsx tests/learn/days.ts
npx tsx tests/learn/names.ts
npx tsx tests/learn/spans.ts
npx tsx tests/learn/links.ts
npx tsx tests/learn/endings.ts
npx tsx tests/learn/doubts.ts
npx tsx tests/learn/orderDoubts.ts
npx biome format --write parser/quantities parser/facts server/jobs
