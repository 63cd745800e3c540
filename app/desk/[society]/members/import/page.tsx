import { ImportPage } from '../../_import/import-page'
import { readMembersIn } from './actions'
import { MemberImport } from './member-import'

export default async function ImportMembers({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  return (
    <ImportPage
      society={society}
      room="members"
      title="Import members"
      lead="From the spreadsheet you have, as it is. Nothing is saved until you press Import."
    >
      <MemberImport action={readMembersIn.bind(null, society)} />
    </ImportPage>
  )
}
