#!/usr/bin/env bash
# All tests. Brings the outside readers that the tests ask (on Debian as root); elsewhere says which checks are left out.
set -u
cd "$(dirname "$0")/.."

has_ezdxf() { /usr/bin/python3 -c 'import ezdxf' 2>/dev/null; }

if ! has_ezdxf; then
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    echo 'Installing the DXF reader that the tests ask (python3-ezdxf) …'
    apt-get update -qq >/dev/null 2>&1
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends python3-ezdxf >/dev/null 2>&1
  fi
  has_ezdxf || echo 'Left out: the checks of DXF files with ezdxf (on Debian: apt-get install python3-ezdxf).'
fi

has_pdf_tools() { for tool in qpdf pdfinfo pdffonts pdftotext pdftoppm; do command -v "$tool" >/dev/null || return 1; done; }

if ! has_pdf_tools; then
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    echo 'Installing the PDF readers that the tests ask (qpdf, poppler-utils) …'
    apt-get update -qq >/dev/null 2>&1
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends qpdf poppler-utils >/dev/null 2>&1
  fi
  has_pdf_tools || echo 'Left out: the checks of PDF files with qpdf and poppler (on Debian: apt-get install qpdf poppler-utils).'
fi

has_chromium() { [ -x /usr/bin/chromium ]; }

if ! has_chromium; then
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    echo 'Installing the browser that the tests ask (chromium) …'
    apt-get update -qq >/dev/null 2>&1
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium >/dev/null 2>&1
  fi
  has_chromium || echo 'Left out: the checks of the pages in a browser (on Debian: apt-get install chromium).'
fi

set -e
npx tsc -p .
npx tsc -p lib/page
npx biome check .
npx knip
npx vitest run --config tests/vitest.config.ts "$@"
