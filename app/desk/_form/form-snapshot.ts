// What stands in a form, by name: two snapshots show what was changed since the form was loaded.

export type Snapshot = ReadonlyMap<string, string>

/** What a form carries along about the page it was loaded with; nobody types it. */
const CARRIED = new Set(['dayId', 'version', 'seen', 'draw', 'base'])

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement

const controlsOf = (form: HTMLFormElement): readonly Control[] =>
  [...form.elements].filter(
    (one): one is Control =>
      (one instanceof HTMLInputElement || one instanceof HTMLSelectElement || one instanceof HTMLTextAreaElement) &&
      one.name !== '' &&
      !CARRIED.has(one.name) &&
      !one.name.startsWith('$ACTION'),
  )

/** `as-loaded`: as the page came, also when somebody typed before the page was ready. */
export function snapshotOf(form: HTMLFormElement, when: 'now' | 'as-loaded' = 'now'): Snapshot {
  const snapshot = new Map<string, string>()
  for (const control of controlsOf(form)) {
    const value = standsIn(control, when)
    if (value !== null) snapshot.set(control.name, `${snapshot.get(control.name) ?? ''}${value}\n`)
  }
  return snapshot
}

function standsIn(control: Control, when: 'now' | 'as-loaded'): string | null {
  if (control instanceof HTMLSelectElement) return [...control.selectedOptions].map((one) => one.value).join(' ')
  if (control instanceof HTMLTextAreaElement) return when === 'now' ? control.value : control.defaultValue
  switch (control.type) {
    case 'checkbox':
    case 'radio':
      return (when === 'now' ? control.checked : control.defaultChecked) ? control.value : null
    case 'file':
      return [...(control.files ?? [])].map((file) => `${file.name} ${file.size}`).join('\n') || null
    case 'hidden':
      return control.value
    default:
      return when === 'now' ? control.value : control.defaultValue
  }
}

export function changedNames(loaded: Snapshot, now: Snapshot): readonly string[] {
  return [...new Set([...loaded.keys(), ...now.keys()])].filter((name) => loaded.get(name) !== now.get(name))
}

/** The page was read again: what it changed by itself counts as loaded, what was typed still counts as typed. */
export function readAgain(loaded: Snapshot, before: Snapshot, now: Snapshot): Snapshot {
  const next = new Map(loaded)
  for (const name of changedNames(before, now)) {
    const value = now.get(name)
    if (value === undefined) next.delete(name)
    else next.set(name, value)
  }
  return next
}

/** The labels of what was changed, as they stand beside the fields; a list that would not end is counted. */
export function changedInWords(form: HTMLFormElement, names: readonly string[]): string {
  const labels = new Set(
    controlsOf(form)
      .filter((control) => names.includes(control.name) && control.type !== 'hidden')
      .map(labelOf)
      .filter((label) => label !== ''),
  )
  const [first, second, third, ...more] = [...labels]
  if (first === undefined) return ''
  const shown = [first, second, third].filter((label) => label !== undefined)
  return more.length > 0 ? `${shown.join(', ')} and ${more.length} more` : shown.join(', ')
}

function labelOf(control: Control): string {
  const legend = control.type === 'radio' ? control.closest('fieldset')?.querySelector('legend') : null
  const words = legend?.textContent ?? control.getAttribute('aria-label') ?? labelText(control.labels?.[0])
  return words.trim().replace(/\s+/g, ' ')
}

/** The field a refusal is about, by its label; null where the form has no such field in sight. */
export function fieldAt(
  form: HTMLFormElement,
  place: string,
): { readonly label: string; readonly saysSo: boolean } | null {
  const control = controlsOf(form).find((one) => one.name === place && one.type !== 'hidden')
  return control ? { label: labelOf(control), saysSo: control.getAttribute('aria-invalid') === 'true' } : null
}

/** Without the hint that stands inside the label of a tick box. */
function labelText(label: HTMLLabelElement | undefined): string {
  if (!label) return ''
  const bare = label.cloneNode(true)
  if (!(bare instanceof HTMLElement)) return ''
  for (const other of bare.querySelectorAll('.hint, select, input')) other.remove()
  return bare.textContent
}

/**
 * What is saved once the answer is there: the page as it came back, which may carry other fields than were sent; of the
 * fields touched meanwhile, what was sent. `touched` null: it is not known what was touched, and only what was sent counts.
 */
export function savedOf(sent: Snapshot, present: Snapshot, touched: ReadonlySet<string> | null): Snapshot {
  if (touched === null) return sent
  const saved = new Map(present)
  for (const name of touched) {
    const then = sent.get(name)
    if (then === undefined) saved.delete(name)
    else saved.set(name, then)
  }
  return saved
}
