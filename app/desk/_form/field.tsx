'use client'

import { type ComponentProps, type ReactNode, useState } from 'react'
import { Choice as PlainChoice } from '@/app/_parts/choice'
import { Field as PlainField, Select as PlainSelect } from '@/app/_parts/field'
import { useFormNow } from './act-form'

const wrongWith = (faults: readonly { place: string; sentence: string }[] | undefined, name: string) =>
  faults?.find((one) => one.place === name)?.sentence

type FieldProps = Omit<ComponentProps<typeof PlainField>, 'defaultValue' | 'wrong'> & {
  readonly initial?: string | number | null
}

/** A labelled field that keeps what was typed and says, in its own place, what is wrong with it. */
export function Field({ initial, ...field }: FieldProps) {
  const { typed, refused } = useFormNow()
  const begin = field.value === undefined ? { defaultValue: typed[field.name]?.[0] ?? initial ?? '' } : {}
  return <PlainField {...begin} {...field} wrong={wrongWith(refused?.faults, field.name)} />
}

interface SelectProps {
  readonly name: string
  readonly label: ReactNode
  readonly hint?: ReactNode
  readonly initial?: string
  readonly value?: string
  readonly onChange?: (value: string) => void
  readonly options: readonly Option[]
  /** After the options: a long list under headings. */
  readonly groups?: readonly { readonly label: string; readonly options: readonly Option[] }[]
}

interface Option {
  readonly value: string
  readonly label: string
}

const optionOf = ({ value, label }: Option) => (
  <option key={value} value={value}>
    {label}
  </option>
)

export function SelectField({ initial, options, groups, value, onChange, ...select }: SelectProps) {
  const { typed, refused } = useFormNow()
  const first = [...options, ...(groups ?? []).flatMap((group) => group.options)][0]?.value
  // Remembered here and not by the browser, which forgets it when the page is read again and the options move.
  const [chosen, setChosen] = useState(typed[select.name]?.[0] ?? initial ?? first ?? '')
  return (
    <PlainSelect
      {...select}
      value={value ?? chosen}
      onChange={(event) => {
        setChosen(event.target.value)
        onChange?.(event.target.value)
      }}
      wrong={wrongWith(refused?.faults, select.name)}
    >
      {options.map(optionOf)}
      {groups?.map((group) => (
        <optgroup key={group.label} label={group.label}>
          {group.options.map(optionOf)}
        </optgroup>
      ))}
    </PlainSelect>
  )
}

type ChoiceProps = Omit<ComponentProps<typeof PlainChoice>, 'defaultChecked' | 'name' | 'value'> & {
  readonly name: string
  readonly value?: string
  readonly initial?: boolean
}

export function Choice({ name, value = 'yes', initial = false, ...choice }: ChoiceProps) {
  const { typed, refused } = useFormNow()
  const begin = choice.checked === undefined ? { defaultChecked: refused ? typed[name]?.includes(value) : initial } : {}
  return <PlainChoice {...begin} {...choice} name={name} value={value} />
}

interface SendProps {
  readonly children: ReactNode
  /** One filled button a page. */
  readonly kind?: 'first' | 'grave' | 'plain'
  readonly name?: string
  readonly value?: string
  /** Why it cannot be pressed yet; it stays reachable and says so. */
  readonly why?: string | false
  /** Of several buttons, the one that saves and does nothing else. */
  readonly saves?: boolean
}

/** The button that sends the form it stands in. */
export function Send({ children, kind, name, value, why, saves }: SendProps) {
  const { pending, waitsFor, savesFirst } = useFormNow()
  const reason = why || waitsFor
  const shut = pending || Boolean(reason)
  return (
    <button
      type={reason ? 'button' : 'submit'}
      name={name}
      value={value}
      className={kind && !(reason && kind === 'first') ? `btn ${kind}` : 'btn'}
      aria-disabled={shut || undefined}
      data-saves={saves ? '' : undefined}
    >
      {savesFirst && !reason ? 'Save, then: ' : null}
      {children}
      {reason ? `: ${reason}` : null}
    </button>
  )
}
