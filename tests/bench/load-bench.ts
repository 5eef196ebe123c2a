import { manyAtOnce } from '../support/many-at-once'
import type { Measured } from './measure'
import { quantile } from './quantile'

const load = { users: 200, seconds: 60, thinkMs: 3_000 }

/** 200 signed-in people for a minute, on a book that is served; what is lost ends the run. Times are those of one in twenty. */
export async function benchLoad(address: string): Promise<readonly Measured[]> {
  const { acknowledged, inBook, faults, pageMs, tapMs } = await manyAtOnce(address, load)
  const lost = acknowledged.filter((id) => inBook.get(id) !== 1)
  if (faults.length + lost.length > 0)
    throw new Error(`${faults.length} requests failed, ${lost.length} taps were lost: ${faults.slice(0, 3)}`)
  const healthMs = await timesOfHealth(address)
  const peer = 'its health, asked by as many at once, 95th of 100'
  const peerMs = quantile(healthMs, 0.95)
  const line = (what: string, times: readonly number[]): Measured => ({
    what: `200 people for a minute, nothing lost: ${what}, 95th of 100`,
    ms: quantile(times, 0.95),
    peer,
    peerMs,
    runs: times.length,
  })
  return [line('a page', pageMs), line('a tap', tapMs)]
}

async function timesOfHealth(address: string): Promise<readonly number[]> {
  const times: number[] = []
  const ask = async () => {
    const start = performance.now()
    await (await fetch(`${address}/api/health`)).text()
    times.push(performance.now() - start)
  }
  for (let round = 0; round < 10; round += 1) await Promise.all(Array.from({ length: load.users }, ask))
  return times
}
