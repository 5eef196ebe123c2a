import type { Problem } from '#common/problem'
import { type Adaptable, adaptDesign } from '#practice/adapt-design'
import type { Adaptation, DesignChange } from '#practice/adaptation'
import { sizeFaults } from '#practice/practice-size'
import { roundFaults } from '#practice/round-faults'

/** What makes no sense in an adaptation of this design: nothing said, nothing changed, or a round left that cannot be played. */
export function adaptationFaults(design: Adaptable, adaptation: Adaptation): readonly Problem[] {
  const problems: Problem[] = []
  if (adaptation.title.trim() === '')
    problems.push({ path: 'title', message: 'is empty; write what is done, such as “A third wider”' })
  if (adaptation.why.trim() === '')
    problems.push({ path: 'why', message: 'is empty; write in a sentence what it does to play' })
  if (adaptation.changes.length === 0)
    problems.push({ path: 'changes', message: 'are none; choose at least one thing that is done' })
  adaptation.changes.forEach((change, index) => {
    const path = `changes.${index}`
    if (change.what !== 'area' && change.round !== null && !design.rounds[change.round])
      problems.push({
        path,
        message: 'is of a round that is no longer there; choose another, or every round',
      })
    if (timesOf(change).some((times) => !(times >= 0.1 && times <= 10)))
      problems.push({ path, message: 'must be between 0.1 and 10 times; 0.75 is a quarter less' })
    if (change.what === 'condition' && change.words.trim() === '')
      problems.push({ path, message: 'says nothing; write what holds, such as “Two touches each”' })
  })
  return problems.length > 0 ? problems : leftUnplayable(design, adaptation)
}

function timesOf(change: DesignChange): readonly number[] {
  if (change.what === 'area') return [change.lengthTimes, change.widthTimes]
  return change.what === 'turns' ? [change.secondsTimes, change.countTimes] : []
}

/** A round that was in order and is not any more. */
function leftUnplayable(design: Adaptable, adaptation: Adaptation): readonly Problem[] {
  const adapted = adaptDesign(design, adaptation)
  const [tooLarge] = sizeFaults(design.rounds).length === 0 ? sizeFaults(adapted.rounds) : []
  if (tooLarge) return [{ path: 'changes', message: `leaves rounds that ${tooLarge.message}` }]
  return design.rounds.flatMap((round, index) => {
    const after = adapted.rounds[index]
    const [fault] = after && roundFaults(round).length === 0 ? roundFaults(after) : []
    return fault
      ? [{ path: 'changes', message: `leaves ${round.title} with something that ${fault.message}` }]
      : []
  })
}
