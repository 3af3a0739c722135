#!/usr/bin/env bash
# Browser tests need a Chromium. Uses the one named by CHROMIUM or found on the PATH; else installs Debian's with apt.
set -euo pipefail
for c in "${CHROMIUM:-}" /usr/bin/chromium /usr/bin/chromium-browser /usr/bin/google-chrome; do
  if [ -n "$c" ] && [ -x "$c" ]; then exit 0; fi
done
as_root=""
[ "$(id -u)" = 0 ] || as_root="sudo"
if command -v apt-get >/dev/null; then
  echo "No Chromium found: installing Debian's for the browser tests."
  $as_root apt-get update -qq
  DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends chromium fonts-dejavu-core
  exit 0
fi
echo "No Chromium found and no apt-get here: install Chromium and name it, as in CHROMIUM=/path/to/chromium npm test" >&2
exit 1
