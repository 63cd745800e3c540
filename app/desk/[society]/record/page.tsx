import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { dayOf } from '@/app/desk/_frame/moments'
import { officerOr } from '@/app/desk/_frame/officer'
import { AREAS_IN_WORDS } from '@/lib/boards/record-of-acts'
import { deskHome } from '@/lib/society/desk-day'
import { readRecord } from '@/lib/society/read-record'
import { daysOfRecord } from './days-of-record'
import { RecordDay } from './record-day'
import './record.css'

interface Props {
  readonly params: Promise<{ society: string }>
  readonly searchParams: Promise<Record<string, string | string[]>>
}

const CHOICES = ['area', 'act', 'who', 'subject', 'since', 'until'] as const

export default async function RecordOfActs({ params, searchParams }: Props) {
  const { society } = await params
  const asked = await searchParams
  const at = `/desk/${society}/record`
  const actor = await officerOr(society, at)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const record = await readRecord(actor, asked)
  if (!record.ok) return <DeskRefusal answer={record} back={`/desk/${society}`} />
  const { lines, older, people, acts } = record.value
  const one = (name: string) => (typeof asked[name] === 'string' ? asked[name] : '')
  const address = (path: string, more: Readonly<Record<string, string>> = {}) => {
    const kept = CHOICES.flatMap((name) => (one(name) ? [[name, one(name)] as [string, string]] : []))
    const query = new URLSearchParams([...kept, ...Object.entries(more)]).toString()
    return query ? `${path}?${query}` : path
  }
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="record"
      folio="Record of acts"
    >
      <div className="desk-title">
        <div>
          <h1>Record of acts</h1>
          <p className="lead">
            Who did what, when, from which network, before and after. Lines are only ever added: nobody can change one
            here. Press a day to open or fold it.
          </p>
        </div>
        <p className="acts">
          <a className="btn" href={address(`${at}/export`)} download>
            Take it as CSV
          </a>
        </p>
      </div>
      <details className="rule-all record-choose" open={CHOICES.some(one)}>
        <summary>Choose from the record</summary>
        <form className="record-ask" aria-label="Choose from the record">
          <Choose name="area" label="Area" now={one('area')} options={Object.entries(AREAS_IN_WORDS)} />
          <Choose name="act" label="Act" now={one('act')} options={acts.map((line) => [line.act, line.did])} />
          <Choose name="who" label="Who" now={one('who')} options={people.map((name) => [name, name])} />
          <div className="field">
            <label htmlFor="record-subject">To what</label>
            <input id="record-subject" name="subject" defaultValue={one('subject')} maxLength={80} />
          </div>
          <div className="field">
            <label htmlFor="record-since">From</label>
            <input id="record-since" name="since" type="date" defaultValue={one('since')} />
          </div>
          <div className="field">
            <label htmlFor="record-until">Until</label>
            <input id="record-until" name="until" type="date" defaultValue={one('until')} />
          </div>
          <p className="acts">
            <button type="submit" className="btn">
              Show these
            </button>
            <Link href={at}>Show all</Link>
          </p>
        </form>
      </details>
      {lines.length === 0 ? (
        <Empty first="Nothing stands here.">No act in the record fits what you chose.</Empty>
      ) : (
        daysOfRecord(lines, dayOf).map((day) => <RecordDay key={day.day} day={day} />)
      )}
      <p className="acts after">
        {one('olderThan') ? <Link href={address(at)}>To the newest</Link> : null}
        {older === null ? null : <Link href={address(at, { olderThan: String(older) })}>Older acts</Link>}
      </p>
    </DeskFrame>
  )
}

interface ChooseProps {
  readonly name: string
  readonly label: string
  readonly now: string
  readonly options: readonly (readonly [string, string])[]
}

function Choose({ name, label, now, options }: ChooseProps) {
  return (
    <div className="field">
      <label htmlFor={`record-${name}`}>{label}</label>
      <select id={`record-${name}`} name={name} defaultValue={now}>
        <option value="">any</option>
        {options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </div>
  )
}
