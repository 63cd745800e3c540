import { ImportPage } from '../../_import/import-page'
import { readMembersIn } from './actions'

export default async function ImportMembers({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  return (
    <ImportPage
      society={society}
      room="members"
      title="Read in a member list"
      lead="You see row by row what will happen before anything happens."
      action={readMembersIn.bind(null, society)}
      what="the members"
      rowOf="member"
      head="A heading row with name, handicap and M or F is enough; plus figures, stars and blank lines are understood."
    />
  )
}
