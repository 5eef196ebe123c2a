import { groupBy } from '#common/group-by'
import { nameKey, nearNameKey } from '#exchange/table/name-form'
import type { PlayerId } from '#squad/player'
import type { Membership } from '#squad/squad'

/** A player of the club as far as a file is compared with it. */
export type KnownPlayer = {
  readonly id: PlayerId
  readonly name: string
  readonly code: string | null
  readonly keeps: boolean
  readonly wantsToKeep: boolean
  /** Of the squad that the file is for; empty: a guest here, or a player of another squad. */
  readonly memberships: readonly Membership[]
  /** Has been in this squad, as a member or a guest. */
  readonly isOfSquad: boolean
}

export type PlayerIndex = {
  readonly byKey: ReadonlyMap<string, KnownPlayer>
  readonly byName: ReadonlyMap<string, readonly KnownPlayer[]>
  readonly byNearName: ReadonlyMap<string, readonly KnownPlayer[]>
}

/** Who a name and code in a file can be. Two are never chosen between, and alike is never taken for same: a person says. */
export type PlayerMatch =
  | { readonly kind: 'one'; readonly player: KnownPlayer }
  | { readonly kind: 'nobody' }
  | { readonly kind: 'question'; readonly why: MatchQuestion; readonly candidates: readonly KnownPlayer[] }

export type MatchQuestion =
  | 'codeOfAnotherName'
  | 'otherCode'
  | 'severalOfThisName'
  | 'inAnotherSquad'
  | 'alike'

export function indexPlayers(known: readonly KnownPlayer[]): PlayerIndex {
  const squad = known.filter((player) => player.isOfSquad)
  // An id counts like a code, so that a file written here finds its players again.
  const keys = squad.flatMap((p) => [[p.id, p] as const, ...(p.code === null ? [] : [[p.code, p] as const])])
  return {
    byKey: new Map(keys),
    byName: groupBy(known, (player) => nameKey(player.name)),
    byNearName: groupBy(squad, (player) => nearNameKey(player.name)),
  }
}

/** Compares by code or id, then by name; see PlayerMatch. */
export function matchPlayer(
  index: PlayerIndex,
  row: { readonly name: string; readonly code: string | null },
): PlayerMatch {
  const byKey = row.code === null ? undefined : index.byKey.get(row.code)
  if (byKey) {
    const isSameName = row.name === '' || nameKey(byKey.name) === nameKey(row.name)
    return isSameName
      ? { kind: 'one', player: byKey }
      : { kind: 'question', why: 'codeOfAnotherName', candidates: [byKey] }
  }
  const named = index.byName.get(nameKey(row.name)) ?? []
  const here = named.filter((player) => player.isOfSquad)
  const [first] = here
  if (here.length > 1) return { kind: 'question', why: 'severalOfThisName', candidates: here }
  if (first)
    return isOtherCode(row.code, first)
      ? { kind: 'question', why: 'otherCode', candidates: here }
      : { kind: 'one', player: first }
  if (named.length > 0) return { kind: 'question', why: 'inAnotherSquad', candidates: named }
  const near = index.byNearName.get(nearNameKey(row.name)) ?? []
  // A name all of marks has nothing left to look alike by.
  return near.length > 0 && nearNameKey(row.name) !== ''
    ? { kind: 'question', why: 'alike', candidates: near }
    : { kind: 'nobody' }
}

function isOtherCode(code: string | null, player: KnownPlayer): boolean {
  return code !== null && player.code !== null && code !== player.code
}
