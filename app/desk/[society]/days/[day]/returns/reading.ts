/** How the competition the desk keys for reads a hole: the heading of its last row. */
export type Reading = 'points' | 'net' | 'gross' | 'par'
