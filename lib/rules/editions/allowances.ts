// Rules of Handicapping, Appendix C: handicap allowances. The table as read in the 2024 edition; the 2020 edition had
// the same figures as far as we remember, which the editions that use it say in their sources.

import type { Edition } from './edition'

export const APPENDIX_C: Edition['allowances'] = {
  'individual-stroke-play': 95,
  'individual-stableford': 95,
  'individual-par': 95,
  'individual-maximum-score': 95,
  'four-ball-stroke-play': 85,
  'four-ball-stableford': 85,
  'four-ball-par': 90,
  'individual-match': 100,
  'four-ball-match': 90,
  foursomes: [50, 50],
  greensomes: [60, 40],
  pinehurst: [60, 40],
  'best-1-of-4': 75,
  'best-2-of-4': 85,
  'best-3-of-4': 100,
  'best-4-of-4': 100,
  'scramble-4': [25, 20, 15, 10],
  'scramble-3': [30, 20, 10],
  'scramble-2': [35, 15],
  'total-of-two-match': 100,
  'best-1-of-4-par': 75,
  'best-2-of-4-par': 80,
  'best-3-of-4-par': 90,
  'best-4-of-4-par': 100,
}

/** Appendix C, Clarification C/1; the figure of 30 is from a club's copy of it. */
export const SMALL_FIELD = {
  under: 30,
  rows: ['individual-stroke-play', 'individual-stableford', 'individual-par', 'individual-maximum-score'],
  allowance: 100,
} as const
