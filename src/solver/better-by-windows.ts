import { seededChance } from '#common/chance'
import type { AheadModel } from '#solver/ahead-model'
import { type AheadSearch, choicesOf, isProven, solveShare, takeChoices } from '#solver/ahead-search'
import { isUp } from '#solver/deadline'

/** Practices that are chosen anew at a time. */
const windowSize = 4
/** Of what is left, what one window may take. */
const shareOfWindow = 0.15

/** So much of the time there is, this may take. */
const shareOfAll = 0.4

/**
 * Makes a plan better a few practices at a time, all others staying as they are: each time a small exact search. It ends
 * when its share of the time does, or when as many windows running as there are practices brought nothing.
 */
export function betterByWindows(search: AheadSearch, model: AheadModel): void {
  const chance = seededChance(search.seed + 77)
  const count = search.problem.practices.length
  const uppers = model.linear.upper
  const leftOf = () => search.deadline.leftWork() ?? search.deadline.leftMs()
  const enough = leftOf() * (1 - shareOfAll)
  let idle = 0
  while (search.best && idle < count && leftOf() > enough && !isUp(search.deadline) && !isProven(search)) {
    const { choices } = search.best.plan
    const free = windowAt(chance, count)
    const before = [...uppers]
    model.choices.forEach((offers, practice) => {
      if (free.has(practice)) return
      offers.forEach((column, offer) => {
        if (column !== null && choices[practice] !== offer) uppers[column] = 0
      })
    })
    const answer = solveShare(search, model, { share: shareOfWindow })
    before.forEach((upper, column) => {
      uppers[column] = upper
    })
    const found = answer?.values ? choicesOf(model, answer.values) : choices
    idle = found.join() !== choices.join() && takeChoices(search, found) ? 0 : idle + 1
  }
}

function windowAt(chance: () => number, count: number): ReadonlySet<number> {
  const free = new Set<number>()
  while (free.size < Math.min(windowSize, count)) free.add(Math.floor(chance() * count))
  return free
}
