import type { ReactNode } from 'react'
import { Act, ActLink } from '@/app/_parts/act'
import { Choice, Choices } from '@/app/_parts/choice'
import { Tally } from '@/app/_parts/dots'
import { Empty, Skeleton } from '@/app/_parts/empty'
import { Area, Field, Select } from '@/app/_parts/field'
import { Notice, Refusal } from '@/app/_parts/notice'
import { Tabs } from '@/app/_parts/tabs'
import { refused } from '@/lib/result'
import { DialogShown, ToastShown } from './opened'

function Part({ name, children, words }: { name: string; children: ReactNode; words?: string }) {
  return (
    <div className="part">
      <h3>{name}</h3>
      {children}
      {words ? <p className="small second">{words}</p> : null}
    </div>
  )
}

/** Every part in each of its states; set twice on the page, once in each light. */
export function PartsShown({ light }: { light: 'light' | 'dark' }) {
  return (
    <>
      <Part
        name="Buttons"
        words="One filled button a page, for the act that is due. The label names the act and the number. One that cannot be pressed yet says why, and can still be reached."
      >
        <div className="acts">
          <Act type="button" kind="first">
            Freeze 27 handicaps
          </Act>
          <Act type="button">Mend the draw</Act>
          <ActLink href="#main" kind="plain">
            Look at the 27 first
          </ActLink>
          <Act type="button" kind="grave">
            Strike the card
          </Act>
          <Act why="1 hole not agreed">Sign</Act>
        </div>
      </Part>
      <Part name="Tabs">
        <Tabs
          label={`Competitions, ${light}`}
          items={[
            { href: `#${light}-1`, label: 'Singles', current: true },
            { href: `#${light}-2`, label: 'Pairs' },
            { href: `#${light}-3`, label: 'Nearest the pin' },
          ]}
        />
      </Part>
      <Part name="Fields">
        <div className="form">
          <Field label="Guest’s name" name="guest" defaultValue="Sorley Maddock" autoComplete="off" />
          <Field
            label="Handicap figure"
            name="figure"
            hint="Of his own club, with one decimal. A plus figure begins with +."
            wrong="61 is over 54.0, the highest there is. Did you mean 6.1?"
            defaultValue="61"
            inputMode="decimal"
          />
          <Select label="Tees" name="tees" defaultValue="yellow">
            <option value="yellow">Yellow</option>
            <option value="red">Red</option>
          </Select>
          <Area label="Reason, kept with the card" name="reason" defaultValue="Both agree: 5." />
          <Choices question="He plays for">
            <Choice type="radio" name={`plays-${light}`} defaultChecked>
              the guest prize only
            </Choice>
            <Choice type="radio" name={`plays-${light}`}>
              every prize
            </Choice>
          </Choices>
          <Choices question="Who pays" wrong="The host has left the day. Choose somebody who is entered.">
            <Choice type="checkbox" name="host" hint="with the host’s own green fee" defaultChecked>
              Host pays, £60
            </Choice>
          </Choices>
        </div>
      </Part>
      <Part name="Notices">
        <div className="stack">
          <Notice word="To know">
            <p>Numbers went to the course on Saturday. A change now goes to them as a second sheet.</p>
          </Notice>
          <Notice kind="waits" word="Waiting">
            <p>
              <Tally count={3} /> 3 scores on this phone, not yet received.
            </p>
          </Notice>
          <Notice
            kind="differs"
            word="Not agreed"
            acts={
              <>
                <Act type="button">It was 5</Act>
                <Act type="button">It was 6</Act>
              </>
            }
          >
            <p>
              <b>Una wrote 6, you wrote 5.</b> The card can’t be signed until you agree.
            </p>
          </Notice>
          <Refusal
            refused={refused('day-closed', 'The day is closed, so this score was not counted.', [
              { place: 'Hole 15', sentence: 'written at 5.10 pm, received at 6.02 pm' },
            ])}
            kept="It is kept, and the desk can see it as a late fact."
          />
        </div>
      </Part>
      <Part
        name="Passing words"
        words="They stay until they are answered or replaced; nothing to be read runs against a clock."
      >
        <ToastShown />
      </Part>
      <Part name="Dialog" words="Says what will happen, to how many, and whether it can be taken back.">
        <DialogShown />
      </Part>
      <Part name="Nothing here yet">
        <Empty first="No cards yet.">The first group is due in at 2.20 pm.</Empty>
      </Part>
      <Part name="On its way" words="Ruled lines where words will be, and they keep still.">
        <Skeleton rows={3} label={`The board is on its way, ${light}`} />
      </Part>
    </>
  )
}
