import { describe, expect, it } from 'vitest'
import {
  type ClockReading,
  carryOn,
  heardServer,
  type KeptClock,
  keepClock,
  notBefore,
  openClock,
  type PitchClock,
  stampTap,
  timeOf,
} from '#pitch/pitch-clock'
import { seededRandom } from '../support/seeded-random'

const noon = Date.UTC(2026, 2, 29, 0, 0, 0)
const minute = 60_000

/** A phone in a world with a true time: its wall clock may be off and be set, its steady clock may stand still in sleep. */
function aPhone({ wallOff = 0, stopsInSleep = true } = {}) {
  let trueTime = noon
  let wall = noon + wallOff
  let steady = 0
  let wasHidden = false
  const phone = {
    true: () => trueTime,
    pass: (ms: number) => {
      trueTime += ms
      wall += ms
      steady += ms
    },
    sleep: (ms: number) => {
      trueTime += ms
      wall += ms
      if (!stopsInSleep) steady += ms
      wasHidden = true
    },
    hide: () => {
      wasHidden = true
    },
    setWall: (by: number) => {
      wall += by
    },
    reload: (ms: number) => {
      trueTime += ms
      wall += ms
      steady = 0
      wasHidden = true
    },
    read: (): ClockReading => {
      const reading = { wall, steady, wasHidden }
      wasHidden = false
      return reading
    },
  }
  return phone
}

const open = (phone: ReturnType<typeof aPhone>, kept: KeptClock | null = null) =>
  openClock(phone.read(), kept)

