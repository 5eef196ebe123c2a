import { requestOf } from '#cli/request-of'
import type { Verb } from '#cli/verb'
import { jsonText } from '#exchange/json-text'
import { ledgerJson } from '#exchange/ledger-json'
import { readSeasonLog } from '#exchange/season-log'
import { seasonLedger } from '#fairness/season-ledger'

export const verb: Verb = {
  name: 'ledger',
  summary: 'a season log in, the ledger of every player out',
  help: 'Reads turnbook/season-log@1 and writes turnbook/ledger@1. Needs no database.',
  options: [],
  run: async (call) => {
    const { request } = await requestOf(call, readSeasonLog)
    return { kind: 'done', output: jsonText(ledgerJson(seasonLedger(request))) }
  },
}
