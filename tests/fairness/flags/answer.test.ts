import { describe, expect, it } from 'vitest'
import { answerFlag } from '#fairness/flags/answer'

const seconds = (size: number, toleranceSeconds = 600) =>
  ({ finding: { size, toleranceSeconds }, sizeIn: 'seconds' }) as const
const times = (size: number) => ({ finding: { size, toleranceSeconds: 0 }, sizeIn: 'times' }) as const
const acknowledged = (acknowledgedSize: number) => ({ status: 'acknowledged', acknowledgedSize }) as const
const open = { status: 'open', acknowledgedSize: null } as const
const cleared = { status: 'cleared', acknowledgedSize: 700 } as const

describe('a flag judged again', () => {
  it.each([
    ['is raised when it is new', null, seconds(700), { status: 'open', meeting: 'raised' }],
    ['stays open', open, seconds(5000), { status: 'open', meeting: 'staysOpen' }],
    ['is cleared when it no longer holds', open, null, { status: 'cleared', meeting: 'clearedNow' }],
    ['is cleared though acknowledged', acknowledged(700), null, { status: 'cleared', meeting: 'clearedNow' }],
    [
      'is raised again after it was cleared',
      cleared,
      seconds(650),
      { status: 'open', meeting: 'raisedAgain' },
    ],
    ['stays cleared', cleared, null, { status: 'cleared', meeting: 'staysCleared' }],
    ['leaves nothing to store when it never was', null, null, { status: null, meeting: 'nothing' }],
  ] as const)('%s', (_, stored, judged, answer) => {
    expect(answerFlag(stored, judged)).toEqual(answer)
  })
})

describe('an acknowledged flag', () => {
  it('stays silent while it is no worse', () => {
    expect(answerFlag(acknowledged(800), seconds(800)).meeting).toBe('staysAcknowledged')
    expect(answerFlag(acknowledged(800), seconds(650)).meeting).toBe('staysAcknowledged')
  })

  it('comes back when it is worse by more than a quarter', () => {
    expect(answerFlag(acknowledged(800), seconds(1000)).meeting).toBe('staysAcknowledged')
    expect(answerFlag(acknowledged(800), seconds(1001)).meeting).toBe('cameBack')
  })

  it('comes back when it is worse by more than the tolerance', () => {
    expect(answerFlag(acknowledged(4000), seconds(4600)).meeting).toBe('staysAcknowledged')
    expect(answerFlag(acknowledged(4000), seconds(4601)).meeting).toBe('cameBack')
  })

  it('comes back every further time, where times are counted', () => {
    expect(answerFlag(acknowledged(8), times(8)).meeting).toBe('staysAcknowledged')
    expect(answerFlag(acknowledged(8), times(9))).toEqual({ status: 'open', meeting: 'cameBack' })
  })
})
