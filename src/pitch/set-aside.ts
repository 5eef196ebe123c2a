/** Why something that was tapped changes nothing: two phones tapped the same, or another tap came before it. */
export type SetAsideReason =
  /** The practice had begun already. */
  | 'alreadyBegun'
  /** It was stopped already. */
  | 'alreadyStopped'
  /** More was played after it: the practice went on. */
  | 'wentOn'
  /** Nothing had begun. */
  | 'notBegun'
  /** The other phone had tapped that the same round was over. */
  | 'sameRound'
  /** The other phone had started the same turn. */
  | 'sameTurn'
  /** It had ended already. */
  | 'alreadyEnded'
  /** The turn it belongs to is not here, or not yet. */
  | 'unknownTurn'
  /** What it undoes is not here, or not yet. */
  | 'unknownEvent'
  /** The player is neither of the squad nor a guest that is here, or not yet. */
  | 'unknownPlayer'
  /** A guest who was written down already. */
  | 'knownPlayer'
  /** Out for today is taken back by undoing it and answering a second question, by nothing else. */
  | 'isOut'
  /** Between the turns before and after it there was no time for it. */
  | 'noTime'
  /** Nobody who had a place in it was there. */
  | 'nobodyThere'
  /** It was said already that all was as planned. */
  | 'alreadySaid'

export type SetAside = { readonly id: string; readonly why: SetAsideReason }
