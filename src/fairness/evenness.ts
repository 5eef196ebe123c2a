import type { Role } from '#exposure/column'
import type { SessionAccount } from '#fairness/account'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import { countWritten, type WrittenCount } from '#fairness/book/written-count'
import { agreedCauseOf, type Cause, type CausePart, causeParts } from '#fairness/cause'
import type { CureGroup, FlagRule } from '#fairness/flags/flag-rule'
import { flagRules } from '#fairness/flags/registry'
import { giniCoefficient } from '#fairness/indices/gini'
import { jainIndex } from '#fairness/indices/jain'
import { type LorenzPoint, lorenzCurve } from '#fairness/indices/lorenz'
import { sharesOfDue } from '#fairness/indices/ratios'
import { type KindStanding, playedFigure, type SessionKind, standingsNow } from '#fairness/standing'
import type { StandingFigure } from '#fairness/standing-figure'
import { dueStatusOf } from '#fairness/status'
import type { Player, PlayerId } from '#squad/player'
import type { Policy } from '#squad/policy'

/** What evenness is judged by: in practices the four roles, in matches time played and goal. */
export type JudgedColumn = Role | 'played'

/** Whether the squad's coach has said something to a difference. */
export type Answered = 'answered' | 'open' | 'notFlagged'

export type Widest = {
  readonly playerId: PlayerId
  readonly column: JudgedColumn
  readonly part: CausePart
  /** Seconds of that part: negative is short. */
  readonly seconds: number
  readonly answered: Answered
}

/** Indices of share ÷ what was due, after agreements of fewer turns; null for nobody. */
export type Indices = { readonly jain: number | null; readonly gini: number | null }

export type Evenness = {
  readonly kind: SessionKind
  readonly written: WrittenCount
  /** Null: not enough written down to say. */
  readonly said: {
    readonly members: number
    readonly withinBand: number
    /**
     * When anyone is outside the band, the widest gap (while here), of what someone lacks before what someone has too
     * much of; else the widest part of any kind.
     */
    readonly widest: Widest | null
    readonly indices: Readonly<Record<'attack' | 'defend' | 'played', Indices>>
    /** Of time played ÷ due. */
    readonly lorenz: readonly LorenzPoint[]
  } | null
}

/** A flag as far as evenness asks: whose, of what, answered or not. */
export type FlagAnswer = {
  readonly playerId: PlayerId
  readonly rule: FlagRule['name']
  readonly scope: SessionKind
  readonly status: 'open' | 'acknowledged' | 'cleared'
}

export type EvennessInput = {
  /** Of one squad and the days asked about. */
  readonly accounts: readonly SessionAccount[]
  readonly players: readonly Player[]
  readonly policy: Policy
  readonly agreements?: readonly AgreedFewerTurns[]
  readonly flags?: readonly FlagAnswer[]
}

const judgedColumns: Readonly<Record<SessionKind, readonly JudgedColumn[]>> = {
  practice: ['attack', 'defend', 'keep', 'rest'],
  match: ['played', 'keep'],
}

const flagGroups: Readonly<Record<SessionKind, Readonly<Partial<Record<JudgedColumn, CureGroup>>>>> = {
  practice: { attack: 'attack', defend: 'defend', keep: 'goal', rest: 'waiting' },
  match: { played: 'match', keep: 'goal' },
}

/** How even a squad's turns were, in practices or in matches, over its members with time there. Never a ranking. */
export function evennessOf(input: EvennessInput, kind: SessionKind): Evenness {
  const accounts = input.accounts.filter((account) => account.kind === kind)
  const standings = standingsNow({ accounts, agreements: input.agreements })
  const members = input.players.flatMap((player) => {
    const standing = standings.get(player.id)?.[kind]
    return standing ? [{ player, ...standing }] : []
  })
  const { policy, flags = [] } = input
  return evennessOfMembers({ kind, written: countWritten(accounts, policy), members, policy, flags })
}

/** A member's figures in the sessions of one kind that are asked about, summed. */
export type MemberFigures = Pick<KindStanding, 'roles' | 'liveSeconds'> & { readonly player: Player }

