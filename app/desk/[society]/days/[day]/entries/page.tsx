import { SeenDay } from '@/app/desk/_form/seen-day'
import { glanceOf } from '@/app/desk/_frame/day-glance'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { count, figure } from '@/app/desk/_frame/words'
import { shortDateInWords } from '@/lib/boards/dates-in-words'
import { drawnDayOf } from '@/lib/boards/drawn-day'
import type { PersonId } from '@/lib/facts/ids'
import { fullName, nameForList } from '@/lib/facts/person-name'
import { knownGuests } from '@/lib/society/enter-guest'
import { memberList } from '@/lib/society/keep-person'
import { addGuest, addKnownGuest, keepEntries } from './actions'
import { type EntryLine, EntryList } from './entry-list'
import { GuestForm, KnownGuestForm } from './guest-form'
import { GuestsOfDay } from './guests-of-day'
import { WithdrawnList } from './withdrawn-list'

export default async function Entries({ params }: { params: Promise<{ society: string; day: string }> }) {
  const room = await dayRoom(params, 'entries')
  if ('refusal' in room) return room.refusal
  const { society, day, at, actor, desk } = room
  const people = await memberList(actor)
  if (!people.ok) return <DeskRefusal answer={people} back={at} />
  const known = await knownGuests(actor)
  if (!known.ok) return <DeskRefusal answer={known} back={at} />
  const { record, counts, places } = desk
  const where = { society, day }
  const seen = <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
  const entryOf = new Map(record.entries.map((entry) => [entry.personId, entry]))
  const personOf = new Map(people.value.map((person) => [person.personId, person]))
  const isIn = (personId: PersonId) => entryOf.has(personId) && entryOf.get(personId)?.status !== 'withdrawn'
  const hostOf = (hostId: PersonId | null) => {
    const host = hostId === null ? undefined : personOf.get(hostId)
    return host ? fullName(host) : 'the society'
  }
  const members = people.value.filter((person) => person.kind === 'member')
  const hostsWhere = (entered: boolean) =>
    members
      .filter((person) => isIn(person.personId) === entered)
      .map((person) => ({ value: person.personId, label: nameForList(person) }))
  const hosts = { entered: hostsWhere(true), others: hostsWhere(false) }
  const guests = known.value
    .filter((guest) => !isIn(guest.personId))
    .map((guest) => ({
      value: guest.personId,
      label: `${nameForList(guest)}${guest.lastDay ? `, last at ${guest.lastDay}` : ''}`,
      figure: guest.indexTenths === null ? '' : figure(guest.indexTenths),
      hostId: guest.lastHostId !== null && isIn(guest.lastHostId) ? guest.lastHostId : ('' as const),
    }))
  const lines: EntryLine[] = people.value
    .filter((person) => person.kind === 'member' || entryOf.has(person.personId))
    .map((person) => {
      const entry = entryOf.get(person.personId)
      return {
        personId: person.personId,
        entryId: entry?.id ?? null,
        firstName: person.firstName,
        familyName: person.familyName,
        knownAs: person.knownAs,
        gender: person.gender,
        regular: person.regular,
        guestOf: entry?.kind === 'guest' ? hostOf(entry.hostId) : null,
        figure: figure(entry ? entry.indexTenths : person.indexTenths),
        status: entry?.status ?? null,
        roundTeeId: entry?.roundTeeId ?? null,
      }
    })
  const shut = record.status === 'closed'
  return (
    <DayFrame room={room} current="entries">
      <div className="desk-title">
        <div>
          <p className="sc second">
            Day {record.number} · {record.name}
          </p>
          <h1>Entries</h1>
          <p className="lead">
            {count(counts.entered, 'player')} in{places === null ? '' : ` of ${places} places`}
            {counts.waiting > 0 ? `, ${counts.waiting} on the waiting list` : ''}.
            {record.entriesCloseOn ? ` Entries close ${shortDateInWords(record.entriesCloseOn)}.` : ''}
          </p>
        </div>
      </div>
      <EntryList
        action={keepEntries.bind(null, where)}
        lines={lines}
        tees={record.tees.map(({ id, name, gender, isDefault }) => ({ id, name, gender, isDefault }))}
        drawn={drawnDayOf(record, places)}
        shut={shut ? 'The day is closed: the entries cannot be changed any more.' : null}
      >
        {seen}
      </EntryList>
      <GuestsOfDay desk={desk} where={where} hosts={hosts} />
      <WithdrawnList desk={desk} where={where} />
      {shut ? null : (
        <section aria-labelledby="known-guest-h" className="guest">
          <h2 id="known-guest-h">Enter a guest you know</h2>
          <KnownGuestForm action={addKnownGuest.bind(null, where)} hosts={hosts} guests={guests}>
            {seen}
          </KnownGuestForm>
        </section>
      )}
      {shut ? null : (
        <section aria-labelledby="guest-h" className="guest">
          <h2 id="guest-h">Add a new guest</h2>
          <GuestForm action={addGuest.bind(null, where)} hosts={hosts}>
            {seen}
          </GuestForm>
        </section>
      )}
    </DayFrame>
  )
}
