import type { FirstAhead } from '#ahead/draft/first-ahead'
import type { WrittenSince } from '#ahead/explain/what-changed'
import type { AheadRequest } from '#ahead/request'
import type { TermPlan } from '#ahead/term-plan'
import type { Day } from '#common/time'

/** A practice to come as the page names it. */
export type AheadSession = {
  readonly id: string
  readonly day: Day
  readonly startsAt: string | null
  readonly title: string
  readonly place: string
  /** Its turns are planned: it is what its own plan says. */
  readonly isFixed: boolean
}

/** A term's practices to come with all that the page plans them from. */
export type AheadTerm = {
  readonly id: string
  readonly name: string
  readonly firstDay: Day
  readonly lastDay: Day
  readonly version: number
  /** Null: none is saved. */
  readonly stored: TermPlan | null
  /** The last day that is written. */
  readonly asOf: Day | null
  readonly request: AheadRequest
  /** Another one whenever the plan rests on something else: the page then begins anew. */
  readonly basis: string
  readonly first: FirstAhead
  readonly since: readonly WrittenSince[]
  readonly sessions: readonly AheadSession[]
  /** In the order of the request's players. */
  readonly players: readonly { readonly id: string; readonly name: string }[]
  /** Themes as they stand under each other. */
  readonly lines: readonly { readonly id: string; readonly name: string; readonly depth: number }[]
  readonly closed: readonly { readonly name: string; readonly firstDay: Day; readonly lastDay: Day }[]
}

/** The name of a player by its place in the list. */
export type NameOfPlace = (player: number) => string
