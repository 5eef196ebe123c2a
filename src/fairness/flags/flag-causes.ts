import type { Cause, CausePart } from '#fairness/cause'
import { causeParts, mainPart } from '#fairness/cause'
import { type CureGroup, cureGroups } from '#fairness/flags/flag-rule'
import type { Figures } from '#fairness/session-figures'
import { playedFigure } from '#fairness/standing'
import { noFigure, type StandingFigure } from '#fairness/standing-figure'

/** What flags can be looked up by: the part of the difference that weighs most, or what they are about. */
export type FlagCause = CausePart | Exclude<CureGroup, 'note'>

export const flagCauses: readonly FlagCause[] = [
  ...causeParts,
  ...cureGroups.filter((group) => group !== 'note'),
]

/** `cause` null: no figure of its own, so no part weighs most. */
export function causesOfFlag({
  group,
  cause,
}: {
  readonly group: CureGroup
  readonly cause: Cause | null
}): readonly FlagCause[] {
  const part = cause && mainPart(cause)
  return [...(part ? [part] : []), ...(group === 'note' ? [] : [group])]
}

/** The figure a flag is about; null for what is no difference in time. `subject`: its theme or situation. */
export function figureOfFlag(
  figures: {
    readonly roles: Figures['roles']
    readonly situations: Figures['situations']
    readonly themes: ReadonlyMap<string, StandingFigure>
  },
  { group, subject }: { readonly group: CureGroup; readonly subject: string },
): StandingFigure | null {
  switch (group) {
    case 'attack':
    case 'defend':
      return figures.roles[group]
    case 'waiting':
      return figures.roles.rest
    case 'goal':
      return figures.roles.keep
    case 'match':
      return playedFigure(figures)
    case 'situation':
      return Object.hasOwn(figures.situations, subject)
        ? figures.situations[subject as keyof Figures['situations']]
        : null
    case 'theme':
      return figures.themes.get(subject) ?? noFigure
    case 'note':
      return null
  }
}
