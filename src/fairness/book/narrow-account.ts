import type { Situation } from '#exposure/column'
import type { SessionAccount } from '#fairness/account'
import type { ThemeId } from '#themes/theme'

/** What of a session is looked at. `themeIds` null: all of it; `situation` null: all of it. */
export type Narrowing = {
  readonly themeIds: ReadonlySet<ThemeId> | null
  readonly situation: Situation | null
}

export function isNarrow({ themeIds, situation }: Narrowing): boolean {
  return themeIds !== null || situation !== null
}

/** The account with only the rows asked for. Shares and dues still balance, since both belong to the same turns. */
export function narrowAccount(account: SessionAccount, narrowing: Narrowing): SessionAccount {
  if (!isNarrow(narrowing)) return account
  const { themeIds, situation } = narrowing
  const lines = account.lines.filter(
    (line) =>
      (themeIds === null || (line.themeId !== null && themeIds.has(line.themeId))) &&
      (situation === null || line.situation === situation),
  )
  return { ...account, lines }
}
