import { describe, expect, it } from 'vitest'
import { explainLineUp } from '#lineup/explain-line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import type { LineUpProblem } from '#lineup/problem'
import { planOf, smallLineUp } from '../support/line-up-builder'

const names: Readonly<Record<string, string>> = { p1: 'Ada', p2: 'Bo', p3: 'Cleo', p4: 'Dan' }

function explained(problem: LineUpProblem, ...rows: readonly string[]): string {
  return explainLineUp(problem, lineUpOf(problem, planOf(...rows)), (id) => names[id] ?? id)
}

const even = ['KK B-', 'BB -K', 'M- KB', '-M MM'] as const

describe('a line-up in words', () => {
  it('is as even as can be, with the changes that takes', () => {
    expect(explained(smallLineUp(), ...even)).toBe(
      'As even as four players allow: everyone plays 15 minutes, with 2 changes during play. Nothing fairer is possible. Exactly equal time for four takes at least so many changes.',
    )
  })

  it('speaks of one player, of times when nobody is there, and of nobody at all', () => {
    const nowhere = { keeper: 0, back: 0, middle: 0, forward: 0 }
    const alone = smallLineUp({ count: 1, places: { ...nowhere, keeper: 1 } })
    expect(explained(alone, 'KK KK')).toContain('As even as one player allows: everyone plays 20 minutes')
    const late = alone.windows.map((window, index) => (index === 0 ? { ...window, places: nowhere } : window))
    const players = [{ isThere: [false, true, true, true] }]
    expect(explained({ ...smallLineUp({ count: 1, players }), windows: late }, '-K KK')).toContain(
      'Nobody is on at times between 0:00 and 5:00, as nobody is there.',
    )
    expect(explained(smallLineUp({ count: 0 }))).toBe('Nobody is there to play.')
  })

  it('is fair, with what exactly equal time would take', () => {
    expect(explained(smallLineUp(), 'KK BB', 'BB --', 'MM KK', '-- MM')).toBe(
      'A fair plan for four players: everyone plays between 10 and 20 minutes, with no change during play. Whether a fairer one is possible is not known yet. Exactly equal time for four would take at least 2 changes; with 0 nobody is more than 5 minutes from it.',
    )
  })

  it('names who is owed time, and who had more', () => {
    const owed = (playSeconds: number) => ({ owed: { playSeconds, keepSeconds: 0, starts: 0 } })
    const players = [owed(300), owed(0), owed(0), owed(-300)]
    expect(explained(smallLineUp({ players }), 'KK KK', 'BB -B', 'M- BM', '-M M-')).toBe(
      'As even as four players allow: everyone plays between 10 and 20 minutes, with 2 changes during play. Nothing fairer is possible. Ada gets more, being owed 5 minutes. Dan gets less, after more in earlier matches.',
    )
  })

  it('names what was asked for that may cost evenness', () => {
    expect(explained(smallLineUp({ rules: { mostChanges: 2 } }), ...even)).toContain(
      'As even as four players and your limit of 2 changes allow: everyone plays 15 minutes',
    )
  })

  it('says of nobody that it gets more or less where all play as long', () => {
    const owed = (playSeconds: number, keeps: boolean) => ({
      keeps,
      owed: { playSeconds, keepSeconds: 0, starts: 0 },
    })
    // Who may keep is due more of the time than the others, so that an even line-up is more than two are due.
    const players = [owed(-300, true), owed(0, true), owed(300, false), owed(300, false)]
    const said = explained(smallLineUp({ players }), 'KK --', '-- KK', 'BB B-', 'M- MB')
    expect(said).toContain('everyone plays')
    const same = explained(smallLineUp({ players }), 'KK B-', 'B- KK', 'MB -B', '-M MM')
    expect(same).toContain('everyone plays 15 minutes')
    expect(same).not.toMatch(/gets? (more|less)/)
  })

  it('names whose promise is missed, and that it cannot be helped', () => {
    const players = [{}, {}, {}, {}].map(() => ({ leastSeconds: 1000 }))
    expect(explained(smallLineUp({ players }), ...even)).toContain(
      'Ada gets 15 minutes of the 16:40 minutes that were promised. Bo gets 15 minutes of the 16:40 minutes that were promised. Cleo gets 15 minutes of the 16:40 minutes that were promised. One more gets less than was promised. With these players and rules the promise cannot be kept better.',
    )
  })

  it('says what those play who come late', () => {
    const late = smallLineUp({ players: [{}, {}, {}, { isThere: [false, false, true, true] }] })
    expect(explained(late, 'KK KK', 'BB B-', 'MM -B', '-- MM')).toContain(
      'who is there throughout plays between 15 and 20 minutes, with 1 change during play.',
    )
    expect(explained(late, 'KK KK', 'BB B-', 'MM -B', '-- MM')).toContain('Dan plays all 10 minutes there.')
  })
})
