import { describe, expect, it } from 'vitest'
import { expectedEnd } from '#ahead/expected-end'
import { columnLeans } from '#ahead/explain/column-leans'
import { explainPractice } from '#ahead/explain/explain-practice'
import { favoursOf, leastFavour } from '#ahead/explain/favours-of'
import { whyTheme } from '#ahead/explain/why-theme'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { noSeats } from '#ahead/seat-column'
import { noSeconds } from '#rotation/fair-seconds'
import { rotationColumns } from '#rotation/problem'
import { plainAhead, plainPlayer } from '../../support/plain-ahead'
import { randomAhead } from '../../support/random-ahead'

const names = ['Ada', 'Ben', 'Cem', 'Dot', 'Eli', 'Fay']
const nameOf = (player: number) => names[player] ?? '?'

/** Six players, of whom some are short of attacking so many seconds and get as much more in the only practice. */
function shortOfAttack(seconds: readonly number[], more: Partial<AheadProblem> = {}) {
  const problem = plainAhead({ weeks: [3], themes: [{ name: 'Finishing' }, {}], problem: more })
  const players = seconds.map((short, at) =>
    plainPlayer({ id: `p${at}`, gap: { ...noSeconds, attack: -short }, themeSeconds: [0, 0] }),
  )
  const plan: AheadPlan = {
    choices: [0],
    leans: [seconds.map((short) => ({ ...noSeats, attackAlone: short }))],
  }
  return { problem: { ...problem, players }, plan }
}

const sentenceOf = (
  { problem, plan }: ReturnType<typeof shortOfAttack>,
  name: typeof nameOf | null = nameOf,
) => explainPractice(problem, plan, { practice: 0, nameOf: name })

describe('why a practice is what it is', () => {
  it('names whom it favours, and of what', () => {
    expect(sentenceOf(shortOfAttack([300, 0, 240, 0, 0, 0]))).toBe(
      '“Finishing” has not been met this term; it gives Ada and Cem more attacking.',
    )
  })

  it('names three and counts the others', () => {
    expect(sentenceOf(shortOfAttack([600, 540, 480, 420, 360, 300]))).toBe(
      '“Finishing” has not been met this term; it gives Ada, Ben, Cem and three others more attacking.',
    )
  })

  it('names nobody where nobody is to be named', () => {
    const said = sentenceOf(shortOfAttack([300, 0, 240, 0, 0, 0]), null)
    expect(said).toBe('“Finishing” has not been met this term; it gives two players more attacking.')
  })

  it('says that all share alike where it makes up for nothing', () => {
    expect(sentenceOf(shortOfAttack([0, 0, 0, 0, 0, 0]))).toBe(
      '“Finishing” has not been met this term; everyone shares its places alike.',
    )
  })

  it('says how far a theme is behind its part of the term', () => {
    // Half of 40 minutes played is due; five were met: 15 minutes behind.
    const { problem, plan } = shortOfAttack([0])
    const players = problem.players.map((own) => ({ ...own, playedSeconds: 2400, themeSeconds: [300, 0] }))
    expect(sentenceOf({ problem: { ...problem, players }, plan })).toBe(
      '“Finishing” is about 15 min a player behind its part of the term; everyone shares its places alike.',
    )
  })

  it('says first what leaves no choice: what is held, a kept week, a theme that must come back, a last week', () => {
    const held = { theme: 0, design: null }
    const { problem, plan } = shortOfAttack([0])
    const whyOf = (change: Partial<AheadProblem>) => whyTheme({ ...problem, ...change }, plan, 0)?.kind
    const met = [{ day: '2026-01-06', week: 1, themes: [0], design: null }]
    const rule = (own: object) => problem.themes.map((theme, at) => (at === 0 ? { ...theme, ...own } : theme))
    expect(whyOf({ practices: problem.practices.map((own) => ({ ...own, held })) })).toBe('held')
    expect(whyOf({ blocks: [{ theme: 0, firstWeek: 3, lastWeek: 4 }] })).toBe('block')
    expect(whyOf({ met, themes: rule({ mostWeeksBetween: 2 }) })).toBe('comesBack')
    expect(whyOf({ themes: rule({ lastWeek: 3 }) })).toBe('lastWeek')
    expect(whyOf({ met })).toBe('other')
    // The only practice is of week 3: what was met in week 1 need not be back before week 5.
    expect(whyOf({ met, themes: rule({ mostWeeksBetween: 4 }) })).toBe('other')
  })

  it('favours nobody who is not short of it, nor anybody beyond what it is short of', () => {
    for (let seed = 1; seed <= 4; seed++) {
      const problem = randomAhead(seed, { practices: 6, players: 8, rules: 3 })
      const plan = quickAhead(problem, { seed, steps: 200 })
      if (!plan) continue
      problem.practices.forEach((_, practice) => {
        const before = expectedEnd(
          { ...problem, practices: problem.practices.slice(0, practice) },
          { choices: plan.choices.slice(0, practice), leans: plan.leans.slice(0, practice) },
        )
        for (const { player, column, seconds } of favoursOf(problem, plan, practice)) {
          expect(seconds).toBeGreaterThanOrEqual(leastFavour)
          expect(seconds).toBeLessThanOrEqual(-(before[player]?.gap[column] ?? 0) + 1e-9)
          expect(seconds).toBeLessThanOrEqual(columnLeans(plan.leans[practice]?.[player])[column] + 1e-9)
        }
      })
    }
  })

  it('adds up leans as the book does: what is more in seats is less in waiting', () => {
    const sums = columnLeans({ ...noSeats, attackLevel: 60, defendOutnumbered: -20, keep: 10 })
    expect(rotationColumns.map((column) => [column, sums[column]])).toEqual([
      ['attack', 60],
      ['defend', -20],
      ['keep', 10],
      ['rest', -50],
      ['outnumbering', 0],
      ['level', 60],
      ['outnumbered', -20],
    ])
  })
})
