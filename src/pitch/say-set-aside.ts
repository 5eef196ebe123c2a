import type { SetAsideReason } from '#pitch/set-aside'

const sentences: Readonly<Record<SetAsideReason, string>> = {
  alreadyBegun: 'The practice had begun already: the first tap holds.',
  alreadyStopped: 'The practice was stopped already: the first tap holds.',
  wentOn: 'More was played after this stop, so the practice went on.',
  notBegun: 'The practice had not begun.',
  sameRound: 'This round was tapped as done on another phone: the first tap holds.',
  sameTurn: 'This turn was started on another phone: the first tap holds.',
  alreadyEnded: 'This turn had ended already.',
  unknownTurn: 'The start of this turn is not here yet. It counts when it arrives.',
  unknownEvent: 'What this takes back is not here yet. It counts when that arrives.',
  unknownPlayer: 'This player is not here yet. It counts when the name arrives.',
  knownPlayer: 'This guest was written down already.',
  isOut: 'Out for today stands. To take it back, undo it and answer the question.',
  noTime: 'Between what was played before and after there was no time for this.',
  nobodyThere: 'Nobody who had a place was there.',
  saidAnew: 'Another tap says how it is.',
}

/** For the coach: why something that was tapped changes nothing. */
export function saySetAside(why: SetAsideReason): string {
  return sentences[why]
}
