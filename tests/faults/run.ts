// One seeded run: phones of one group on a bad network, a server that dies, and the promise held against the book.
import type { CardPack } from '@/lib/facts/card-pack'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { phoneMark, writerKey } from '@/lib/facts/writer'
import { asId } from '../setup/ids'
import { contradictions, openedBook, type Row } from './book-check'
import { dice } from './dice'
import { type Deaths, Network, withNetwork } from './network'
import type { PreparedBook, PreparedGroup } from './prepared-book'
import { RecordedPhone } from './recorded-phone'
import type { ServerProcess } from './server-process'
import { type SimPhone, somePhones } from './sim-phone'

export interface Counts {
  facts: number
  received: number
  late: number
  refused: number
  waiting: number
  deaths: number
}

type Roll = (sides: number) => number

export async function run(
  seed: number,
  book: PreparedBook,
  place: number,
  server: ServerProcess,
  sigkill: boolean,
  mostDeaths?: number,
): Promise<Counts> {
  const roll = dice(seed)
  const group = book.groups[place]!
  const foreign = book.groups[(place + 1) % book.groups.length]!
  const deaths: Deaths = { left: mostDeaths ?? (sigkill ? 1 : roll(3)), sigkill }
  const before = deaths.left
  const network = new Network(server, roll, deaths)
  const phones = somePhones(seed, group, roll)
  const old = roll(6) === 0 ? new RecordedPhone(asId(`run-${seed}-recorded-phone`), group) : null
  // A phone that is broken or stolen on the way home: what it holds stays on it.
  const gone = roll(8) === 0 ? phones[roll(phones.length)]! : null
  await withNetwork(network, async () => {
    for (const phone of phones) await phone.begin()
    for (let step = 0; step < 9; step++) await something(phones[roll(phones.length)]!, network, foreign, old, roll)
    if ((sigkill || mostDeaths) && deaths.left > 0) await certainDeath(phones[0]!, network)
    hold(seed, 'in the middle', await contradictory(server.file, phones))
    network.good = true
    while (network.held.length) await network.deliverHeld()
    for (const phone of phones) if (phone !== gone) await untilEmpty(phone)
    if (old) while (!(await old.talk()));
  })
  hold(seed, 'in the end', [
    ...network.broken,
    ...(server.errors ? [`the server wrote: ${server.errors.slice(0, 500)}`] : []),
    ...(await contradictory(server.file, phones)),
    ...(await whole(server, group, phones, gone, old)),
  ])
  return counted(phones, before - Math.max(0, deaths.left))
}

function hold(seed: number, when: string, broken: readonly string[]): void {
  if (broken.length) throw new Error(`seed ${seed}, ${when}: ${broken.slice(0, 5).join('; ')}`)
}

async function something(
  phone: SimPhone,
  network: Network,
  foreign: PreparedGroup,
  old: RecordedPhone | null,
  roll: Roll,
): Promise<void> {
  switch (roll(24)) {
    case 0: // the whole round in a valley, five hours, and the cards signed there
      await phone.writeRound(18, (at, hole) => 3 + ((hole + at) % 4))
      await phone.signAll()
      return
    case 1:
      return phone.signAll()
    case 2:
      return phone.undo()
    case 3:
      return phone.look()
    case 4:
      return phone.twoTabs()
    case 5:
      return network.deliverHeld()
    case 6:
      await old?.talk()
      return
    case 7: // a card of another group, typed into the wrong phone
      return phone.write(foreign.cardIds[roll(4)]!, 1 + roll(18), 4)
    default:
      if (roll(2)) return write(phone, roll)
      await phone.talk(roll(2) ? 'page' : 'worker')
  }
}

async function write(phone: SimPhone, roll: Roll): Promise<void> {
  for (let count = 1 + roll(5); count > 0; count--) {
    const score: WrittenScore = roll(12) === 0 ? 'x' : roll(12) === 0 ? null : 2 + roll(8)
    await phone.write(phone.group.cardIds[roll(4)]!, 1 + roll(18), score)
  }
}

