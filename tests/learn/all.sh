#!/usr/bin/env bash
# Learns every table of weights anew, each from what the one before it reads: goods, names, then where facts stand.
set -euo pipefail
cd "$(dirname "$0")/../.."
npx tsx tests/learn/goods.ts
npx tsx tests/learn/naming.ts
npx tsx tests/learn/repaired.ts
npx tsx tests/learn/days.ts
npx tsx tests/learn/names.ts
npx tsx tests/learn/spans.ts
npx biome format --write parser/facts
