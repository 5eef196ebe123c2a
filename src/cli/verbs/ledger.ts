import type { Verb } from '#cli/verb'
import { jsonText, parseJsonText } from '#exchange/json-text'
import { ledgerJson } from '#exchange/ledger-json'
import { readSeasonLog } from '#exchange/season-log'
import { seasonLedger } from '#fairness/season-ledger'

export const verb: Verb = {
  name: 'ledger',
  summary: 'a season log in, the ledger of every player out',
  help: 'Reads turnbook/season-log@1 and writes turnbook/ledger@1. Needs no database.',
  options: [],
  run: async (call) => {
    const json = parseJsonText(await call.readInput())
    if (!json.ok) return { kind: 'refused', problems: json.reasons }
    const log = readSeasonLog(json.value)
    if (!log.ok) return { kind: 'refused', problems: log.reasons }
    return { kind: 'done', output: jsonText(ledgerJson(seasonLedger(log.value))) }
  },
}
