// Gives the columns of the generated database client the id types of lib/facts/ids.ts, so that an entry's id cannot be
// asked for, or written, where a person's stands. The generator itself knows only "string".
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'

/** Columns that refer to a row of another table, by name: the same name means the same everywhere in the schema. */
const COLUMNS = {
  societyId: 'SocietyId',
  userId: 'UserId',
  byUserId: 'UserId',
  personId: 'PersonId',
  hostId: 'PersonId',
  courseId: 'CourseId',
  teeId: 'TeeId',
  seasonId: 'SeasonId',
  dayId: 'DayId',
  roundId: 'RoundId',
  roundTeeId: 'RoundTeeId',
  competitionId: 'CompetitionId',
  entryId: 'EntryId',
  markerId: 'EntryId',
  holderId: 'EntryId',
  writerId: 'EntryId',
  entryAId: 'EntryId',
  entryBId: 'EntryId',
  sideId: 'SideId',
  sideAId: 'SideId',
  sideBId: 'SideId',
  pairingId: 'PairingId',
  teamId: 'TeamId',
  groupId: 'GroupId',
  cardId: 'CardId',
  deviceId: 'DeviceId',
}

/** Tables whose own `id` is used elsewhere. */
const TABLES = [
  'Society', 'User', 'Person', 'Course', 'Tee', 'Season', 'Day', 'Round', 'RoundTee', 'Competition', 'Entry', 'Side',
  'Pairing', 'Team', 'Group', 'Card', 'Device', 'Ruling',
] // biome-ignore format: a list to be read as one

export function giveIdTypes(folder) {
  for (const file of readdirSync(folder)) {
    const table = basename(file, '.ts')
    const columns = TABLES.includes(table) ? { ...COLUMNS, id: `${table}Id` } : COLUMNS
    const used = new Set()
    const lines = readFileSync(join(folder, file), 'utf8')
      .split('\n')
      .map((line) => {
        const column = /^\s+(\w+)\??:.*\bstring\b/.exec(line)?.[1]
        const type = column && Object.hasOwn(columns, column) ? columns[column] : undefined
        if (!type) return line
        used.add(type)
        return line.replace(/\bstring\b/g, type)
      })
    if (used.size === 0) continue
    const first = lines.findIndex((line) => line.startsWith('import '))
    lines.splice(first, 0, `import type { ${[...used].sort().join(', ')} } from '@/lib/facts/ids'`)
    writeFileSync(join(folder, file), lines.join('\n'))
  }
}
