/** A season log as `turnbook/season-log@1` has it, declared apart from the program's own reading of it. */
export type SeasonJson = {
  format: string
  policy?: { toleranceSeconds?: number; toleranceShare?: number; middleAttackShare?: number }
  players: { id: string; keeps?: boolean; name?: string }[]
  themes?: { id: string; name?: string; parent: string | null }[]
  practices?: PracticeInSeason[]
  matches?: MatchInSeason[]
}

export type PracticeInSeason = {
  id: string
  date: string
  title?: string
  lengthSeconds?: number
  register: RegisterInSeason
  turns: { start: number; end: number; theme?: string; stations: StationInSeason[] }[]
}

export type StationInSeason = { attack?: string[]; defend?: string[]; keep?: string[] }

export type MatchInSeason = {
  id: string
  date: string
  periods: { start: number; end: number }[]
  register: RegisterInSeason
  spells: { player: string; line: string; start: number; end: number }[]
}

export type RegisterInSeason = { player: string; from: number; to: number }[]
