// Rules of Handicapping 2020, as in force outside Great Britain and Ireland from 1 January 2020 to the end of 2023.

import { APPENDIX_C, SMALL_FIELD } from './allowances'
import type { Edition } from './edition'

export const EDITION_2020: Edition = {
  id: '2020',
  title: 'Rules of Handicapping 2020',
  from: { world: '2020-01-01', gbi: null },
  ratingMinusPar: true,
  beforeAllowance: 'kept',
  matchDifference: { players: 'rounded', sides: 'rounded' },
  holeNotPlayed: 'net-par',
  allowances: APPENDIX_C,
  allowanceClause: 'Rules of Handicapping 2020, Appendix C',
  smallField: { ...SMALL_FIELD, clause: 'Rules of Handicapping 2020, Appendix C, C/1' },
  sources: [
    {
      title: 'Rules of Handicapping 2020, 6.1 and 6.2',
      publisher: 'The R&A and USGA',
      section: '6.1, 6.2',
      known: 'read',
    },
    {
      title: 'Rules of Handicapping 2020, Appendix C',
      publisher: 'The R&A and USGA',
      section: 'Appendix C',
      known: 'from-memory',
    },
  ],
}
