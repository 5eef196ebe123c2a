import { formatPath } from '#exchange/json-path'
import type {
  Balance,
  LedgerWarning,
  PlayerLedger,
  RoleBalances,
  SeasonLedger,
} from '#fairness/season-ledger'

export const ledgerFormat = 'turnbook/ledger@1'

/** A season's ledger as `turnbook/ledger@1`, ready for JSON. Seconds to a millionth. */
export function ledgerJson(ledger: SeasonLedger) {
  return {
    format: ledgerFormat,
    players: ledger.players.map(playerJson),
    squad: {
      ballRollingShare: ledger.ballRollingShare,
      warnings: ledger.warnings.map(warningJson),
    },
  }
}

function playerJson(player: PlayerLedger) {
  return {
    id: player.playerId,
    liveSeconds: player.liveSeconds,
    longestRestTurns: player.longestRestTurns,
    roles: rolesJson(player.roles),
    situations: {
      outnumbering: balanceJson(player.situations.outnumbering),
      level: balanceJson(player.situations.level),
      outnumbered: balanceJson(player.situations.outnumbered),
    },
    // Made from entries: a theme may be called __proto__.
    themes: Object.fromEntries(
      [...player.themes].map(([themeId, balance]) => [themeId, balanceJson(balance)]),
    ),
    practice: { roles: rolesJson(player.practiceRoles) },
    match: { roles: rolesJson(player.matchRoles) },
  }
}

function rolesJson(balances: RoleBalances) {
  return {
    attack: balanceJson(balances.attack),
    defend: balanceJson(balances.defend),
    keep: balanceJson(balances.keep),
    rest: balanceJson(balances.rest),
  }
}

function balanceJson(balance: Balance) {
  return {
    seconds: toMillionth(balance.seconds),
    fairSeconds: toMillionth(balance.fairSeconds),
    gapSeconds: toMillionth(balance.gapSeconds),
    turns: balance.turns,
    status: balance.status,
  }
}

function warningJson(warning: LedgerWarning) {
  const message = 'Kept goal although marked not to.'
  if (warning.kind === 'practice') {
    const path = formatPath(['practices', warning.practice, 'turns', warning.turn])
    return { path, player: warning.playerId, message }
  }
  const period = formatPath(['matches', warning.match, 'periods', warning.period])
  return { path: `${period} ${warning.span.from}-${warning.span.to}`, player: warning.playerId, message }
}

const millionths = 1e6

/** Rounded to a millionth, and never −0; numbers too large to have millionths stay as they are. */
function toMillionth(value: number): number {
  const scaled = Math.round(value * millionths)
  return Number.isSafeInteger(scaled) ? scaled / millionths + 0 : value
}
