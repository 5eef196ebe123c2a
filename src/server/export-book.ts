import 'server-only'
import { type SummedColumn, sumAccounts } from '#data/account-sums'
import type { ClubTx } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import type { SquadDays } from '#data/sessions'
import { listThemes } from '#data/themes'
import { exportKeys } from '#exchange/export-keys'
import { writeBook } from '#exchange/write-book'
import { roles, situations } from '#exposure/column'

/** What every player got and was due, by practice or match, role, situation, line and theme; players by name. */
export async function exportBook(tx: ClubTx, { squadId, from, to }: SquadDays): Promise<string> {
  const sums = await sumAccounts(tx, { squadIds: [squadId], from, to })
  const players = await listSquadPlayers(tx, squadId)
  const keys = exportKeys(players)
  const themes = new Map((await listThemes(tx)).map(({ id, name }) => [id, name]))
  const themeOf = ({ themeId }: SummedColumn) => (themeId === null ? '' : (themes.get(themeId) ?? ''))
  return writeBook(
    players.flatMap(({ id, name }) =>
      sums
        .filter(({ playerId }) => playerId === id)
        .sort((a, b) => orderOf(a) - orderOf(b) || themeOf(a).localeCompare(themeOf(b), 'en'))
        .map((sum) => ({ ...sum, name, player: keys.get(id) ?? id, theme: themeOf(sum) })),
    ),
  )
}

/** Practices first, then roles and situations in their own order. */
function orderOf({ kind, role, situation }: SummedColumn): number {
  const place = situation === null ? 0 : situations.indexOf(situation) + 1
  return (kind === 'practice' ? 0 : 100) + roles.indexOf(role) * 10 + place
}
