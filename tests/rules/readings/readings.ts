// Every rule that has cases, and how its cases are put to the engine.
import type { Reading } from '../case-file'
import { DAY_READINGS } from './days'
import { FIELD_READINGS } from './fields'
import { HANDICAP_READINGS } from './handicaps'
import { INSIGHT_READINGS } from './insight'
import { MATCH_READINGS } from './matches'
import { RULING_READINGS } from './rulings'
import { SMALL_DAY_READINGS } from './small-days'
import { TIE_READINGS } from './ties'

export const READINGS: Readonly<Record<string, Reading>> = {
  ...HANDICAP_READINGS,
  ...DAY_READINGS,
  ...MATCH_READINGS,
  ...TIE_READINGS,
  ...SMALL_DAY_READINGS,
  ...RULING_READINGS,
  ...FIELD_READINGS,
  ...INSIGHT_READINGS,
}
