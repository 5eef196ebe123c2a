import { v7 as uuidv7 } from 'uuid'
import type { PitchAnswer, PitchBatch, PitchPack } from '#pitch/pitch-pack'
import { pause } from '../../src/boot/processes.mjs'
import { HttpUser } from './over-http'

/** Coaches of the demo whose next practice is planned. */
const coaches = ['Idris Fallowmere', 'Samir Goldenreed']
const oneInIsPage = 8

export type Load = {
  readonly users: number
  readonly seconds: number
  /** Between two things that one user does, on average. In milliseconds. */
  readonly thinkMs: number
}

export type Outcome = {
  /** Taps that the book said it has, and how often it has each of them afterwards. */
  readonly acknowledged: readonly string[]
  readonly inBook: ReadonlyMap<string, number>
  /** What went wrong, each by its status and address. */
  readonly faults: readonly string[]
  readonly pageMs: readonly number[]
  readonly tapMs: readonly number[]
}

/** Signed-in people open pages and tap at two practices, all at the same time. */
export async function manyAtOnce(address: string, { users, seconds, thinkMs }: Load): Promise<Outcome> {
  const faults: string[] = []
  const acknowledged: string[] = []
  const [pageMs, tapMs]: [number[], number[]] = [[], []]
  const sessions = new Set<string>()
  const sign = async (index: number) => {
    const user = new HttpUser(address)
    const home = await user.signIn(coaches[index % coaches.length] ?? '')
    const [sessionId = ''] = /(?<=\/pitch#)[0-9a-f-]{36}/.exec(await (await user.ask(home)).text()) ?? []
    sessions.add(sessionId)
    return { user, home, sessionId, deviceId: uuidv7(), cursor: 0 }
  }
  // Some at a time: what is measured is not how fast people sign in.
  const signedIn: Awaited<ReturnType<typeof sign>>[] = []
  while (signedIn.length < users) {
    const next = Array.from({ length: Math.min(10, users - signedIn.length) }, (_, index) =>
      sign(signedIn.length + index),
    )
    signedIn.push(...(await Promise.all(next)))
  }
  const end = Date.now() + seconds * 1000
  const timed = async (times: number[], work: () => Promise<Response>): Promise<string | null> => {
    const start = performance.now()
    const response = await work()
    const text = await response.text()
    times.push(performance.now() - start)
    if (response.status === 200) return text
    faults.push(`${response.status} ${new URL(response.url).pathname}`)
    return null
  }
  const tap = async (own: (typeof signedIn)[number]) => {
    const points = { kind: 'points', round: 0, side: 'attack', points: 1 } as const
    const events = [{ id: uuidv7(), deviceId: own.deviceId, at: Date.now(), deed: points }]
    const batch: PitchBatch = { deviceId: own.deviceId, cursor: own.cursor, events }
    const headers = { 'content-type': 'application/json' }
    const how = { method: 'POST', headers, body: JSON.stringify(batch) }
    const text = await timed(tapMs, () => own.user.ask(`/api/pitch/${own.sessionId}`, how))
    const answer: PitchAnswer | null = text && JSON.parse(text)
    if (!answer) return
    own.cursor = answer.cursor
    acknowledged.push(...answer.stored)
    faults.push(...answer.refused.map(({ why }) => `refused: ${why}`))
  }
  const live = async (own: (typeof signedIn)[number], index: number) => {
    // Not all in the same moment, and each at its own pace: without chance, so that a run can be had again.
    await pause((index / users) * thinkMs)
    for (let step = index; Date.now() < end; step += 1) {
      if (step % oneInIsPage === 0) await timed(pageMs, () => own.user.ask(own.home))
      else await tap(own)
      await pause(thinkMs * (0.5 + ((index * 7 + step * 3) % 10) / 10))
    }
  }
  await Promise.all(
    signedIn.map((own, index) => live(own, index).catch((error) => faults.push(String(error)))),
  )
  const inBook = new Map<string, number>()
  for (const sessionId of sessions) {
    const holder = signedIn.find((own) => own.sessionId === sessionId)
    const pack: PitchPack = await (await holder?.user.ask(`/api/pitch/${sessionId}`))?.json()
    for (const { id } of pack.events) inBook.set(id, (inBook.get(id) ?? 0) + 1)
  }
  return { acknowledged, inBook, faults, pageMs, tapMs }
}