async function certainDeath(phone: SimPhone, network: Network): Promise<void> {
  await phone.write(phone.group.cardIds[0]!, 1 + network.roll(18), 5)
  for (let tries = 0; network.deaths.left > 0 && tries < 200; tries++) {
    if ((await phone.talk()) !== 'busy' && network.deaths.left > 0)
      await phone.write(phone.group.cardIds[0]!, 1 + network.roll(18), 5)
  }
}

async function untilEmpty(phone: SimPhone): Promise<void> {
  for (let tries = 0; tries < 5; tries++) {
    const sent = await phone.talk()
    if (sent !== 'busy' && sent.kind === 'empty') return
  }
  throw new Error(`${phone.deviceId} cannot deliver on a good network`)
}

async function contradictory(file: string, phones: readonly SimPhone[]): Promise<readonly string[]> {
  const book = openedBook(file)
  try {
    const found: string[] = []
    for (const phone of phones) {
      const of = book.ofDevice(`${phone.group.groupId}.${phone.deviceId}`)
      found.push(...contradictions(of, phone.wrote, await phone.facts()))
    }
    return found
  } finally {
    book.close()
  }
}

/** The file is whole, nothing waits but on a phone that is gone, and the cards read as the facts say. */
async function whole(
  server: ServerProcess,
  group: PreparedGroup,
  phones: readonly SimPhone[],
  gone: SimPhone | null,
  old: RecordedPhone | null,
): Promise<readonly string[]> {
  const found: string[] = []
  for (const phone of phones) {
    const waits = (await phone.facts()).filter((one) => one.state === 'kept').length
    if (waits && phone !== gone) found.push(`${waits} facts still wait on ${phone.deviceId}`)
  }
  const pack = (await (await fetch(`${server.base}/api/group/${group.link}`)).json()) as CardPack
  const book = openedBook(server.file)
  try {
    found.push(...book.damage())
    if (old) found.push(...old.missing(book.ofDevice(`${group.groupId}.${old.deviceId}`)))
    const rows = book.ofCards(group.cardIds)
    const mine = new Set([...phones.map((one) => one.deviceId), old?.deviceId])
    if (rows.length > new Set(rows.map((row) => row.id)).size || mine.size === 0) found.push('a row is there twice')
    for (const card of pack.cards)
      found.push(
        ...misread(
          card,
          rows.filter((row) => row.cardId === card.cardId),
        ),
      )
  } finally {
    book.close()
  }
  return found
}

const writerOf = (row: Row) => writerKey(row.writer, phoneMark(row.deviceId))

/** A model that knows nothing of ours: the last word of each name on each phone and hole, late facts aside. */
function misread(card: CardPack['cards'][number], rows: readonly Row[]): readonly string[] {
  const last = new Map<string, WrittenScore>()
  for (const row of rows) if (!row.late) last.set(`${writerOf(row)} ${row.hole}`, row.score)
  const found: string[] = []
  const writers = new Set([...rows.map(writerOf), ...Object.keys(card.written)])
  for (const writer of writers)
    for (let hole = 1; hole <= card.holes.length; hole++) {
      const says = card.written[writer]?.[hole - 1] ?? null
      const should = last.get(`${writer} ${hole}`) ?? null
      if (says !== should) found.push(`${card.cardId} hole ${hole} of ${writer} reads ${says}, last written ${should}`)
    }
  return found
}

async function counted(phones: readonly SimPhone[], deaths: number): Promise<Counts> {
  const facts = (await Promise.all(phones.map((phone) => phone.facts()))).flat()
  const of = (state: string) => facts.filter((one) => one.state === state).length
  return {
    facts: facts.length,
    received: of('received'),
    late: of('late'),
    refused: of('refused'),
    waiting: of('kept'),
    deaths,
  }
}
