// Rules of Handicapping 2024: the edition in force since 1 January 2024, in Great Britain and Ireland since 1 April 2024.

import { APPENDIX_C, SMALL_FIELD } from './allowances'
import type { Edition } from './edition'

export const EDITION_2024: Edition = {
  id: '2024',
  title: 'Rules of Handicapping 2024',
  from: { world: '2024-01-01', gbi: '2024-04-01' },
  ratingMinusPar: true,
  beforeAllowance: 'kept',
  // Appendix C as first printed takes the difference of rounded figures; four-ball and pairs changed during the edition.
  matchDifference: { players: 'rounded', sides: 'unrounded' },
  holeNotPlayed: 'expected-score',
  allowances: APPENDIX_C,
  allowanceClause: 'Rules of Handicapping 2024, Appendix C',
  smallField: { ...SMALL_FIELD, clause: 'Rules of Handicapping 2024, Appendix C, C/1' },
  sources: [
    {
      title: 'Rules of Handicapping, 6.1 and 6.2',
      publisher: 'The R&A and USGA',
      section: '6.1a, 6.1b, 6.2a, 6.2b',
      known: 'read',
    },
    {
      title: 'Rules of Handicapping, Appendix C: Handicap Allowances',
      publisher: 'The R&A and USGA',
      section: 'Appendix C',
      url: 'https://www.usga.org/content/usga/home-page/handicapping/roh/Content/rules/Appendix%20C%20Handicap%20Allowances.htm',
      known: 'read',
    },
    {
      title: 'Changes from 1 April 2024: four-ball and foursomes matches',
      publisher: 'Dorset County Golf Union',
      section: 'Course Handicap',
      url: 'https://www.dcgu.org.uk/whs',
      known: 'read-in-a-copy',
    },
    {
      title: 'Appendix C, Clarification C/1: 100 % for fewer than 30 players',
      publisher: 'The R&A and USGA',
      section: 'C/1',
      known: 'read-in-a-copy',
    },
  ],
}