/** The same from figures that are summed already. `members`: those without time there are passed over. */
export function evennessOfMembers(input: {
  readonly kind: SessionKind
  readonly written: WrittenCount
  readonly members: readonly MemberFigures[]
  readonly policy: Policy
  readonly flags: readonly FlagAnswer[]
}): Evenness {
  const { kind, written, policy } = input
  if (!written.isEnough) return { kind, written, said: null }
  const members = input.members.filter(({ liveSeconds }) => liveSeconds > 0)
  const rows = members.flatMap((member) => rowsOf(member, { kind, policy }))
  const outside = rows.filter((row) => row.isOutside)
  const part = (role: 'attack' | 'defend' | 'played') =>
    indicesOf(members.map((member) => figureOf(member, role)))
  return {
    kind,
    written,
    said: {
      members: members.length,
      withinBand: members.length - new Set(outside.map((row) => row.player.id)).size,
      widest: widestOf(rows, { kind, flags: input.flags }),
      indices: { attack: part('attack'), defend: part('defend'), played: part('played') },
      lorenz: lorenzCurve(sharesOfDue(members.map(playedFigure))),
    },
  }
}

/** Of what is written, the part that is as planned and so even by construction; 0 when nothing is. */
export function asPlannedShare(written: Pick<WrittenCount, 'written' | 'asPlanned'>): number {
  return written.written === 0 ? 0 : written.asPlanned / written.written
}

/** How the numbers moved from one stretch of time to a later one; null where either says nothing. */
export function changeOf(
  before: Evenness | null,
  now: Evenness,
): { readonly withinBandShare: number; readonly jainPlayed: number } | null {
  if (!before?.said || !now.said || before.said.members === 0 || now.said.members === 0) return null
  const shareOf = (said: { withinBand: number; members: number }) => said.withinBand / said.members
  return {
    withinBandShare: shareOf(now.said) - shareOf(before.said),
    jainPlayed: (now.said.indices.played.jain ?? 1) - (before.said.indices.played.jain ?? 1),
  }
}

type Row = {
  readonly player: Player
  readonly column: JudgedColumn
  readonly isOutside: boolean
  /** On the side that flags speak of: short of playing, over in waiting, either way in goal. */
  readonly isLack: boolean
  readonly cause: Cause
}

function rowsOf(
  member: MemberFigures,
  { kind, policy }: { readonly kind: SessionKind; readonly policy: Policy },
): readonly Row[] {
  const { player } = member
  return judgedColumns[kind].map((column) => {
    const figure = figureOf(member, column)
    const status = dueStatusOf(figure, policy)
    // Being short of goal is a difference only to one who wants to keep.
    const isNoLoss = column === 'keep' && status === 'short' && !player.wantsToKeep
    return {
      player,
      column,
      isOutside: status !== 'within' && !isNoLoss,
      isLack: column === 'keep' || status === (column === 'rest' ? 'over' : 'short'),
      cause: agreedCauseOf(figure),
    }
  })
}

function widestOf(
  rows: readonly Row[],
  at: { readonly kind: SessionKind; readonly flags: readonly FlagAnswer[] },
): Widest | null {
  const anyOutside = rows.filter((row) => row.isOutside)
  const lacking = anyOutside.filter((row) => row.isLack)
  const outside = lacking.length > 0 ? lacking : anyOutside
  const inQuestion = outside.length > 0 ? outside : rows
  const parts: readonly CausePart[] = outside.length > 0 ? ['whileHere'] : causeParts
  const candidates = inQuestion.flatMap((row) =>
    parts.map((part) => ({ row, part, seconds: row.cause[part] })),
  )
  const widest = candidates.reduce<(typeof candidates)[number] | null>(
    (best, one) => (Math.abs(one.seconds) > Math.abs(best?.seconds ?? 0) ? one : best),
    null,
  )
  if (!widest) return null
  const { row, part, seconds } = widest
  return { playerId: row.player.id, column: row.column, part, seconds, answered: answeredOf(row, at) }
}

function answeredOf(
  row: Row,
  { kind, flags }: { readonly kind: SessionKind; readonly flags: readonly FlagAnswer[] },
): Answered {
  const group = flagGroups[kind][row.column]
  const groupOf = new Map<string, CureGroup>(flagRules.map((rule) => [rule.name, rule.cureGroup]))
  const about = flags.filter(
    (flag) =>
      flag.playerId === row.player.id &&
      flag.scope === kind &&
      flag.status !== 'cleared' &&
      groupOf.get(flag.rule) === group,
  )
  if (about.length === 0) return 'notFlagged'
  return about.every((flag) => flag.status === 'acknowledged') ? 'answered' : 'open'
}

function figureOf(member: Pick<MemberFigures, 'roles'>, column: JudgedColumn): StandingFigure {
  return column === 'played' ? playedFigure(member) : member.roles[column]
}

function indicesOf(figures: readonly StandingFigure[]): Indices {
  const ratios = sharesOfDue(figures)
  return { jain: jainIndex(ratios), gini: giniCoefficient(ratios) }
}