describe('the clock of a practice', () => {
  it('goes on with the time', () => {
    const phone = aPhone()
    let clock = open(phone)
    for (let seconds = 0; seconds < 5400; seconds += 7) {
      phone.pass(7000)
      clock = carryOn(clock, phone.read())
      expect(timeOf(clock)).toBe(phone.true())
    }
  })

  it.each([
    ['stands still', true],
    ['goes on', false],
  ])('survives sleep and a locked screen, where the steady clock then %s', (_, stopsInSleep) => {
    const phone = aPhone({ stopsInSleep })
    let clock = open(phone)
    phone.pass(10 * minute)
    clock = carryOn(clock, phone.read())
    phone.sleep(25 * minute)
    clock = carryOn(clock, phone.read())
    expect(timeOf(clock)).toBe(phone.true())
    phone.pass(3 * minute)
    expect(timeOf(carryOn(clock, phone.read()))).toBe(phone.true())
  })

  it('survives a reload and a page that was thrown away', () => {
    const phone = aPhone()
    let clock = open(phone)
    phone.pass(10 * minute)
    clock = carryOn(clock, phone.read())
    const kept = keepClock(clock)
    phone.reload(4 * minute)
    const again = open(phone, kept)
    expect(timeOf(again)).toBe(phone.true())
  })

  it.each([
    ['ahead', 60 * minute],
    ['back', -60 * minute],
    ['by years', -365 * 24 * 60 * minute],
  ])('does not notice a wall clock that is set %s while the page is open', (_, by) => {
    const phone = aPhone()
    let clock = open(phone)
    phone.pass(20 * minute)
    phone.setWall(by)
    clock = carryOn(clock, phone.read())
    expect(timeOf(clock)).toBe(phone.true())
    phone.pass(20 * minute)
    clock = carryOn(clock, phone.read())
    phone.sleep(minute)
    expect(timeOf(carryOn(clock, phone.read()))).toBe(phone.true())
  })

  it('never goes back where the wall clock is set back behind a hidden page', () => {
    const phone = aPhone({ stopsInSleep: false })
    let clock = open(phone)
    phone.pass(20 * minute)
    clock = carryOn(clock, phone.read())
    phone.hide()
    phone.pass(2 * minute)
    phone.setWall(-60 * minute)
    clock = carryOn(clock, phone.read())
    expect(timeOf(clock)).toBe(phone.true())
  })

  it('never goes back over a reload after the wall clock was set back', () => {
    const phone = aPhone()
    let clock = open(phone)
    phone.pass(20 * minute)
    clock = carryOn(clock, phone.read())
    const kept = keepClock(clock)
    phone.setWall(-60 * minute)
    phone.reload(minute)
    const again = open(phone, kept)
    expect(timeOf(again)).toBe(kept.time)
    phone.pass(minute)
    expect(timeOf(carryOn(again, phone.read()))).toBe(kept.time + minute)
  })

  it('is set right by the server, to half of the way there and back', () => {
    const phone = aPhone({ wallOff: -17 * minute })
    let clock = open(phone)
    const sent = phone.read()
    phone.pass(400)
    const serverNow = phone.true()
    phone.pass(600)
    clock = heardServer(clock, { reading: phone.read(), serverNow, sentSteady: sent.steady })
    expect(Math.abs(timeOf(clock) - phone.true())).toBeLessThanOrEqual(500)
    phone.pass(30 * minute)
    clock = carryOn(clock, phone.read())
    expect(Math.abs(timeOf(clock) - phone.true())).toBeLessThanOrEqual(500)
  })

  it('set ahead by hand behind a hidden page is put right by the server, if nothing was tapped meanwhile', () => {
    const phone = aPhone()
    let clock = open(phone)
    phone.pass(20 * minute)
    clock = carryOn(clock, phone.read())
    phone.hide()
    phone.setWall(60 * minute)
    phone.pass(minute)
    const reading = phone.read()
    clock = heardServer(clock, { reading, serverNow: phone.true(), sentSteady: reading.steady })
    expect(timeOf(clock)).toBe(phone.true())
  })

  it('set ahead by hand behind a hidden page, with taps since, keeps their order and the lengths of all that follows', () => {
    const phone = aPhone()
    let clock = open(phone)
    phone.pass(20 * minute)
    clock = carryOn(clock, phone.read())
    phone.hide()
    phone.setWall(60 * minute)
    const times: number[] = []
    for (let balls = 0; balls < 8; balls += 1) {
      const stamped = stampTap(clock, phone.read())
      times.push(stamped.at)
      phone.pass(minute)
      const reading = phone.read()
      clock = heardServer(stamped.clock, { reading, serverNow: phone.true(), sentSteady: reading.steady })
    }
    expect(times.slice(1).map((at, index) => at - (times[index] as number))).toEqual(Array(7).fill(minute))
  })

  it('keeps what the server said over a reload', () => {
    const phone = aPhone({ wallOff: 50 * minute })
    const reading = phone.read()
    const clock = heardServer(openClock(reading, null), {
      reading,
      serverNow: phone.true(),
      sentSteady: reading.steady,
    })
    const kept = keepClock(clock)
    phone.reload(5 * minute)
    expect(timeOf(open(phone, kept))).toBe(phone.true())
  })

  it('knows nothing of summer time: an hour that clocks skip or repeat is no time', () => {
    // 2026-03-29 01:00 UTC clocks go forward in Europe, 2026-10-25 01:00 UTC back (Directive 2000/84/EC).
    for (const change of [Date.UTC(2026, 2, 29, 1), Date.UTC(2026, 9, 25, 1)]) {
      const before = { wall: change - 10 * minute, steady: 0, wasHidden: false }
      const after = { wall: change + 10 * minute, steady: 20 * minute, wasHidden: true }
      expect(timeOf(carryOn(openClock(before, null), after))).toBe(change + 10 * minute)
    }
  })

  it('gives every tap a later time than the tap before, though all are in one moment or the server sets it back', () => {
    const phone = aPhone({ wallOff: 10_000 })
    let clock = open(phone)
    const times: number[] = []
    const tap = () => {
      const stamped = stampTap(clock, phone.read())
      clock = stamped.clock
      times.push(stamped.at)
    }
    tap()
    tap()
    const reading = phone.read()
    clock = heardServer(clock, { reading, serverNow: phone.true(), sentSteady: reading.steady })
    tap()
    phone.pass(minute)
    const later = phone.read()
    clock = heardServer(clock, { reading: later, serverNow: phone.true(), sentSteady: later.steady })
    tap()
    expect(times).toEqual([...times].sort((a, b) => a - b))
    expect(new Set(times).size).toBe(4)
    expect(times.at(-1)).toBe(phone.true())
    expect(times.every((at) => Number.isInteger(at))).toBe(true)
  })

  it('puts a tap behind what another phone has written down, unless that one is far ahead', () => {
    const phone = aPhone()
    const clock = open(phone)
    const near = notBefore(clock, [{ at: noon + 30_000 }])
    expect(stampTap(near, phone.read()).at).toBe(noon + 30_001)
    const far = notBefore(clock, [{ at: noon + 3 * minute }])
    expect(stampTap(far, phone.read()).at).toBe(noon)
  })

  it('after any mixture of all this loses no more than what the wall clock was set back in a reload', () => {
    for (let seed = 1; seed <= 300; seed += 1) {
      const random = seededRandom(seed)
      const phone = aPhone({ stopsInSleep: random.chance(0.5) })
      let clock: PitchClock = open(phone)
      let lost = 0
      let last = Number.NEGATIVE_INFINITY
      for (let step = 0; step < 60; step += 1) {
        const ms = random.whole(0, 5 * minute)
        const what = random.pick(['pass', 'pass', 'pass', 'sleep', 'reload', 'set', 'tap'] as const)
        if (what === 'pass') phone.pass(ms)
        else if (what === 'sleep') phone.sleep(ms)
        else if (what === 'reload') {
          clock = carryOn(clock, phone.read())
          const kept = keepClock(clock)
          const back = random.chance(0.3) ? random.whole(0, 60 * minute) : 0
          phone.setWall(-back)
          phone.reload(ms)
          lost += Math.min(ms, back)
          clock = open(phone, kept)
        } else if (what === 'set') {
          phone.setWall(random.whole(-60, 60) * minute)
        } else {
          const stamped = stampTap(clock, phone.read())
          clock = stamped.clock
          expect(stamped.at).toBeGreaterThan(last)
          last = stamped.at
        }
        clock = carryOn(clock, phone.read())
        // Several taps in one millisecond stand a millisecond apart.
        expect(
          Math.abs(timeOf(clock) - (phone.true() - lost)),
          `seed ${seed}, step ${step}`,
        ).toBeLessThanOrEqual(60)
      }
    }
  })
})
