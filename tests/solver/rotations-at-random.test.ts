import { describe, expect, it } from 'vitest'
import { impossibleJson, rotationJson } from '#exchange/rotation-json'
import { readRotationRequest } from '#exchange/rotation-request'
import { solveRotation } from '#solver/solve-rotation'
import { randomRotation } from '../support/random-rotation'
import { secondRotationCheck } from '../support/second-rotation-check'

const instances = 200
/** Too little for the exact solver in most, enough in some: both ways out are seen. */
const timeLimitMs = (seed: number) => (seed % 10 === 0 ? 700 : 50)

async function answer(seed: number) {
  const json = randomRotation(seed, { timeLimitMs: timeLimitMs(seed) })
  const request = readRotationRequest(json)
  if (!request.ok) throw new Error(JSON.stringify(request.reasons))
  const began = performance.now()
  const impossible = impossibleJson(request.value)
  if (impossible) return { json, impossible }
  const rotation = await solveRotation(request.value.problem, { ...request.value.settings, began })
  return { json, rotation: rotationJson(request.value.problem, rotation, 0) }
}

describe(`${instances} rotations of every kind`, () => {
  it('keep every rule and say what is true, by a second check that shares no code', {
    timeout: 240_000,
  }, async () => {
    const faults: string[] = []
    let answered = 0
    for (let seed = 1; seed <= instances; seed += 1) {
      const { json, rotation, impossible } = await answer(seed)
      if (rotation) {
        answered += 1
        faults.push(...secondRotationCheck(json, rotation).map((fault) => `${seed}: ${fault}`))
      } else if (impossible?.nearest) {
        const near = readRotationRequest(impossible.nearest)
        if (!near.ok || impossibleJson(near.value)) faults.push(`${seed}: the nearest request does not work`)
      }
    }
    expect(faults).toEqual([])
    expect(answered).toBeGreaterThan(instances * 0.8)
  })
})
