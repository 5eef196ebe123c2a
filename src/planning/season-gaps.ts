import { toThousandth } from '#common/to-thousandth'
import type { Role, Situation } from '#exposure/column'
import { noSeconds } from '#rotation/fair-seconds'
import { type ColumnSeconds, type RotationColumn, rotationColumns } from '#rotation/problem'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** A column of the season's book as far as planning looks at it. */
export type SeasonColumn = {
  readonly playerId: PlayerId
  readonly kind: 'practice' | 'match'
  readonly isMember: boolean
  readonly role: Role
  readonly situation: Situation | null
  readonly themeId: ThemeId | null
  readonly seconds: number
  /** After agreements. */
  readonly dueSeconds: number
}

/** What a player had and was due of a role in the season so far. */
export type SeasonFigure = { readonly seconds: number; readonly dueSeconds: number }

export type SeasonOfPlayer = {
  readonly gap: ColumnSeconds
  readonly roles: Readonly<Record<Role, SeasonFigure>>
}

const none: SeasonFigure = { seconds: 0, dueSeconds: 0 }
export const noSeason: SeasonOfPlayer = {
  gap: noSeconds,
  roles: { attack: none, defend: none, keep: none, rest: none },
}

/**
 * What everyone carries in from the season: share less even share. Practices only, unless matches are asked for; what
 * was played as a guest carries nothing.
 */
export function seasonOf(
  columns: readonly SeasonColumn[],
  { withMatches }: { readonly withMatches: boolean },
): ReadonlyMap<PlayerId, SeasonOfPlayer> {
  const counted = columns.filter(({ isMember, kind }) => isMember && (withMatches || kind === 'practice'))
  const season = new Map<PlayerId, SeasonOfPlayer>()
  for (const { playerId, role, situation, seconds, dueSeconds } of counted) {
    const { gap, roles } = season.get(playerId) ?? noSeason
    const own: Record<RotationColumn, number> = { ...gap }
    own[role] += seconds - dueSeconds
    if (situation) own[situation] += seconds - dueSeconds
    const had = roles[role]
    season.set(playerId, {
      gap: own,
      roles: {
        ...roles,
        [role]: { seconds: had.seconds + seconds, dueSeconds: had.dueSeconds + dueSeconds },
      },
    })
  }
  return new Map([...season].map(([playerId, own]) => [playerId, { ...own, gap: inThousandths(own.gap) }]))
}

/** What everyone was due in each column so far, in practices of its own squad. */
export function seasonDue(columns: readonly SeasonColumn[]): ReadonlyMap<PlayerId, ColumnSeconds> {
  const due = new Map<PlayerId, Record<RotationColumn, number>>()
  for (const { playerId, kind, isMember, role, situation, dueSeconds } of columns) {
    if (!isMember || kind === 'match') continue
    const own = due.get(playerId) ?? { ...noSeconds }
    own[role] += dueSeconds
    if (situation) own[situation] += dueSeconds
    due.set(playerId, own)
  }
  return new Map([...due].map(([playerId, own]) => [playerId, inThousandths(own)]))
}

function inThousandths(gap: ColumnSeconds): ColumnSeconds {
  const own: Record<RotationColumn, number> = { ...gap }
  for (const column of rotationColumns) own[column] = toThousandth(gap[column])
  return own
}

/** Seconds of playing in each theme that a player is short of; nothing where it is not short. */
export type ThemeShort = ReadonlyMap<ThemeId, ReadonlyMap<PlayerId, number>>

/** Of practices, members only: what they had of a theme without waiting, against what was due. */
export function themeShort(columns: readonly SeasonColumn[]): ThemeShort {
  const gaps = new Map<ThemeId, Map<PlayerId, number>>()
  for (const { playerId, kind, isMember, role, themeId, seconds, dueSeconds } of columns) {
    if (!isMember || kind === 'match' || role === 'rest' || themeId === null) continue
    const own = gaps.get(themeId) ?? new Map<PlayerId, number>()
    own.set(playerId, (own.get(playerId) ?? 0) + dueSeconds - seconds)
    gaps.set(themeId, own)
  }
  return new Map(
    [...gaps].map(([themeId, own]) => [themeId, new Map([...own].filter(([, short]) => short > 0))]),
  )
}
