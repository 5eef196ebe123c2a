import { withNamedSquad } from '#cli/named-squad'
import { InputError, type Verb } from '#cli/verb'
import { inClub } from '#data/in-club'
import { lockSquad } from '#data/squad-lock'
import { parseJsonText } from '#exchange/json-text'
import { loadImportBook } from '#server/import-book'
import { importTimeoutMs, planLog } from '#server/import-log'
import { saveSeasonLog } from '#server/import-season-log'

export const verb: Verb = {
  name: 'import',
  summary: 'a season log into the book of a squad, all of it or nothing',
  help: 'Reads turnbook/season-log@1 and enters its players, themes, practices and matches. What the squad has already is refused.',
  options: [
    { name: 'squad', value: 'NAME', means: 'the squad, by name or id' },
    { name: 'club', value: 'NAME', means: 'the club, by name or id; may be left out when there is one' },
  ],
  run: async (call) => {
    const json = parseJsonText(await call.readInput())
    if (!json.ok) return { kind: 'refused', problems: json.reasons }
    const named = { squad: call.options.get('squad'), club: call.options.get('club') }
    const began = Date.now()
    const say = (part: string) => call.say(`${((Date.now() - began) / 1000).toFixed(1)} s  ${part}`)
    return withNamedSquad(named, ({ club, squad, database }) =>
      inClub(
        club.id,
        async (tx) => {
          await lockSquad(tx, squad.id)
          const by = { personId: null, at: new Date() }
          const book = await loadImportBook(tx, { squadId: squad.id, viewer: null, now: by.at })
          const planned = await planLog(tx, json.value, book)
          if (!planned.ok) throw new InputError(planned.reasons)
          const done = await saveSeasonLog(tx, { ...planned.value, book, by, onProgress: say })
          say(
            `${squad.name}: ${done.practices} practices, ${done.matches} matches, ${done.newPlayers} new players, ${done.newThemes} new themes`,
          )
          return { kind: 'done', output: null }
        },
        { database, timeoutMs: importTimeoutMs },
      ),
    )
  },
}
