// Rules of Golf 2023, 21.1b: no points for two or more over or no score, one for one over, two for level, and one more
// for each stroke better.

import type { PointsTable } from './format'

export const STABLEFORD_POINTS: PointsTable = { best: -4, points: [6, 5, 4, 3, 2, 1, 0], beyond: 1, noScore: 0 }
