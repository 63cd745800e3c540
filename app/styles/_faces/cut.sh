#!/usr/bin/env bash
# Cuts the faces every page loads out of the packages' own: the letters, figures and signs our screens use, in the weights
# they use. What is left out (other accents) comes from the packages' whole files, and only when a name needs it.
# Wants fonttools and brotli (Debian: fonttools python3-brotli); the cut files are committed, so nobody else does.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
packages="$here/../../../node_modules/@fontsource-variable"
# Kept in step with the first range in ../fonts.ts.
signs='U+0020-007E,U+00A0,U+00A3,U+00B1,U+00B7,U+00BD,U+00C9,U+00D7,U+00E0-00E2,U+00E7-00EB,U+00ED,U+00F1,U+00F3,U+00F6,U+00F7,U+00FA,U+00FC'
signs="$signs,U+2013,U+2014,U+2018,U+2019,U+201C,U+201D,U+2022,U+2026,U+20AC,U+2212"
lighter="$(mktemp -d)"
trap 'rm -rf "$lighter"' EXIT
cut_one() { # file in the packages, name here, weight or range of weights
  fonttools varLib.instancer "$packages/$1" "wght=$3" --no-recalc-timestamp -o "$lighter/$2.ttf" -q
  pyftsubset "$lighter/$2.ttf" --unicodes="$signs" --layout-features=kern,liga,lnum,tnum,pnum --no-hinting --no-recalc-timestamp \
    --flavor=woff2 --output-file="$here/$2.woff2"
}
cut_one newsreader/files/newsreader-latin-wght-normal.woff2 newsreader 400:700
cut_one newsreader/files/newsreader-latin-wght-italic.woff2 newsreader-italic 430 # one cut for its two weights, 400 and 500
cut_one atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2 atkinson-hyperlegible-next 400:700
