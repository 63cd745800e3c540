// Rules of Handicapping 2020 as applied in Great Britain and Ireland, 2 November 2020 to 31 March 2024: no rating less
// par in the course handicap, which was rounded before the allowance.

import { APPENDIX_C, SMALL_FIELD } from './allowances'
import type { Edition } from './edition'

export const EDITION_2020_GBI: Edition = {
  id: '2020-gbi',
  title: 'Rules of Handicapping 2020, Great Britain and Ireland',
  from: { world: null, gbi: '2020-11-02' },
  ratingMinusPar: false,
  // Scotland kept the full value; a society there picks edition 2020.
  beforeAllowance: 'rounded',
  matchDifference: { players: 'rounded', sides: 'rounded' },
  holeNotPlayed: 'net-par',
  allowances: APPENDIX_C,
  allowanceClause: 'Rules of Handicapping 2020, Appendix C',
  smallField: { ...SMALL_FIELD, clause: 'Rules of Handicapping 2020, Appendix C, C/1' },
  sources: [
    {
      title: 'What changes on 1 April 2024',
      publisher: 'Dorset County Golf Union',
      section: 'Course Handicap',
      url: 'https://www.dcgu.org.uk/whs',
      known: 'read-in-a-copy',
    },
    {
      title: 'Handicap advisor: rating less par used from 1 April 2024',
      publisher: 'Somerset Ladies Golf',
      section: 'Course Handicap',
      url: 'https://www.somersetladiesgolf.org/handicap-advisor.html',
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
