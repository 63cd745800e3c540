// What a ruling on a card is: a choice with its clause and its consequence. Defaults are the Rules of Golf 2023; the
// committee's own decision is always allowed, and is kept with its reason.

export type CardFault =
  | 'score-higher'
  | 'score-lower'
  | 'score-lower-unknown-penalty'
  | 'hole-missing'
  | 'not-signed'
  | 'wrong-total'
  | 'handicap-wrong'
  | 'handicap-too-high-in-match'
  | 'handicap-too-low-in-match'
  | 'side-score-not-identified'
  | 'one-partner-only'
  | 'handed-in-late'
  | 'started-late'
  | 'two-cards'

/** What happens to the card, in terms the book can carry out. */
export type Consequence =
  | { readonly kind: 'stands' }
  | { readonly kind: 'corrected' }
  /** What was returned stands, because the hole comes out the same with the strokes that were made. */
  | { readonly kind: 'no-effect' }
  | { readonly kind: 'no-score-on-hole' }
  /** On every hole before the one with which the player began. */
  | { readonly kind: 'no-score-before' }
  /** Of two versions of the card, the whole of one. */
  | { readonly kind: 'one-version' }
  | { readonly kind: 'penalty-strokes'; readonly strokes: number }
  | { readonly kind: 'disqualified' }
  | { readonly kind: 'no-return' }
  | { readonly kind: 'right-handicap' }
  | { readonly kind: 'lower-handicap' }
  | { readonly kind: 'side-disqualified' }
  | { readonly kind: 'committee' }

export interface RulingChoice {
  readonly id: string
  /** "Disqualify the card" */
  readonly name: string
  readonly consequence: Consequence
  /** What it means for the result, in a sentence. */
  readonly sentence: string
  readonly clause: string
  /** The answer of the Rules where nothing else is said. */
  readonly isDefault: boolean
}

export interface CardRuling {
  readonly fault: CardFault
  readonly name: string
  readonly sentence: string
  /** In these readings of the card; in all of them when absent. */
  readonly choices: readonly RulingChoice[]
}
