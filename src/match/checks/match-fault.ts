import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'

/** What can be wrong with the periods and spells of a match; `period`, `spell` and `other` are places, from 0. */
export type MatchFault =
  | { readonly rule: 'periodWithoutLength'; readonly period: number }
  | { readonly rule: 'periodOutOfOrder'; readonly period: number; readonly lastEnd: Seconds }
  | { readonly rule: 'spellWithoutLength'; readonly spell: number }
  | { readonly rule: 'spellOutsidePeriod'; readonly spell: number }
  | { readonly rule: 'spellsOverlap'; readonly spell: number; readonly other: number }
  | { readonly rule: 'spellWhileAway'; readonly spell: number; readonly playerId: PlayerId }
