import { explainPractice } from '#ahead/explain/explain-practice'
import type { AheadChange } from '#ahead/explain/what-changed'
import { type AheadPlan, chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { Day } from '#common/time'

export type ChangeWords = {
  readonly problem: AheadProblem
  readonly plan: AheadPlan
  readonly nameOf: (player: number) => string
  readonly themeName: (themeId: string) => string
  readonly designName: (designId: string) => string
  readonly dayOf: (sessionId: string) => Day | null
  readonly sayDay: (day: Day) => string
}

/** What changed since the plan was saved, in a sentence, with the reason. */
export function sayChange(change: AheadChange, words: ChangeWords): string {
  const { problem, plan, themeName, designName, dayOf, sayDay, nameOf } = words
  switch (change.kind) {
    case 'written': {
      const day = sayDay(change.day)
      if (change.planned === null)
        return `${day} is in the book now; it was not planned here, and counts all the same.`
      return change.isAsPlanned
        ? `${day} is in the book now, with “${themeName(change.planned)}” as planned.`
        : `${day} is in the book now, without “${themeName(change.planned)}”, which was planned for it: what it was to make up for is open again.`
    }
    case 'gone': {
      const day = dayOf(change.planned.sessionId)
      return `${day ? sayDay(day) : 'A practice'} with “${themeName(change.planned.themeId)}” is no longer to come; the others make up for it as far as they can.`
    }
    case 'new': {
      const own = problem.practices[change.practice]
      return own ? `${sayDay(own.day)} is new in the plan: “${themeNow(words, change.practice)}”.` : ''
    }
    case 'other': {
      const own = problem.practices[change.practice]
      if (!own) return ''
      const day = sayDay(own.day)
      const now = themeNow(words, change.practice)
      if (change.why === 'notOffered')
        return `${day} is “${now}” instead of “${themeName(change.before.themeId)}”: “${designName(change.before.designId)}” cannot be played then any more.`
      if (change.why === 'otherDesign')
        return `${day} stays “${now}”, with another design than “${designName(change.before.designId)}”: it has more of the places that are missing now.`
      const why = explainPractice(problem, plan, { practice: change.practice, nameOf })
      return `${day} is “${now}” instead of “${themeName(change.before.themeId)}”. ${why}`
    }
  }
}

function themeNow({ problem, plan }: ChangeWords, practice: number): string {
  const offer = chosenOffer(problem, plan.choices, practice)
  return problem.themes[offer?.theme ?? -1]?.name ?? ''
}
