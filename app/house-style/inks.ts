// The colours once more as figures, for the table of contrasts; a test holds them to app/styles/tokens.css.

export const INKS = {
  light: {
    paper: '#f6f1e5',
    leaf: '#fdfbf5',
    wash: '#ece5d5',
    ink: '#1b2530',
    'ink-2': '#3e4953',
    rule: '#cdc4b2',
    'rule-2': '#767773',
    heather: '#6a3164',
    'heather-wash': '#ebdfe6',
    'on-heather': '#fdfbf5',
    gorse: '#e7b32c',
    'gorse-wash': '#f9e8b8',
    'on-gorse': '#1b2530',
    rowan: '#951d16',
    'rowan-wash': '#fbeae4',
    'on-rowan': '#fdfbf5',
    'margin-rule': '#b79ab2',
  },
  dark: {
    paper: '#161d23',
    leaf: '#1e272f',
    wash: '#28333c',
    ink: '#f4ecdc',
    'ink-2': '#c9c7bd',
    rule: '#3d4852',
    'rule-2': '#8a949a',
    heather: '#e0b4da',
    'heather-wash': '#3a2c40',
    'on-heather': '#161d23',
    gorse: '#ebc055',
    'gorse-wash': '#40371f',
    'on-gorse': '#161d23',
    rowan: '#ffa99a',
    'rowan-wash': '#452622',
    'on-rowan': '#161d23',
    'margin-rule': '#7a6078',
  },
} as const

export type Ink = keyof typeof INKS.light

/** Two inks that meet on a page, what they are there for, and the least contrast asked of them. */
export const PAIRS: readonly { on: readonly [Ink, Ink]; use: string; least: number }[] = [
  { on: ['ink', 'paper'], use: 'text', least: 7 },
  { on: ['ink', 'leaf'], use: 'what is typed', least: 7 },
  { on: ['ink', 'wash'], use: 'level par on the card', least: 7 },
  { on: ['ink-2', 'paper'], use: 'second voice', least: 7 },
  { on: ['ink-2', 'leaf'], use: 'second voice in a dialog', least: 7 },
  { on: ['ink-2', 'wash'], use: 'second voice on a tint', least: 7 },
  { on: ['heather', 'paper'], use: 'links, acts', least: 7 },
  { on: ['heather', 'leaf'], use: 'links in a dialog', least: 7 },
  { on: ['on-heather', 'heather'], use: 'words on the filled button', least: 7 },
  { on: ['ink', 'heather-wash'], use: 'the row you are on', least: 7 },
  { on: ['on-gorse', 'gorse'], use: 'words on gorse', least: 7 },
  { on: ['ink', 'gorse-wash'], use: 'waiting', least: 7 },
  { on: ['rowan', 'paper'], use: 'refusals', least: 7 },
  { on: ['rowan', 'rowan-wash'], use: 'the word of a refusal', least: 7 },
  { on: ['ink', 'rowan-wash'], use: 'differs, refused', least: 7 },
  { on: ['rule-2', 'paper'], use: 'dots of the fold', least: 3 },
  { on: ['rule-2', 'leaf'], use: 'edge of a field', least: 3 },
]

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

/** Contrast of two colours as WCAG 2.2 defines it, 1 to 21. */
export function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (light + 0.05) / (dark + 0.05)
}
