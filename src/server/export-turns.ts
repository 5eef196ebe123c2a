import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import type { SquadDays } from '#data/sessions'
import { listThemes } from '#data/themes'
import { loadSquadWritten } from '#data/written-sessions'
import { exportKeys } from '#exchange/export-keys'
import { writeTurns } from '#exchange/write-turns'

/** Every turn and spell that stands, in order of time. */
export async function exportTurns(tx: ClubTx, scope: SquadDays): Promise<string> {
  const written = await loadSquadWritten(tx, scope)
  const players = await listSquadPlayers(tx, scope.squadId)
  const names = new Map(players.map(({ id, name }) => [id, name]))
  const keys = exportKeys(players)
  const themes = new Map((await listThemes(tx)).map(({ id, name }) => [id, name]))
  const sessionKeys = exportKeys(written.map(({ session }) => session))
  return writeTurns({
    sessions: written.map((one) => {
      const { id, day, title } = one.session
      const frame = { key: sessionKeys.get(id) ?? id, day, title }
      return one.kind === 'practice'
        ? { ...frame, kind: 'practice', turns: one.practice.turns }
        : { ...frame, kind: 'match', spells: one.match.spells }
    }),
    nameOf: (id) => names.get(id) ?? id,
    keyOf: (id) => keys.get(id) ?? id,
    themeOf: (id) => themes.get(id) ?? id,
  })
}
