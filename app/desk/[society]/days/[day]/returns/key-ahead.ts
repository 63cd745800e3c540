// A pile is keyed faster than a server answers. What is pressed between taking a card in and the next card on the screen
// belongs to that next card: it is caught here and keyed there, in order, until nothing is left to catch up with.

const KEYS = /^([0-9*+=tTxXnNsS]|Enter|Tab|Backspace|Delete|ArrowLeft|ArrowRight|Home|End)$/

interface Catching {
  /** The card that was taken in, or the one that is catching up. */
  card: string
  readonly keys: string[]
  readonly stop: () => void
}

let catching: Catching | null = null

/** From now on keys are caught, until a card has caught up or a finger or the mouse shows that the pile is left. */
export function catchKeys(card: string): void {
  if (catching) {
    catching.card = card
    return
  }
  const keys: string[] = []
  const onKey = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || !KEYS.test(event.key)) return
    // Tab passes over a hole; backwards it is the browser's.
    if (event.shiftKey && event.key === 'Tab') return
    event.preventDefault()
    event.stopPropagation()
    keys.push(event.key)
  }
  const onPointer = () => letGo()
  window.addEventListener('keydown', onKey, true)
  window.addEventListener('pointerdown', onPointer, true)
  const stop = () => {
    window.removeEventListener('keydown', onKey, true)
    window.removeEventListener('pointerdown', onPointer, true)
    catching = null
  }
  catching = { card, keys, stop }
}

/** The next card has come: true when keys are being caught, which are its own from now on. */
export function claimKeys(card: string): boolean {
  if (!catching || catching.card === card) return false
  catching.card = card
  return true
}

/** The next keys in order, up to an Enter; what is pressed meanwhile is still caught. */
export function nextKeys(): readonly string[] {
  if (!catching) return []
  const enter = catching.keys.indexOf('Enter')
  return catching.keys.splice(0, enter === -1 ? catching.keys.length : enter + 1)
}

/** Ends the catching, and says what nobody took. */
export function letGo(): readonly string[] {
  const keys = catching?.keys ?? []
  catching?.stop()
  return keys
}

/** Where no other card comes within this time, the keyboard is the browser's again. */
export function leaveCard(card: string, grace: number): void {
  setTimeout(() => {
    if (catching?.card === card) letGo()
  }, grace)
}
