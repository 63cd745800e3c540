// Rules of Handicapping 2024, 6.2b: when tees of different par compete on strokes or in a match, the player of the tee
// with the higher par gets the difference to the lowest. Stableford and par competitions are measured against each
// tee's own par and need nothing.

/** Strokes added to a playing handicap for the par of its tee. */
export function parDifference(par: number, lowestPar: number): number {
  return par > lowestPar ? par - lowestPar : 0
}
