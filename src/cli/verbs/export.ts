import { CouldNot } from '#cli/could-not'
import { withNamedSquad } from '#cli/named-squad'
import { InputError, type Verb } from '#cli/verb'
import { AppError } from '#common/app-error'
import { allDays, isDay } from '#common/time'
import { inClub } from '#data/in-club'
import { type ExportKind, exportFile, exportKinds } from '#server/export-file'

export const verb: Verb = {
  name: 'export',
  summary: 'a squad out of the book: season log, book, roster, attendance, turns, weeks ahead and more',
  help: `--what ${exportKinds.join('|')}. The log is turnbook/season-log@1, ahead is turnbook/plan-request@1 of the term that runs or\ncomes next, icalendar is RFC 5545, the others are CSV. Without days, all there are.`,
  options: [
    { name: 'squad', value: 'NAME', means: 'the squad, by name or id' },
    { name: 'club', value: 'NAME', means: 'the club, by name or id; may be left out when there is one' },
    { name: 'what', value: 'WHAT', means: exportKinds.join(', ') },
    { name: 'from', value: 'DAY', means: 'first day, like 2026-09-01' },
    { name: 'to', value: 'DAY', means: 'last day' },
  ],
  run: async (call) => {
    const what = readWhat(call.options.get('what'))
    const from = readDay(call.options.get('from') ?? allDays.from, '--from')
    const to = readDay(call.options.get('to') ?? allDays.to, '--to')
    const named = { squad: call.options.get('squad'), club: call.options.get('club') }
    const output = await withNamedSquad(named, ({ club, squad, database }) =>
      inClub(club.id, (tx) => exportFile(tx, what, { squadId: squad.id, from, to }), {
        database,
        timeoutMs: 120_000,
      }),
    ).catch(orCouldNot)
    return { kind: 'done', output: output.text }
  },
}

function orCouldNot(error: unknown): never {
  if (error instanceof AppError && error.code === 'noSeason')
    throw new CouldNot('The club has no season yet. Make one on the page of its seasons.')
  throw error
}

function readWhat(given: string | undefined): ExportKind {
  const what = exportKinds.find((kind) => kind === given)
  if (what) return what
  const message = `${given === undefined ? 'is missing' : `${JSON.stringify(given)} is none`}; one of ${exportKinds.join(', ')} would be right`
  throw new InputError([{ path: '--what', message }])
}

function readDay(given: string, path: string): string {
  if (isDay(given)) return given
  throw new InputError([
    { path, message: `${JSON.stringify(given)} is no day; one like 2026-12-31 would be right` },
  ])
}
