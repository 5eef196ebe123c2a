import type { ThemeKey } from '#themes/our-themes'
import { noRule, type ProgrammeRule } from '#themes/programme-rule'

/** A rule whose themes are the keys of ours. */
export type OurProgrammeRule = Omit<ProgrammeRule, 'themeId' | 'afterThemeId'> & {
  readonly themeId: ThemeKey
  readonly afterThemeId: ThemeKey | null
}

/** A programme of a term for an age band, which a squad may begin with. */
export type OurProgramme = {
  readonly key: string
  readonly name: string
  /** Ages under which squads of the band play, both belonging to it. */
  readonly ages: { readonly from: number; readonly to: number }
  /** Why it is so, in a sentence for coaches. */
  readonly why: string
  readonly rules: readonly OurProgrammeRule[]
}

const wish = (
  themeId: ThemeKey,
  wishedShare: number,
  rule: Partial<Omit<OurProgrammeRule, 'themeId' | 'wishedShare'>> = {},
): OurProgrammeRule => ({ ...noRule, afterThemeId: null, themeId, wishedShare, ...rule })

/**
 * Our own programmes: small children mostly with the ball, defending together later, nothing new before what it needs.
 * Common practice and our own judgement, no source.
 */
export const ourProgrammes: readonly OurProgramme[] = [
  {
    key: 'firstSteps',
    name: 'Under-7s and under-8s',
    ages: { from: 7, to: 8 },
    why: 'Mostly with the ball: many goes, small numbers, goals. Defending is one against one.',
    rules: [
      wish('findingSpace', 0.3),
      wish('finishing', 0.3, { mostWeeksBetween: 4 }),
      wish('extraPlayer', 0.2, { firstWeek: 3 }),
      wish('slowingDown', 0.2, { firstWeek: 4 }),
    ],
  },
  {
    key: 'playingTogether',
    name: 'Under-9s and under-10s',
    ages: { from: 9, to: 10 },
    why: 'Two and three play together: the free one is found, and the nearest holds up. Winning it back comes after that.',
    rules: [
      wish('extraPlayer', 0.2),
      wish('findingSpace', 0.2),
      wish('finishing', 0.2, { mostWeeksBetween: 5 }),
      wish('slowingDown', 0.15, { firstWeek: 2 }),
      wish('winningBack', 0.1, { firstWeek: 5, afterThemeId: 'slowingDown' }),
      wish('changingOver', 0.15, { firstWeek: 3 }),
    ],
  },
  {
    key: 'asATeam',
    name: 'Under-11s and under-12s',
    ages: { from: 11, to: 12 },
    why: 'As much without the ball as with it; what happens when it is won or lost has its own weeks.',
    rules: [
      wish('extraPlayer', 0.15),
      wish('findingSpace', 0.2),
      wish('finishing', 0.15, { mostWeeksBetween: 5 }),
      wish('slowingDown', 0.15),
      wish('winningBack', 0.15, { firstWeek: 4, afterThemeId: 'slowingDown' }),
      wish('changingOver', 0.2, { firstWeek: 3, leastWeeksBetween: 2 }),
    ],
  },
]

/** The programme for a squad's age; null where we have none. */
export function ourProgrammeFor(ageLimit: number): OurProgramme | null {
  return ourProgrammes.find(({ ages }) => ages.from <= ageLimit && ageLimit <= ages.to) ?? null
}
