import type { Seconds } from '#common/time'
import type { Role, Situation } from '#exposure/column'
import { accountMatch } from '#fairness/account-match'
import { accountPractice } from '#fairness/account-practice'
import type { AccountRules } from '#fairness/account-spans'
import { gapSeconds } from '#fairness/gap'
import {
  type KeptUnaskedInSpan,
  type KeptUnaskedInTurn,
  keptUnaskedInMatch,
  keptUnaskedInPractice,
} from '#fairness/kept-unasked'
import type { SeasonLog } from '#fairness/season-log'
import { addSums, type PlayerSums, type Sums, sumAccounts } from '#fairness/season-sums'
import { type Status, statusOf } from '#fairness/status'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** What a player got and was due of something over a season. Turns are those of practices. */
export type Balance = Readonly<Sums> & { readonly gapSeconds: number; readonly status: Status }

export type RoleBalances = Readonly<Record<Role, Balance>>

export type PlayerLedger = {
  readonly playerId: PlayerId
  /** Live time present, practices and matches. */
  readonly liveSeconds: Seconds
  readonly longestRestTurns: number
  readonly roles: RoleBalances
  readonly situations: Readonly<Record<Situation, Balance>>
  /** Every theme that any turn of the season carries. */
  readonly themes: ReadonlyMap<ThemeId, Balance>
  readonly practiceRoles: RoleBalances
  readonly matchRoles: RoleBalances
}

/** Someone kept goal who was asked not to; `practice` and `match` are places in the log, from 0. */
export type LedgerWarning =
  | ({ readonly kind: 'practice'; readonly practice: number } & KeptUnaskedInTurn)
  | ({ readonly kind: 'match'; readonly match: number } & KeptUnaskedInSpan)

export type SeasonLedger = {
  /** All of the log, in its order. */
  readonly players: readonly PlayerLedger[]
  /** Live ÷ length over the practices whose length was written down; null when none was. */
  readonly ballRollingShare: number | null
  readonly warnings: readonly LedgerWarning[]
}

/**
 * The ledger of a season: what every player of the log got of each role, situation and theme, and what was its due.
 * The log must have passed the checks of its register, turns, periods and spells.
 * @throws InvariantError when the books of a session do not balance.
 */
export function seasonLedger(log: SeasonLog): SeasonLedger {
  const able = new Set(log.players.filter((player) => player.keeps).map((player) => player.id))
  const rules: AccountRules = {
    able,
    // A log says nothing of membership, and its ledger nothing of what was missed.
    members: new Set(),
    middleAttackShare: log.policy.middleAttackShare,
    written: 'typedLater',
  }
  const practices = log.practices.map((practice) => accountPractice(practice, rules))
  const matches = log.matches.map((match) => accountMatch(match, rules))
  const playerIds = log.players.map((player) => player.id)
  const sums = sumAccounts([...practices, ...matches], { playerIds, themeIds: themesOfTurns(log) })
  return {
    players: [...sums].map(([playerId, own]) => playerLedger(playerId, own, log.policy)),
    ballRollingShare: ballRollingShare(
      log.practices.map(({ lengthSeconds }, index) => ({
        lengthSeconds,
        liveSeconds: practices[index]?.liveSeconds ?? 0,
      })),
    ),
    warnings: listWarnings(log, able),
  }
}

/** Live ÷ length over the practices that state a length; null when none does, or none has any. */
export function ballRollingShare(
  practices: readonly { readonly lengthSeconds: Seconds | null; readonly liveSeconds: Seconds }[],
): number | null {
  let live = 0
  let length = 0
  for (const practice of practices) {
    if (practice.lengthSeconds === null) continue
    live += practice.liveSeconds
    length += practice.lengthSeconds
  }
  return length === 0 ? null : live / length
}

function themesOfTurns(log: SeasonLog): ReadonlySet<ThemeId> {
  const themeIds = log.practices.flatMap((practice) => practice.turns.map((turn) => turn.themeId))
  return new Set(themeIds.filter((themeId) => themeId !== null))
}

function playerLedger(playerId: PlayerId, own: PlayerSums, policy: SeasonLog['policy']): PlayerLedger {
  const balance = (sums: Sums): Balance => ({
    ...sums,
    gapSeconds: gapSeconds(sums),
    status: statusOf(sums, policy),
  })
  const balances = (sumsOf: (role: Role) => Sums): RoleBalances => ({
    attack: balance(sumsOf('attack')),
    defend: balance(sumsOf('defend')),
    keep: balance(sumsOf('keep')),
    rest: balance(sumsOf('rest')),
  })
  return {
    playerId,
    liveSeconds: own.liveSeconds,
    longestRestTurns: own.longestRestTurns,
    roles: balances((role) => addSums(own.practice[role], own.match[role])),
    situations: {
      outnumbering: balance(own.situations.outnumbering),
      level: balance(own.situations.level),
      outnumbered: balance(own.situations.outnumbered),
    },
    themes: new Map([...own.themes].map(([themeId, sums]) => [themeId, balance(sums)])),
    practiceRoles: balances((role) => own.practice[role]),
    matchRoles: balances((role) => own.match[role]),
  }
}

function listWarnings(log: SeasonLog, able: ReadonlySet<PlayerId>): readonly LedgerWarning[] {
  return [
    ...log.practices.flatMap((own, practice) =>
      keptUnaskedInPractice(own, { able }).map((kept) => ({ kind: 'practice' as const, practice, ...kept })),
    ),
    ...log.matches.flatMap((own, match) =>
      keptUnaskedInMatch(own, { able }).map((kept) => ({ kind: 'match' as const, match, ...kept })),
    ),
  ]
}
