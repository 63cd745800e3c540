import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { count } from '@/app/desk/_frame/words'
import { deskHome } from '@/lib/society/desk-day'
import { memberList } from '@/lib/society/keep-person'
import { MemberTable } from './member-table'

interface Props {
  readonly params: Promise<{ society: string }>
  readonly searchParams: Promise<{ former?: string; added?: string; deleted?: string; read?: string }>
}

export default async function Members({ params, searchParams }: Props) {
  const { society } = await params
  const { former, added, deleted, read } = await searchParams
  const at = `/desk/${society}/members`
  const actor = await officerOr(society, at)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const list = await memberList(actor, { withFormer: former === 'yes' })
  if (!list.ok) return <DeskRefusal answer={list} back={`/desk/${society}`} />
  const members = list.value.filter((one) => one.kind === 'member' && one.leftOn === null)
  const withHandicap = members.filter((one) => one.indexTenths !== null)
  const source = (kind: string) => withHandicap.filter((one) => one.handicapSource === kind).length
  const without = members.length - withHandicap.length
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="members"
      folio={home.value.seasons[0]?.name ?? ''}
    >
      <div className="desk-title">
        <div>
          <h1>Members</h1>
          <p className="lead">
            {count(members.length, 'member')}: {source('home-club')} with an index from a home club, {source('society')}{' '}
            with a society handicap{without > 0 ? `, ${without} with no handicap yet` : ''}.
          </p>
        </div>
        <p className="acts">
          <Link className="btn first" href={`${at}/new`}>
            Add a member
          </Link>
          <Link className="btn" href={`${at}/import`}>
            Import a spreadsheet
          </Link>
        </p>
      </div>
      {added ? (
        <p className="said" role="status">
          {added} is added.
        </p>
      ) : null}
      {deleted ? (
        <p className="said" role="status">
          {deleted} was deleted.
        </p>
      ) : null}
      {read && /^\d+(\.\d+){3}$/.test(read) ? (
        <p className="said" role="status">
          Imported: {readIn(read)}.
        </p>
      ) : null}
      {list.value.length === 0 ? (
        <Empty first="Nobody is in the book yet.">Add members one by one, or import the spreadsheet you have.</Empty>
      ) : (
        <MemberTable members={list.value} at={at} />
      )}
      <p>
        {former === 'yes' ? (
          <Link href={at}>Only present members</Link>
        ) : (
          <Link href={`${at}?former=yes`}>Show former members too</Link>
        )}
      </p>
    </DeskFrame>
  )
}

function readIn(counts: string): string {
  const [added, changed, same, leftOut] = counts.split('.')
  return `${added} new, ${changed} changed, ${same} as they were${leftOut === '0' ? '' : `, ${count(Number(leftOut), 'row')} left out`}`
}
