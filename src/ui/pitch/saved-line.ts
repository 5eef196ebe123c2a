import { counted } from '#ui/plural'

/** Whether the pages of the pitch open on this phone without a signal. */
export type OfflinePages = 'looking' | 'getting' | 'ready' | 'insecure' | 'unable'

/** How the last exchange with the book went. */
export type Signal =
  | { readonly kind: 'sent' }
  | { readonly kind: 'sending' }
  | { readonly kind: 'noSignal' }
  | { readonly kind: 'refused'; readonly why: string }
  /** The browser itself would not keep what was tapped. */
  | { readonly kind: 'notKept' }

export type Saved = {
  readonly tapped: number
  readonly waiting: number
  readonly refused: number
  /** When everything was last known to be in the book, as the phone shows the time; null: never yet. */
  readonly sentAt: string | null
  readonly signal: Signal
}

/** What is saved where, in one line that is always in sight. */
export function savedLine({ tapped, waiting, refused, sentAt, signal }: Saved): string {
  if (signal.kind === 'notKept') return 'Not saved: this browser keeps nothing. Write it on paper too.'
  const parts: string[] = []
  if (tapped === 0) parts.push('Nothing tapped yet')
  else if (waiting === 0) parts.push(sentAt === null ? 'All sent' : `All sent ${sentAt}`)
  else parts.push(`${counted(tapped, 'tap')} on this phone, ${waiting} not sent yet`)
  if (refused > 0) parts.push(`${refused} not taken by the book`)
  if (signal.kind === 'noSignal') parts.push('no signal')
  if (signal.kind === 'refused') parts.push(signal.why)
  return parts.join(' · ')
}

/** Whether this phone can do without a signal, in one sentence; null where nothing has to be said. */
export function offlineSentence(pages: OfflinePages): string | null {
  if (pages === 'ready' || pages === 'looking') return null
  if (pages === 'getting')
    return 'Getting ready to work without a signal: keep this page open while there is one.'
  if (pages === 'insecure')
    return 'This address is not secure (it does not begin with https): taps are kept on this phone, but names and the plan only while this page stays open.'
  return 'This browser cannot open the page without a signal: keep it open.'
}
