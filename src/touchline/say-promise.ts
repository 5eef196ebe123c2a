import { sayClock, sayTime } from '#lineup/say-clock'
import type { MatchState } from '#touchline/match-state'
import type { WatchedPromise, WhyLess } from '#touchline/promise-watch'

const because: Readonly<Record<WhyLess, string>> = {
  cameLate: 'came late',
  left: 'left',
  notPlaying: 'could not play for some of it',
  out: 'is out for today',
  sentOff: 'was sent off',
}

/** What a coach is told of a promise that is in danger or lost, or that is less because a player was there for less; else empty. */
export function sayPromise(
  { least, had, willHave, there, whole, how, whyLess, latestClock }: WatchedPromise,
  { name, format }: { readonly name: string } & Pick<MatchState, 'format'>,
): string {
  const presence = whyLess ? `${name} ${because[whyLess]}: there for ${sayOf(there, whole)}.` : ''
  const promised = `the ${sayTime(least)} that were promised`
  const end =
    willHave > had
      ? `As planned now ${name} ends with ${sayClock(willHave)}.`
      : `${name} had ${sayClock(had)}.`
  const sentences = {
    kept: [presence],
    planned: [presence],
    inDanger: latestClock
      ? [`${name} must come on by ${sayLatest(latestClock, format)} to have ${promised}.`]
      : [],
    lost: [presence, `${name} cannot have ${promised} any more. ${end}`],
  }[how]
  return sentences.filter((sentence) => sentence !== '').join(' ')
}

function sayOf(part: number, whole: number): string {
  return `${sayClock(part)} of ${sayTime(whole)}`
}

function sayLatest(
  { period, second }: NonNullable<WatchedPromise['latestClock']>,
  { periodSeconds }: MatchState['format'],
): string {
  if (second === 0) return `the start of period ${period + 1}`
  return periodSeconds.length > 1 ? `${sayClock(second)} of period ${period + 1}` : sayClock(second)
}
