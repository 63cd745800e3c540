import localFont from 'next/font/local'

// The extended Latin files name their range and are not preloaded: they travel only when a name needs them. The italic
// is a family of its own for the same reason, since the card does without it: set it by --slant, never by --serif.
// Written out three times because the font loader reads literals only.

const serif = localFont({
  src: '../../node_modules/@fontsource-variable/newsreader/files/newsreader-latin-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  variable: '--serif-latin',
  adjustFontFallback: 'Times New Roman',
})

const serifExtended = localFont({
  src: '../../node_modules/@fontsource-variable/newsreader/files/newsreader-latin-ext-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  preload: false,
  variable: '--serif-ext',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value: 'U+0100-0130, U+0132-0151, U+0154-02BA, U+1E00-1E9F, U+1EF2-1EFF, U+2C60-2C7F, U+A720-A7FF',
    },
  ],
})

const slant = localFont({
  src: '../../node_modules/@fontsource-variable/newsreader/files/newsreader-latin-wght-italic.woff2',
  weight: '200 800',
  style: 'italic',
  display: 'swap',
  preload: false,
  variable: '--slant-latin',
  adjustFontFallback: 'Times New Roman',
})

const slantExtended = localFont({
  src: '../../node_modules/@fontsource-variable/newsreader/files/newsreader-latin-ext-wght-italic.woff2',
  weight: '200 800',
  style: 'italic',
  display: 'swap',
  preload: false,
  variable: '--slant-ext',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value: 'U+0100-0130, U+0132-0151, U+0154-02BA, U+1E00-1E9F, U+1EF2-1EFF, U+2C60-2C7F, U+A720-A7FF',
    },
  ],
})

const text = localFont({
  src: '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  variable: '--text-latin',
  adjustFontFallback: 'Arial',
})

const textExtended = localFont({
  src: '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  preload: false,
  variable: '--text-ext',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value: 'U+0100-0130, U+0132-0151, U+0154-02BA, U+1E00-1E9F, U+1EF2-1EFF, U+2C60-2C7F, U+A720-A7FF',
    },
  ],
})

export const fontVariables = [serif, serifExtended, slant, slantExtended, text, textExtended]
  .map((face) => face.variable)
  .join(' ')
