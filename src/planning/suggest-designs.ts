import type { ThemeShort } from '#planning/season-gaps'
import type { DesignRound, PracticeDesign } from '#practice/design'
import type { PlayerId } from '#squad/player'

/** A design with why it would be a good one for those who are expected. */
export type SuggestedDesign<Design extends PracticeDesign = PracticeDesign> = {
  readonly design: Design
  /** Expected players who are short of its theme by more than a turn of it. */
  readonly shortPlayers: number
  /** Seconds of its theme that they are short of together. */
  readonly shortSeconds: number
  /** Places of its largest turn; more than are expected means that it has to be made smaller. */
  readonly places: number
  readonly isTooLarge: boolean
}

/** Those that can be played with who is expected first; among them, by how much is short of their theme, then by name. */
export function suggestDesigns<Design extends PracticeDesign>(
  designs: readonly Design[],
  { short, expected }: { readonly short: ThemeShort; readonly expected: readonly PlayerId[] },
): readonly SuggestedDesign<Design>[] {
  return designs
    .map((design) => {
      const ofTheme = design.themeId === null ? undefined : short.get(design.themeId)
      const owed = expected.map((id) => ofTheme?.get(id) ?? 0).filter((seconds) => seconds > aTurn)
      const places = mostPlaces(design.rounds)
      return {
        design,
        shortPlayers: owed.length,
        shortSeconds: owed.reduce((sum, seconds) => sum + seconds, 0),
        places,
        isTooLarge: places > expected.length,
      }
    })
    .sort(
      (a, b) =>
        Number(a.isTooLarge) - Number(b.isTooLarge) ||
        b.shortSeconds - a.shortSeconds ||
        (a.design.name < b.design.name ? -1 : 1),
    )
}

/** Less than a short turn is nothing to plan by; common practice, no source. */
const aTurn = 30

/** Places of the largest turn of some rounds. */
export function mostPlaces(rounds: readonly Pick<DesignRound, 'stations'>[]): number {
  return Math.max(
    0,
    ...rounds.map(({ stations }) =>
      stations.reduce((sum, { attack, defend, keep }) => sum + attack + defend + keep, 0),
    ),
  )
}
