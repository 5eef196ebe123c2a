import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { type ClubTx, inClub } from '#data/in-club'
import { lockSquad } from '#data/squad-lock'
import { isAttendanceReady } from '#exchange/attendance/attendance-plan'
import { decodeText } from '#exchange/csv/decode-text'
import { parseJsonText } from '#exchange/json-text'
import type { FileCheck } from '#server/file-check'
import { saveAttendance } from '#server/import-attendance'
import { type ImportBook, loadCalendarBook, loadImportBook, loadKnownSessions } from '#server/import-book'
import { saveCalendar } from '#server/import-calendar'
import { checkOfAttendance, checkOfCalendar, checkOfRoster } from '#server/import-checks'
import { type FileInput, readBytes } from '#server/import-input'
import { importTimeoutMs, planLog } from '#server/import-log'
import { planAttendanceFile, planCalendarFile, planRosterFile } from '#server/import-plans'
import { saveRoster } from '#server/import-roster'
import { saveSeasonLog } from '#server/import-season-log'

/** What a file would do to the squad's book. Writes nothing. @throws AppError `notAllowed` or `notFound`. */
export async function checkFile(
  viewer: Viewer,
  input: FileInput,
  { now = new Date() }: { readonly now?: Date } = {},
): Promise<Result<FileCheck, Problem>> {
  demand(viewer, 'importFiles', { kind: 'squad', squadId: input.squadId })
  const bytes = await readBytes(input.file)
  if (!bytes.ok) return bytes
  return inClub(
    viewer.clubId,
    async (tx) => {
      const book = await loadImportBook(tx, { squadId: input.squadId, viewer, now })
      if (input.what === 'log') return checkLog(tx, bytes.value, book)
      if (input.what === 'roster') {
        const file = planRosterFile(bytes.value, input, book)
        return file.ok ? accept(checkOfRoster(file.value, input, book)) : file
      }
      if (input.what === 'calendar') {
        const calendar = await loadCalendarBook(tx, input.squadId)
        const file = planCalendarFile(bytes.value, input, { ...book, ...calendar })
        return file.ok ? accept(checkOfCalendar(file.value, input, book)) : file
      }
      const sessions = await loadKnownSessions(tx, input.squadId)
      const file = planAttendanceFile(bytes.value, input, { ...book, sessions })
      return file.ok ? accept(checkOfAttendance(file.value, input, book)) : file
    },
    { timeoutMs: importTimeoutMs },
  )
}

/** Imports a file, all of it or nothing; the sentence says what was written. @throws AppError `notAllowed` or `notFound`. */
export async function importFile(
  viewer: Viewer,
  input: FileInput,
  { now = new Date() }: { readonly now?: Date } = {},
): Promise<Result<string, Problem>> {
  demand(viewer, 'importFiles', { kind: 'squad', squadId: input.squadId })
  const bytes = await readBytes(input.file)
  if (!bytes.ok) return bytes
  return inClub(
    viewer.clubId,
    async (tx) => {
      await lockSquad(tx, input.squadId)
      const by = { personId: viewer.personId, at: now }
      const book = await loadImportBook(tx, { squadId: input.squadId, viewer, now: by.at })
      if (input.what === 'log') {
        const json = readJson(bytes.value)
        const planned = json.ok ? await planLog(tx, json.value, book) : json
        if (!planned.ok) return planned
        const done = await saveSeasonLog(tx, { ...planned.value, book, by })
        return accept(
          `Imported: ${done.practices} practices, ${done.matches} matches, ${done.newPlayers} new players.`,
        )
      }
      if (input.what === 'calendar') return importCalendar(tx, { bytes: bytes.value, input, book, by })
      return input.what === 'roster'
        ? importRoster(tx, { bytes: bytes.value, input, book, by })
        : importAttendance(tx, { bytes: bytes.value, input, book, by })
    },
    { timeoutMs: importTimeoutMs },
  )
}

type Importing = {
  readonly bytes: Uint8Array
  readonly input: FileInput
  readonly book: ImportBook
  readonly by: { readonly personId: string; readonly at: Date }
}

async function importRoster(
  tx: ClubTx,
  { bytes, input, book, by }: Importing,
): Promise<Result<string, Problem>> {
  const file = planRosterFile(bytes, input, book)
  if (!file.ok) return file
  if (!checkOfRoster(file.value, input, book).isReady) return refuse(notReady)
  const done = await saveRoster(tx, { plan: file.value.plan, book, by })
  return accept(`Imported: ${done.newPlayers} new players, ${done.changedPlayers} changed.`)
}

async function importCalendar(
  tx: ClubTx,
  { bytes, input, book, by }: Importing,
): Promise<Result<string, Problem>> {
  const calendar = await loadCalendarBook(tx, input.squadId)
  const file = planCalendarFile(bytes, input, { ...book, ...calendar })
  if (!file.ok) return file
  if (!checkOfCalendar(file.value, input, book).isReady) return refuse(notReady)
  const done = await saveCalendar(tx, { plan: file.value.plan, book, by })
  return accept(`Imported: ${done.newSessions} new practices and matches, ${done.changedSessions} changed.`)
}

async function importAttendance(
  tx: ClubTx,
  { bytes, input, book, by }: Importing,
): Promise<Result<string, Problem>> {
  const sessions = await loadKnownSessions(tx, input.squadId)
  const file = planAttendanceFile(bytes, input, { ...book, sessions })
  if (!file.ok) return file
  const isAllReady = checkOfAttendance(file.value, input, book).isReady && isAttendanceReady(file.value.plan)
  if (!isAllReady) return refuse(notReady)
  const done = await saveAttendance(tx, { plan: file.value.plan, book, by })
  return accept(
    `Imported: ${done.newSessions} new practices and matches, ${done.registers} registers, ${done.newPlayers} new players.`,
  )
}

const notReady: Problem = {
  path: '',
  message:
    'Something is still to be answered, or the book has changed since you looked. Look at the file again; nothing was written.',
}

function readJson(bytes: Uint8Array): Result<unknown, Problem> {
  const text = decodeText(bytes, 'utf-8')
  return text.ok ? parseJsonText(text.value.text) : text
}

async function checkLog(
  tx: ClubTx,
  bytes: Uint8Array,
  book: ImportBook,
): Promise<Result<FileCheck, Problem>> {
  const json = readJson(bytes)
  const planned = json.ok ? await planLog(tx, json.value, book) : json
  if (!planned.ok) return planned
  const { log, plan } = planned.value
  const isNew = ({ kind }: { readonly kind: string }) => kind === 'new'
  const summary = [
    `${log.practices.length} practices and ${log.matches.length} matches, typed in later.`,
    `${plan.players.filter(isNew).length} new players, ${plan.players.filter((one) => !isNew(one)).length} of the book.`,
    `${plan.themes.filter(isNew).length} new themes, ${plan.themes.filter((one) => !isNew(one)).length} of the book.`,
    'The rules of the club stay as they are; those in the file are not taken.',
  ]
  const defaults = { firstDay: book.season?.firstDay ?? book.today, newPlayers: 'add' as const }
  return accept({
    layout: null,
    marks: [],
    problems: [],
    sessions: [],
    rows: [],
    summary,
    defaults,
    isReady: true,
  })
}
