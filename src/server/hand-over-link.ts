import 'server-only'
import type { Problem } from '#common/problem'
import type { Result } from '#common/result'
import type { LinkKind } from '#data/one-time-links'
import { type Done, saved, savedWithLink } from '#server/action'
import { logFault } from '#server/log'
import { sendMail } from '#server/mail'
import { daysOfLink, type MadeLink } from '#server/one-time-links'

/** A link that was made, for whom, and the address to mail it to; null: it is shown to whoever made it. */
export type LinkToHandOver = {
  readonly link: MadeLink
  readonly kind: LinkKind
  readonly name: string
  readonly clubName: string
  readonly mailTo: string | null
}

/** Mails a link, or shows it this once. To be called when the transaction is over: a mail cannot be taken back. */
export async function handOver(given: LinkToHandOver): Promise<Result<Done, Problem>> {
  const { link, kind, name, mailTo } = given
  const until = daysOfLink[kind] === 1 ? 'for one day' : `for ${daysOfLink[kind]} days`
  const shown = { href: link.href, code: link.code }
  if (mailTo === null)
    return savedWithLink(
      `A link for ${name}. It is shown only now. It works once, ${until}. Give it to ${name} and to nobody else.`,
      shown,
    )
  try {
    await sendMail({ to: mailTo, ...letterOf(given, until) })
    return saved(`Mailed to ${name}. The link works once, ${until}.`)
  } catch (error) {
    logFault('mail not sent', error)
    return savedWithLink(
      `The mail could not be sent. Give ${name} the link yourself. It works once, ${until}.`,
      shown,
    )
  }
}

/** No word of which child: mails are read by others too. */
function letterOf({ link, kind, name, clubName }: LinkToHandOver, until: string) {
  const does = {
    join: `asks you to join. Open this link and choose how you sign in.`,
    family: `lets you read a page about your child. Open this link and press the button.`,
    recover: `lets you choose a new password. Open this link to do so.`,
  }
  return {
    subject: `A link from ${clubName}`,
    text: `Hello ${name},\n\n${clubName} ${does[kind]} It works once, ${until}.\n\n${link.href}\n\nIs this not for you? Then leave it closed: nothing happens.\n`,
  }
}
