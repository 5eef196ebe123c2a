import 'server-only'
import { createHash } from 'node:crypto'
import { AppError } from '#common/app-error'
import { icalendarType } from '#exchange/icalendar/write-icalendar'
import { findCalendarOf } from '#server/calendar-feed'
import { codeOfText, type LinkCode } from '#server/link-code'
import { logFault } from '#server/log'
import { placeOfRequest } from '#server/place-of-request'
import { takeTry, tooManyTries } from '#server/rate-limit'

/** Programs of calendars go by it. */
const ending = '.ics'

/** `GET /calendar/<code>.ics`: a calendar program asks here, without a sign-in, by the secret in the address. */
export async function answerCalendar(request: Request, text: string, now = new Date()): Promise<Response> {
  try {
    const from = await takeTry({ what: 'calendarFrom', key: await placeOfRequest() })
    if (!from.ok) return tooMany(from.seconds)
    const code = codeOfText(text.endsWith(ending) ? text.slice(0, -ending.length) : text)
    const calendar = code && (await findCalendar(code, now))
    if (!calendar) return nothing()
    const of = await takeTry({ what: 'calendarOf', key: code.linkId })
    return of.ok ? given(request, calendar) : tooMany(of.seconds)
  } catch (error) {
    logFault('calendar failed', error)
    return plain(500, 'Something went wrong at the book. Ask again later.')
  }
}

async function findCalendar(code: LinkCode, now: Date): Promise<string | null> {
  try {
    return await findCalendarOf(code, now)
  } catch (error) {
    if (error instanceof AppError && error.code === 'notFound') return null
    throw error
  }
}

/** Whoever has it already is told so by its mark (RFC 9110, 13.1.2). It is asked for anew each time: it may be taken back. */
function given(request: Request, calendar: string): Response {
  const mark = `"${createHash('sha256').update(calendar).digest('base64url')}"`
  const headers = {
    etag: mark,
    'cache-control': 'private, no-cache',
    'x-content-type-options': 'nosniff',
  }
  const known = (request.headers.get('if-none-match') ?? '').split(',').map((one) => one.trim())
  if (known.some((one) => one === '*' || one.replace(/^W\//, '') === mark))
    return new Response(null, { status: 304, headers })
  return new Response(calendar, { headers: { ...headers, 'content-type': icalendarType } })
}

/** The same for a code that never was, that was taken back, and whose person is no longer let in. */
function nothing(): Response {
  return plain(
    404,
    'There is no such calendar. If it was yours, make a new address on your page in the book.',
  )
}

function tooMany(seconds: number): Response {
  return plain(429, tooManyTries(seconds), { 'retry-after': String(seconds) })
}

function plain(status: number, text: string, more: Readonly<Record<string, string>> = {}): Response {
  const headers = {
    ...more,
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
  }
  return new Response(`${text}\n`, { status, headers })
}
