import { describe, expect, it } from 'vitest'
import type { Deed } from '#pitch/pitch-event'
import { foldPitch } from '#pitch/pitch-state'
import { swapSentence } from '#ui/pitch/round-deeds'
import { stepsTogether, undoDeeds } from '#ui/pitch/undo-deeds'
import { aPhone, aPlan, aPlannedTurn, rosterOf } from '../../support/pitch-builder'

const plan = aPlan([aPlannedTurn(0, 'ab/c'), aPlannedTurn(0, 'bd/a'), aPlannedTurn(1, 'ad/b')])
const roster = rosterOf('abcd')
const replan = (sentence: string): Deed => ({
  kind: 'replan',
  fromTurn: 1,
  turns: plan.turns.slice(1),
  sentence,
})

function undone(make: (phone: ReturnType<typeof aPhone>) => void) {
  const phone = aPhone()
  make(phone)
  const { undoable } = foldPitch(plan, roster, phone.events)
  return { phone, steps: stepsTogether(undoable) }
}
const kinds = ({ steps }: ReturnType<typeof undone>) => steps.map(({ event }) => event.deed.kind)

describe('one tap on Undo', () => {
  it('takes back what one tap brought about, a millisecond apart', () => {
    const together = undone((phone) => {
      phone.begin()
      phone.state('a', 'gone', 60)
      phone.tap(60.001, replan('New rotation for 3.'))
    })
    expect(kinds(together)).toEqual(['replan', 'register'])
  })

  it('takes back one tap of a quick thumb', () => {
    const quick = undone((phone) => {
      phone.begin()
      phone.state('a', 'here', 60)
      phone.state('b', 'here', 60.05)
    })
    expect(kinds(quick)).toEqual(['register'])
  })

  it('takes a fairer rotation that came later back with the one it betters, and a swap by itself', () => {
    const bettered = undone((phone) => {
      phone.begin()
      phone.state('a', 'gone', 60)
      phone.tap(60.001, replan('New rotation for 3.'))
      phone.tap(64, replan('As fair as three allow.'))
    })
    expect(kinds(bettered)).toEqual(['replan', 'replan', 'register'])
    const swapped = undone((phone) => {
      phone.begin()
      phone.tap(60.001, replan('New rotation for 3.'))
      phone.tap(64, replan(swapSentence))
    })
    expect(kinds(swapped)).toEqual(['replan'])
  })

  it('opens a turn again whose end was said twice, once for its time and once for how it ended', () => {
    const { phone, steps } = undone((own) => {
      own.begin()
      const start = own.start(10, 0, 'ab/c')
      own.end(40, start)
      own.tap(43, {
        kind: 'turnEnd',
        start,
        endings: [{ station: 0, endingId: 'goal', points: 1, side: 'attack' }],
      })
    })
    for (const [index, deed] of undoDeeds(steps, phone.events).entries()) phone.tap(50 + index / 1000, deed)
    expect(foldPitch(plan, roster, phone.events).live?.index).toBe(0)
  })

  it('answers the second question for who is out for today, and goes back to the very beginning', () => {
    const phone = aPhone()
    phone.here('abcd')
    phone.begin()
    phone.done(120, 0, plan.turns.slice(0, 2))
    phone.state('b', 'out', 130)
    phone.stop(200)
    let second = 300
    for (let left = 20; left > 0; left--) {
      const { undoable } = foldPitch(plan, roster, phone.events)
      if (undoable.length === 0) break
      for (const deed of undoDeeds(stepsTogether(undoable), phone.events)) phone.tap(second++, deed)
    }
    const state = foldPitch(plan, roster, phone.events)
    expect(state.undoable).toEqual([])
    expect(state).toMatchObject({ status: 'notBegun', played: [] })
    expect(state.players.every(({ isOut }) => !isOut)).toBe(true)
  })
})
