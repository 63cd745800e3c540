import localFont from 'next/font/local'

// Three files a family: the letters of our screens and of most names (cut from the packages' faces by _faces/cut.sh, whose
// list of signs is the first range), the other letters of western Europe, and the rest of Latin. The last two travel only
// when a name needs them. The italic is a family of its own, since the card does without it: set it by --slant, never by
// --serif. Written out for each because the font loader reads literals only.

const serif = localFont({
  src: './_faces/newsreader.woff2',
  weight: '400 700',
  display: 'swap',
  variable: '--serif-latin',
  adjustFontFallback: 'Times New Roman',
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+0020-007E, U+00A0, U+00A3, U+00B1, U+00B7, U+00BD, U+00C9, U+00D7, U+00E0-00E2, U+00E7-00EB, U+00ED, U+00F1, U+00F3, U+00F6, U+00F7, U+00FA, U+00FC, U+2013, U+2014, U+2018, U+2019, U+201C, U+201D, U+2022, U+2026, U+20AC, U+2212',
    },
  ],
})

const serifMore = localFont({
  src: '../../node_modules/@fontsource-variable/newsreader/files/newsreader-latin-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  preload: false,
  variable: '--serif-more',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+00A1-00A2, U+00A4-00B0, U+00B2-00B6, U+00B8-00BC, U+00BE-00C8, U+00CA-00D6, U+00D8-00DF, U+00E3-00E6, U+00EC, U+00EE-00F0, U+00F2, U+00F4-00F5, U+00F8-00F9, U+00FB, U+00FD-00FF, U+0131, U+0152-0153, U+02BC, U+02C6, U+02DA, U+02DC, U+201A, U+201E, U+2032-2033, U+2039-203A, U+2122, U+2215',
    },
  ],
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
  src: './_faces/newsreader-italic.woff2',
  weight: '400 500',
  style: 'italic',
  display: 'swap',
  preload: false,
  variable: '--slant-latin',
  adjustFontFallback: 'Times New Roman',
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+0020-007E, U+00A0, U+00A3, U+00B1, U+00B7, U+00BD, U+00C9, U+00D7, U+00E0-00E2, U+00E7-00EB, U+00ED, U+00F1, U+00F3, U+00F6, U+00F7, U+00FA, U+00FC, U+2013, U+2014, U+2018, U+2019, U+201C, U+201D, U+2022, U+2026, U+20AC, U+2212',
    },
  ],
})

const slantMore = localFont({
  src: '../../node_modules/@fontsource-variable/newsreader/files/newsreader-latin-wght-italic.woff2',
  weight: '200 800',
  style: 'italic',
  display: 'swap',
  preload: false,
  variable: '--slant-more',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+00A1-00A2, U+00A4-00B0, U+00B2-00B6, U+00B8-00BC, U+00BE-00C8, U+00CA-00D6, U+00D8-00DF, U+00E3-00E6, U+00EC, U+00EE-00F0, U+00F2, U+00F4-00F5, U+00F8-00F9, U+00FB, U+00FD-00FF, U+0131, U+0152-0153, U+02BC, U+02C6, U+02DA, U+02DC, U+201A, U+201E, U+2032-2033, U+2039-203A, U+2122, U+2215',
    },
  ],
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
  src: './_faces/atkinson-hyperlegible-next.woff2',
  weight: '400 700',
  display: 'swap',
  variable: '--text-latin',
  adjustFontFallback: 'Arial',
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+0020-007E, U+00A0, U+00A3, U+00B1, U+00B7, U+00BD, U+00C9, U+00D7, U+00E0-00E2, U+00E7-00EB, U+00ED, U+00F1, U+00F3, U+00F6, U+00F7, U+00FA, U+00FC, U+2013, U+2014, U+2018, U+2019, U+201C, U+201D, U+2022, U+2026, U+20AC, U+2212',
    },
  ],
})

const textMore = localFont({
  src: '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  preload: false,
  variable: '--text-more',
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value:
        'U+00A1-00A2, U+00A4-00B0, U+00B2-00B6, U+00B8-00BC, U+00BE-00C8, U+00CA-00D6, U+00D8-00DF, U+00E3-00E6, U+00EC, U+00EE-00F0, U+00F2, U+00F4-00F5, U+00F8-00F9, U+00FB, U+00FD-00FF, U+0131, U+0152-0153, U+02BC, U+02C6, U+02DA, U+02DC, U+201A, U+201E, U+2032-2033, U+2039-203A, U+2122, U+2215',
    },
  ],
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

const faces = [serif, serifMore, serifExtended, slant, slantMore, slantExtended, text, textMore, textExtended]
export const fontVariables = faces.map((face) => face.variable).join(' ')
