// The one place where text that somebody typed, pasted or imported is made fit for lists, sheets and boards. What shows
// on no screen is taken out: marks of no width, and marks that turn the direction of writing round, which copying from a
// telephone's contacts or from a spreadsheet brings along and with which one name can pose as another. Every line break
// and odd space becomes a plain space. What no keyboard makes at all is refused in a sentence. Names of any script pass.

import { z } from 'zod'

export const CANNOT_BE_SHOWN = 'There is a sign in it that cannot be shown. Delete it and write it again by hand.'

/** Control characters, halves of a sign, and code points that are no characters. */
const NO_SIGN = /[\p{Cc}\p{Cs}\u{FFFE}\u{FFFF}]/u
const EVERY_NO_SIGN = /[\p{Cc}\p{Cs}\u{FFFE}\u{FFFF}]/gu
const LINE_BREAK = /\r\n|[\n\r\v\f\u0085\u2028\u2029]/g
const SPACE = /[\t\p{Zs}]/gu

const HIDDEN = /\p{Default_Ignorable_Code_Point}/u
const LETTER_OR_MARK = /[\p{L}\p{M}]/u
const WITHOUT_JOINERS = /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}]/u
const MONGOLIAN = /\p{Script=Mongolian}/u
const HAN = /\p{Script=Han}/u
const PICTURE = /[\p{Extended_Pictographic}\p{Emoji_Modifier}]/u
const FLAG = '\u{1F3F4}'

const between = (code: number, from: number, to: number) => code >= from && code <= to

/** Signs of no width that are part of the writing: joiners of Persian and Indic names, variants of Han, flags, pictures. */
function belongs(sign: string, before: string, flag: boolean): boolean {
  const code = sign.codePointAt(0)!
  if (code === 0x200c || code === 0x200d)
    return (LETTER_OR_MARK.test(before) && !WITHOUT_JOINERS.test(before)) || PICTURE.test(before) || before === '\uFE0F'
  if (code === 0xfe0f) return PICTURE.test(before)
  if (between(code, 0xfe00, 0xfe0e) || between(code, 0xe0100, 0xe01ef)) return HAN.test(before)
  if (between(code, 0x180b, 0x180f)) return MONGOLIAN.test(before)
  return between(code, 0xe0020, 0xe007f) && flag
}

function withoutHidden(text: string): string {
  if (!HIDDEN.test(text)) return text
  let clean = ''
  let before = ''
  let flag = false
  for (const sign of text) {
    const hidden = HIDDEN.test(sign)
    if (hidden && !belongs(sign, before, flag)) continue
    flag = sign === FLAG || (flag && hidden)
    // A mark is an accent of the letter before it, which decides for both.
    if (!/\p{Mn}/u.test(sign) || hidden) before = sign
    clean += sign
  }
  // A joiner joins two: at the end of a word it is a mark of no width.
  return clean.replace(/[\u200C\u200D]+(?=\s|$)/gu, '')
}

/** One line, as it is saved. */
export const cleanLine = (text: string): string =>
  withoutHidden(text.replace(LINE_BREAK, ' ')).replace(SPACE, ' ').replace(/ +/g, ' ').normalize('NFC')

/** The same for text of several lines, which keeps them. */
export const cleanLines = (text: string): string =>
  withoutHidden(text.replace(LINE_BREAK, '\n')).replace(SPACE, ' ').normalize('NFC')

/** Line breaks and tabs are controls too, and become spaces. */
const withoutBreaks = (text: string) => text.replace(LINE_BREAK, '\n').replace(/[\n\t]/g, ' ')
/** Asked of the text as it came: two halves with a hidden mark between them are no sign. */
export const hasNoSign = (text: string): boolean => NO_SIGN.test(withoutBreaks(text))

const withoutNoSign = (text: string) =>
  text.replace(LINE_BREAK, '\n').replace(EVERY_NO_SIGN, (sign) => (sign === '\n' || sign === '\t' ? sign : ''))

/** For what cannot be refused any more: the name of a file, or what an older book holds. */
export const harmlessLine = (text: string): string => cleanLine(withoutNoSign(text))
export const harmlessLines = (text: string): string => cleanLines(withoutNoSign(text))

const canBeShown = (text: string) => !hasNoSign(text)
const refusal = { error: CANNOT_BE_SHOWN, abort: true }

/** A line that somebody types: a name, a title, a reason. Limits on its length follow this. */
export const typedLine = (needed?: string) => z.string(needed).refine(canBeShown, refusal).overwrite(cleanLine).trim()

/** A line in what is read back from the book or from a file: never refused for a sign, so that nothing becomes unreadable. */
export const writtenLine = (needed?: string) => z.string(needed).overwrite(harmlessLine)
export const writtenLines = () => z.string().overwrite(harmlessLines)
