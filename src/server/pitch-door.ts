import 'server-only'
import { AppError } from '#common/app-error'
import type { Result } from '#common/result'
import { parseJsonText } from '#exchange/json-text'
import { pitchLimits, readBatch } from '#exchange/pitch-batch'
import type { PitchRefusal } from '#pitch/pitch-pack'
import { logFault } from '#server/log'
import { logRefusal } from '#server/log-refusal'
import { listPitchAskers, type PitchAsker, type PitchRefused } from '#server/pitch-asker'
import { syncPitch } from '#server/pitch-sync'
import { loadPitchToday } from '#server/pitch-today'
import { loadPitchPack } from '#server/pitch-views'
import { findSignedIn } from '#server/viewer'

const signedOut = 'You are signed out on this phone: sign in, or scan the coach’s code again.'

// A phone asks here while no page is open, or one that was kept from long ago: it is answered in JSON whatever happens.

/** `GET /api/pitch/<sessionId>`. */
export function answerPack(sessionId: string): Promise<Response> {
  return answer((asker) => loadPitchPack(asker, { sessionId, now: new Date() }))
}

/** `GET /api/pitch`. */
export async function answerToday(): Promise<Response> {
  try {
    const viewer = await findSignedIn()
    if (!viewer) return refusal(401, signedOut)
    return json(200, await loadPitchToday(viewer, new Date()))
  } catch (error) {
    logFault('list of the pitch failed', error)
    return refusal(500, 'Something went wrong at the book. Try again in a moment.')
  }
}

/** `POST /api/pitch/<sessionId>`. */
export async function answerBatch(request: Request, sessionId: string): Promise<Response> {
  if (!isFromHere(request))
    return refusal(403, 'This was sent from a page of another address, and nothing of it was kept.')
  if (!request.headers.get('content-type')?.startsWith('application/json'))
    return refusal(415, 'A batch is sent as application/json.')
  const text = await textOf(request)
  if (text === null)
    return refusal(413, `A batch can have ${pitchLimits.batchLetters} characters at most: send it in parts.`)
  const parsed = parseJsonText(text)
  if (!parsed.ok) return refusal(400, parsed.reasons.map(({ message }) => `The batch ${message}.`).join(' '))
  const read = readBatch(parsed.value)
  if (!read.ok) return refusal(400, read.problems.map(({ path, message }) => `${path} ${message}.`).join(' '))
  return answer((asker) => syncPitch(asker, { sessionId, batch: read.batch, now: new Date() }))
}

/**
 * Asks as each of those the request can come from, the most trusted first, until one may. What is not there and what
 * is not the asker's look the same.
 */
async function answer(work: (asker: PitchAsker) => Promise<Result<object, PitchRefused>>): Promise<Response> {
  try {
    const askers = await listPitchAskers()
    if (askers.length === 0) return refusal(401, signedOut)
    for (const asker of askers) {
      const result = await orNobody(work(asker))
      if (result === null) continue
      if (result.ok) return json(200, result.value)
      const [first] = result.reasons
      return refusal(first?.status ?? 409, first?.why ?? '')
    }
    return refusal(404, 'There is no such practice for you. If you help today, ask the coach for a new code.')
  } catch (error) {
    // Two writers at once: the phone tries again by itself.
    if (error instanceof AppError && error.code === 'conflict') return refusal(503, 'Try again in a moment.')
    logFault('pitch request failed', error)
    return refusal(500, 'Something went wrong at the book. What was tapped is still on the phone.')
  }
}

async function orNobody<Value>(work: Promise<Value>): Promise<Value | null> {
  try {
    return await work
  } catch (error) {
    if (error instanceof AppError && (error.code === 'notFound' || error.code === 'notAllowed')) {
      logRefusal(error)
      return null
    }
    throw error
  }
}

/**
 * Whether a page of this very address sent the request. Browsers name the sender's origin with every POST and let no
 * page change it (WHATWG Fetch, "append a request Origin header"); who names none is no browser's page.
 */
function isFromHere({ headers }: Request): boolean {
  const site = headers.get('sec-fetch-site')
  if (site !== null && site !== 'same-origin') return false
  const host = headers.get('x-forwarded-host') ?? headers.get('host')
  const origin = headers.get('origin')
  if (origin === null || host === null || !URL.canParse(origin)) return false
  return new URL(origin).host === host
}

/** The body as text; null when it is longer than a batch can be. Never more of it is held than that. */
async function textOf({ body }: Request): Promise<string | null> {
  if (!body) return ''
  const decoder = new TextDecoder()
  const reader = body.getReader()
  let text = ''
  for (;;) {
    const { done, value } = await reader.read()
    text += done ? decoder.decode() : decoder.decode(value, { stream: true })
    if (text.length > pitchLimits.batchLetters) {
      await reader.cancel()
      return null
    }
    if (done) return text
  }
}

function json(status: number, value: object): Response {
  return Response.json(value, {
    status,
    headers: { 'cache-control': 'no-store', 'x-content-type-options': 'nosniff' },
  })
}

function refusal(status: number, why: string): Response {
  return json(status, { why } satisfies PitchRefusal)
}
