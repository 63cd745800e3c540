// Committee Procedures 5A(6): last nine, six, three and the last hole, then the last six, three and one of the first
// nine. Holes by number whatever the start; shares of the handicap kept as fractions; after that the tie stands.

import type { TieRule } from '../day'

export const PUBLISHED_COUNTBACK: TieRule = {
  steps: [
    { kind: 'last', holes: 9 },
    { kind: 'last', holes: 6 },
    { kind: 'last', holes: 3 },
    { kind: 'last', holes: 1 },
    { kind: 'first-nine-last', holes: 6 },
    { kind: 'first-nine-last', holes: 3 },
    { kind: 'first-nine-last', holes: 1 },
  ],
  holesCount: 'by-number',
  fractions: 'kept',
}
