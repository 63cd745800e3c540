// The members and guests of the invented society: name, figure, where it is kept, tees. No such people exist.

export interface Invented {
  readonly firstName: string
  readonly familyName: string
  readonly tenths: number
  readonly source: 'home-club' | 'society'
  readonly gender: 'men' | 'women'
}

/** "Corin Haldane 3.1 H M": H has a home-club index, S a society handicap only. */
const MEMBER_LINES = `
Corin Haldane 3.1 H M
Tavish Pellmoor 5.4 H M
Desmond Reevesby 7.2 H M
Niall Corrowan 8.6 H M
Petra Ashgill 9.9 H W
Gethin Maesgoch 10.8 H M
Rufus Tamblyn 11.5 H M
Anjali Verrow 12.3 H W
Lorcan Delahinch 13.0 H M
Piers Oxenhay 13.7 S M
Hamish Kilravel 14.4 H M
Olumide Fairclose 15.1 H M
Bram Wetherlow 15.6 S M
Kester Dunmallet 16.2 H M
Shona Garrowby 16.8 H W
Wilf Thackerstone 17.3 S M
Rohan Pellisade 17.9 H M
Emrys Coldbrook 18.4 H M
Dermot Ballyfane 18.8 S M
Clement Ashworthy 19.5 H M
Freya Holmgarth 20.1 H W
Jago Trevennor 20.7 S M
Magnus Storrey 21.3 H M
Basil Quennerton 21.9 S M
Idris Penhallt 22.6 H M
Maeve Corrigolan 23.2 H W
Vikram Sundale 23.9 S M
Una Tarrablane 24.7 H W
Godfrey Larchmere 25.4 H M
Terrence Highmoor 26.2 S M
Siobhra Kinnegar 27.1 H W
Leopold Wrackham 28.0 S M
Zubair Hathersall 29.3 S M
Beatrix Coldfen 30.9 H W
Alasdair Pinkerby 32.8 S M
Rosalind Thorncote 35.6 S W
`

export const MEMBERS: readonly Invented[] = MEMBER_LINES.trim()
  .split('\n')
  .map((line) => {
    const [firstName, familyName, figure, source, gender] = line.split(' ') as [string, string, string, string, string]
    return {
      firstName,
      familyName,
      tenths: Number(figure.replace('.', '')),
      source: source === 'H' ? 'home-club' : 'society',
      gender: gender === 'M' ? 'men' : 'women',
    }
  })

export const GUESTS = {
  Rushgate: { firstName: 'Fintan', familyName: 'Rushgate', gender: 'men', claimedTenths: 160 },
  Arkwood: { firstName: 'Delphine', familyName: 'Arkwood', gender: 'women', claimedTenths: 280 },
  Maddock: { firstName: 'Sorley', familyName: 'Maddock', gender: 'men', claimedTenths: 110 },
  Wensleigh: { firstName: 'Priya', familyName: 'Wensleigh', gender: 'women', claimedTenths: 330 },
} as const

/** What nobody says aloud: strokes a player is better than the figure, or worse. */
export const TRUTH: Readonly<Record<string, number>> = { Trevennor: -4, Highmoor: 3 }

export const PASSWORD = 'fernbrake since 1987'

export const OFFICERS = [
  { familyName: 'Ashgill', email: 'secretary@example.org', duty: 'secretary' },
  { familyName: 'Maesgoch', email: 'captain@example.org', duty: 'captain' },
  { familyName: 'Dunmallet', email: 'handicaps@example.org', duty: 'handicap-secretary' },
  { familyName: 'Garrowby', email: 'treasurer@example.org', duty: 'treasurer' },
] as const

/** Figures before the changes of the season so far, in tenths, with each step that led to the figure of the list. */
export const EARLIER: Readonly<
  Record<string, readonly { readonly before: 'day-1' | 'day-2'; readonly tenths: number; readonly reason: string }[]>
> = {
  Garrowby: [
    { before: 'day-1', tenths: 164, reason: 'Home-club index at the start of the season' },
    { before: 'day-2', tenths: 168, reason: 'Home-club index revised' },
  ],
  Delahinch: [
    { before: 'day-1', tenths: 133, reason: 'Home-club index at the start of the season' },
    { before: 'day-2', tenths: 130, reason: 'Home-club index revised' },
  ],
  Trevennor: [
    { before: 'day-1', tenths: 204, reason: 'Carried over from last season' },
    { before: 'day-2', tenths: 207, reason: 'Spring review by the committee: 0.3 back' },
  ],
  Highmoor: [
    { before: 'day-1', tenths: 259, reason: 'Carried over from last season' },
    { before: 'day-2', tenths: 262, reason: 'Fewer than 28 points on day 1: 0.3 back' },
  ],
}
