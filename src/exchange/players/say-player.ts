import type { KnownPlayer, MatchQuestion } from '#exchange/players/match-player'
import type { SayingChoice } from '#exchange/saying'

/** A player of the book in a few words that tell two of one name apart. */
export function describePlayer(player: KnownPlayer): string {
  const held = player.memberships.at(-1)
  const since = held && `member ${held.firstDay} to ${held.lastDay ?? 'now'}`
  const where = player.isOfSquad ? (since ?? 'guest') : 'in another squad'
  return [player.name, player.code === null ? null : `code ${player.code}`, where].filter(Boolean).join(', ')
}

/** The players that can be meant, as answers. */
export function candidateChoices(candidates: readonly KnownPlayer[]): readonly SayingChoice[] {
  return candidates.map((player) => ({ value: player.id, label: `It is ${describePlayer(player)}` }))
}

/** Why it cannot be told who is meant. */
export function matchSentence(why: MatchQuestion, candidates: readonly KnownPlayer[]): string {
  const [first] = candidates
  switch (why) {
    case 'codeOfAnotherName':
      return `In the book this code is ${first?.name}'s. Who is it?`
    case 'otherCode':
      return 'The book has this name with another code. Is it the same player?'
    case 'severalOfThisName':
      return `The book has ${candidates.length} players of this name. Which one is it?`
    case 'inAnotherSquad':
      return 'A player of another squad has this name. Is it the same player?'
    case 'alike':
      return `The book has ${first?.name}, a name that looks alike. Is it the same player?`
  }
}
