// What a browser says of itself, in the few words by which somebody knows the own devices.

const BROWSERS: readonly (readonly [RegExp, string])[] = [
  [/\bEdgA?\//, 'Edge'],
  [/\b(OPR|Opera)\//, 'Opera'],
  [/\bSamsungBrowser\//, 'Samsung Internet'],
  [/\b(Firefox|FxiOS)\//, 'Firefox'],
  [/(Chrome|CriOS|Chromium)\//, 'Chrome'],
  [/\bSafari\//, 'Safari'],
]

const SYSTEMS: readonly (readonly [RegExp, string])[] = [
  [/\biPhone\b/, 'an iPhone'],
  [/\biPad\b/, 'an iPad'],
  [/\bAndroid\b.*\bMobile\b/, 'an Android phone'],
  [/\bAndroid\b/, 'an Android tablet'],
  [/\bWindows\b/, 'a Windows computer'],
  [/\bMacintosh\b/, 'a Mac'],
  [/\bCrOS\b/, 'a Chromebook'],
  [/\bLinux\b/, 'a Linux computer'],
]

/** "Firefox on a Windows computer" */
export function deviceInWords(userAgent: string | null): string {
  const find = (list: typeof BROWSERS) => list.find(([pattern]) => pattern.test(userAgent ?? ''))?.[1]
  const browser = find(BROWSERS)
  const system = find(SYSTEMS)
  if (!browser && !system) return 'A device that does not say what it is'
  return `${browser ?? 'A browser'}${system ? ` on ${system}` : ''}`
}
