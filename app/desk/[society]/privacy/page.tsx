import Link from '@/app/_parts/link'
import { ActForm } from '@/app/desk/_form/act-form'
import { Field, SelectField, Send } from '@/app/desk/_form/field'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { deskHome } from '@/lib/society/desk-day'
import { privacySettings } from '@/lib/society/keep-privacy'
import { keepChoices } from './actions'

export default async function Privacy({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const actor = await officerOr(society, `/desk/${society}/privacy`)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const settings = await privacySettings(actor)
  if (!settings.ok) return <DeskRefusal answer={settings} back={`/desk/${society}`} />
  const { retention, leaversShownAs, juniorsShownAs, searchEngines, privacyContact, noticeMore } = settings.value
  const days = (name: string, label: string, initial: number | null, hint?: string) => (
    <Field name={name} label={label} inputMode="numeric" initial={initial} maxLength={4} hint={hint} />
  )
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="privacy"
      folio="Privacy"
    >
      <div className="desk-title">
        <div>
          <h1>Privacy</h1>
          <p className="lead">
            What the society chose about personal details. The server carries it out once a day, and the{' '}
            <Link href={`/${society}/privacy`}>privacy notice</Link> says it to everybody. The data-protection law of
            your country decides what is lawful: ask there when in doubt.
          </p>
        </div>
      </div>
      <ActForm action={keepChoices.bind(null, society)} label="Privacy settings" className="sheet-form" saves>
        <h2>Days until it is taken out of the book</h2>
        <div className="fields">
          {days(
            'leaversContact',
            'Contact details of leavers',
            retention.leaversContact,
            'After the last day as a member.',
          )}
          {days('leaversPage', 'Private page of leavers', retention.leaversPage, 'Then its link ends.')}
          {days('guestsContact', 'Contact details of guests', retention.guestsContact, 'After their last day.')}
          {days('guestsNames', 'Guests’ names become initials', retention.guestsNames, 'Empty: their names stay.')}
        </div>
        <h2>How people are shown</h2>
        <div className="fields">
          <SelectField
            name="leaversShownAs"
            label="Whoever has left"
            hint="On every sheet, from the day of leaving. Members may ask for less."
            initial={leaversShownAs}
            options={[
              { value: 'name', label: 'by name' },
              { value: 'initials', label: 'by initials' },
              { value: 'former-member', label: 'as “Former member”' },
            ]}
          />
          <SelectField
            name="juniorsShownAs"
            label="Players under 18"
            hint="On public pages. The desk and the group’s card show the name."
            initial={juniorsShownAs}
            options={[
              { value: 'initials', label: 'by initials' },
              { value: 'name', label: 'by name' },
            ]}
          />
          <SelectField
            name="searchEngines"
            label="Search engines"
            hint="Boards, start sheets and results can be read by everybody who knows the address."
            initial={searchEngines ? 'yes' : 'no'}
            options={[
              { value: 'no', label: 'are asked not to list our pages' },
              { value: 'yes', label: 'may list our pages' },
            ]}
          />
        </div>
        <h2>On the notice</h2>
        <div className="fields">
          <Field
            name="privacyContact"
            label="Whom to ask"
            hint="Everybody can read it: a role, or an address of the society."
            initial={privacyContact}
            maxLength={160}
          />
          <Field name="noticeMore" label="Anything more" initial={noticeMore} maxLength={1000} />
        </div>
        <p className="acts">
          <Send kind="first">Keep these choices</Send>
        </p>
      </ActForm>
      <p>
        To take one person’s details out, open the person under{' '}
        <Link href={`/desk/${society}/members?former=yes`}>Members</Link>.
      </p>
    </DeskFrame>
  )
}
